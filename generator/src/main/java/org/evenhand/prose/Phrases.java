package org.evenhand.prose;

import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds words and phrases in running text.
 *
 * <p>A pattern of some hundred alternatives, tried at each letter, takes most of the time of a verification. So it is tried
 * only where a word begins with which one of the phrases begins.
 */
final class Phrases {

    /** No phrase that stands before a number or a word is longer than this. */
    static final int REACH = 60;

    private final Pattern pattern;

    /** For the first word of each phrase, how many characters may stand before it in the phrase, as a set of bits. */
    private final Map<String, Integer> firstWords = new HashMap<>();

    private final Initials initials;

    /** The first characters of phrases without any word: "≈". */
    private final String signs;

    /**
     * Makes them ready to be looked for.
     *
     * @param phrases with one of which each match begins
     * @param regex of a match
     */
    Phrases(Collection<String> phrases, String regex) {
        this.pattern = Words.pattern(regex);
        StringBuilder unworded = new StringBuilder();
        for (String phrase : phrases) {
            int start = wordStart(phrase, 0, phrase.length());
            if (start == phrase.length()) {
                unworded.append(phrase.charAt(0));
                continue;
            }
            String word = phrase.substring(start, wordEnd(phrase, start)).toLowerCase(Locale.ROOT);
            firstWords.merge(word, 1 << Math.min(start, Integer.SIZE - 1), (a, b) -> a | b);
        }
        this.signs = unworded.toString();
        this.initials = new Initials(firstWords.keySet());
    }

    /** Words of a language by their kinds, with what may stand around them. */
    static Phrases of(Words words, String before, String behind, String... kinds) {
        return new Phrases(words.list(kinds), before + words.any(kinds) + behind);
    }

    Matcher matcher(String text) {
        return pattern.matcher(text).useTransparentBounds(true);
    }

    /** Whether there is a match anywhere. */
    boolean isIn(String text) {
        return find(matcher(text), text, 0);
    }

    /** Whether there is a match at an index. */
    boolean isAt(String text, int at) {
        return matcher(text).region(at, text.length()).lookingAt();
    }

    /**
     * Looks for the next match.
     *
     * @param matcher of the text; afterwards at the match
     * @param from index from which to look
     */
    boolean find(Matcher matcher, String text, int from) {
        return find(matcher, text, from, text.length());
    }

    /**
     * Looks for the first match just before an index, for patterns that hold the end of what is looked at: {@code $}.
     *
     * @param from index before which nothing is looked at
     */
    boolean findBefore(Matcher matcher, String text, int from, int at) {
        return find(matcher, text, Math.max(from, at - REACH), at);
    }

    private boolean find(Matcher matcher, String text, int from, int to) {
        int at = from;
        while (at < to) {
            char c = text.charAt(at);
            if (!isOfWord(c)) {
                if (signs.indexOf(c) >= 0 && matcher.region(at, to).lookingAt()) {
                    return true;
                }
                at++;
                continue;
            }
            int end = wordEnd(text, at);
            boolean begins = at == 0 || !isOfWord(text.charAt(at - 1));
            if (begins && initials.has(c)) {
                Integer before = firstWords.get(text.substring(at, end).toLowerCase(Locale.ROOT));
                for (int bits = before == null ? 0 : before; bits != 0; bits &= ~Integer.highestOneBit(bits)) {
                    int start = at - (Integer.SIZE - 1 - Integer.numberOfLeadingZeros(bits));
                    if (start >= from && matcher.region(start, to).lookingAt()) {
                        return true;
                    }
                }
            }
            at = end;
        }
        return false;
    }

    static boolean isOfWord(char c) {
        return Character.isLetterOrDigit(c);
    }

    private static int wordStart(String text, int from, int to) {
        int at = from;
        while (at < to && !isOfWord(text.charAt(at))) {
            at++;
        }
        return at;
    }

    static int wordEnd(String text, int start) {
        int at = start;
        while (at < text.length() && isOfWord(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /** The letters with which some words begin, small and capital. */
    static final class Initials {
        private final boolean[] latin = new boolean[256];
        private final boolean others;

        Initials(Collection<String> words) {
            boolean beyond = false;
            for (String word : words) {
                for (char c : new char[] {
                    word.charAt(0), Character.toUpperCase(word.charAt(0)), Character.toLowerCase(word.charAt(0))
                }) {
                    if (c < latin.length) {
                        latin[c] = true;
                    } else {
                        beyond = true;
                    }
                }
            }
            this.others = beyond;
        }

        boolean has(char c) {
            return c < latin.length ? latin[c] : others;
        }
    }
}
