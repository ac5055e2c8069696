package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.prose.Passage.Range;

/** Divides running text into sentences. A full stop within a link's text ends none. */
final class Sentences {

    private static final Pattern END = Pattern.compile("(?<![.!?])[.!?]++[\"”’)\\]]*+(?=\\s++[^\\p{Ll}]|\\s*+$)");

    private static final int LONGEST_ABBREVIATION = 30;

    private Sentences() {}

    static List<Range> of(Passage passage, Words words) {
        List<Range> sentences = new ArrayList<>();
        String text = passage.text();
        Matcher matcher = END.matcher(text);
        int start = 0;
        while (matcher.find()) {
            int end = matcher.end();
            boolean inLink = passage.addresses().stream().anyMatch(l -> l.start() < end && end < l.end());
            if (!inLink && !isAbbreviation(text, start, matcher.start(), words)) {
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

    /** Whether the last word before a full stop is one that ends in one. */
    private static boolean isAbbreviation(String text, int start, int end, Words words) {
        int begin = end;
        while (begin > start && end - begin < LONGEST_ABBREVIATION && isOfWord(text.charAt(begin - 1))) {
            begin--;
        }
        return words.value("abbreviation", text.substring(begin, end)).isPresent();
    }

    private static boolean isOfWord(char c) {
        return Character.isLetter(c) || c == '.';
    }
}
