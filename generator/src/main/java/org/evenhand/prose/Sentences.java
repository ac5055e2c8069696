package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.prose.Passage.Range;

/** Divides running text into sentences. A full stop within a link's text ends none. */
final class Sentences {

    private static final Pattern END = Pattern.compile("[.!?]+[\"”’)\\]]*(?=\\s+[^\\p{Ll}]|\\s*$)");

    private Sentences() {}

    static List<Range> of(Passage passage, Words words) {
        List<Range> sentences = new ArrayList<>();
        String text = passage.text();
        Matcher matcher = END.matcher(text);
        int start = 0;
        while (matcher.find()) {
            int end = matcher.end();
            boolean inLink = passage.addresses().stream().anyMatch(l -> l.start() < end && end < l.end());
            if (!inLink && !isAbbreviation(text.substring(start, matcher.start()), words)) {
                sentences.add(new Range(start, end));
                start = end;
            }
        }
        int rest = start;
        if (!text.substring(start).isBlank() || passage.addresses().stream().anyMatch(a -> a.start() >= rest)) {
            sentences.add(new Range(start, text.length()));
        }
        return sentences;
    }

    private static boolean isAbbreviation(String before, Words words) {
        int start = before.length();
        while (start > 0 && (before.charAt(start - 1) == '.' || Character.isLetter(before.charAt(start - 1)))) {
            start--;
        }
        return words.value("abbreviation", before.substring(start)).isPresent();
    }
}
