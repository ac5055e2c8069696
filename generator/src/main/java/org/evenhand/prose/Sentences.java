package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.prose.Passage.Bound;
import org.evenhand.prose.Passage.Range;

/** Divides running text into sentences. A full stop within a link's text ends none. */
final class Sentences {

    private static final Pattern END = Pattern.compile("[.!?]+[\"”’)\\]]*(?=\\s+[^\\p{Ll}]|\\s*$)");
    private static final Pattern LAST_WORD = Pattern.compile("([\\p{L}.]+)$");

    private Sentences() {}

    static List<Range> of(Passage passage, Words words) {
        List<Range> sentences = new ArrayList<>();
        String text = passage.text();
        Matcher matcher = END.matcher(text);
        int start = 0;
        while (matcher.find()) {
            int end = matcher.end();
            boolean inLink = passage.links().stream().anyMatch(l -> l.start() < end && end < l.end());
            if (!inLink && !isAbbreviation(text.substring(start, matcher.start()), words)) {
                sentences.add(new Range(start, end));
                start = end;
            }
        }
        if (!text.substring(start).isBlank() || passage.links().stream().anyMatch(atOrAfter(start))) {
            sentences.add(new Range(start, text.length()));
        }
        return sentences;
    }

    private static java.util.function.Predicate<Bound> atOrAfter(int start) {
        return link -> link.start() >= start;
    }

    private static boolean isAbbreviation(String before, Words words) {
        Matcher word = LAST_WORD.matcher(before);
        return word.find()
                && words.value("abbreviation", word.group(1).toLowerCase(Locale.ROOT))
                        .isPresent();
    }
}
