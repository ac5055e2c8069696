package org.evenhand.words;

import java.util.Locale;
import org.evenhand.model.Reading;

/** What somebody judged, as a language says it. */
public final class Judgement {

    private Judgement() {}

    /** "yes", "no" or "partly" in the language; a place on a scale is the author's own word; empty for a number. */
    public static String of(Reading reading, Words words) {
        if (reading instanceof Reading.OnScale onScale) {
            return onScale.word();
        }
        return reading instanceof Reading.Observed observed
                ? words.say("name.observed-" + observed.name().toLowerCase(Locale.ROOT))
                : "";
    }
}
