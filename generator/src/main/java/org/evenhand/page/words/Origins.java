package org.evenhand.page.words;

import java.util.Locale;
import org.evenhand.model.Origin;
import org.evenhand.words.Words;

/** Whose figures these are, as a mark beside them. */
public final class Origins {

    private Origins() {}

    /** As files of data write it, in every language: "stated"; empty for what was measured here. */
    public static String mark(Origin origin) {
        return origin == Origin.MEASURED ? "" : origin.name().toLowerCase(Locale.ROOT);
    }

    /** The mark for readers; empty for what was measured here. */
    public static String mark(Origin origin, Words words) {
        return origin == Origin.MEASURED ? "" : words.say("report.mark-" + mark(origin));
    }

    /** What the mark means, in a sentence; empty for what was measured here. */
    public static String meaning(Origin origin, Words words) {
        return origin == Origin.MEASURED ? "" : words.say("report.meaning-" + mark(origin));
    }
}
