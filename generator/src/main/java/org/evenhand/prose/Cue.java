package org.evenhand.prose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What words of a sentence hint at. A sentence without the hint need not be searched for what it hints at. */
enum Cue {
    SAME("same"),
    CERTAIN("certain", "certain-with"),
    HEARD("heard"),
    SCOPE("quantifier", "general"),
    BASE("base"),
    DIRECTION("direction"),
    OPEN("open"),
    APART("apart");

    private final List<String> kinds;

    Cue(String... kinds) {
        this.kinds = List.of(kinds);
    }

    private int bit() {
        return 1 << ordinal();
    }

    boolean isIn(int cues) {
        return (cues & bit()) != 0;
    }

    /** The words of a language that hint at something. */
    static final class Table {
        private final Map<String, Integer> cues = new HashMap<>();
        private final Phrases.Initials initials;

        Table(Words words) {
            for (Cue cue : Cue.values()) {
                List<String> hints = new ArrayList<>(words.hints(cue.kinds.toArray(String[]::new)));
                hints.forEach(hint -> cues.merge(hint, cue.bit(), (a, b) -> a | b));
            }
            this.initials = new Phrases.Initials(cues.keySet());
        }

        /** What the words of a stretch of text hint at; see {@link Cue#isIn}. */
        int in(String text, int start, int end) {
            int found = 0;
            int at = start;
            while (at < end) {
                int from = at;
                while (at < end && Character.isLetter(text.charAt(at))) {
                    at++;
                }
                if (at > from && initials.has(text.charAt(from))) {
                    found |= cues.getOrDefault(text.substring(from, at).toLowerCase(Locale.ROOT), 0);
                }
                at++;
            }
            return found;
        }
    }
}
