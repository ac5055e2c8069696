package org.evenhand.page;

/** Makes sentences of what a check says in the manner of a compiler: small at the beginning, without a full stop. */
public final class Sentence {

    private Sentence() {}

    /** The same words with a capital and a full stop; nothing if there is nothing to say. */
    public static String of(String words) {
        return closed(capital(words.strip()));
    }

    /** The same words with a full stop, to stand behind a colon; nothing if there is nothing to say. */
    public static String closed(String words) {
        return words.isEmpty() || words.matches("(?s).*[.!?…][”’\"')]?") ? words : words + ".";
    }

    /** The same words with a capital. */
    public static String capital(String words) {
        if (words.isEmpty()) {
            return "";
        }
        int first = words.offsetByCodePoints(0, 1);
        return Character.toString(Character.toTitleCase(words.codePointAt(0))) + words.substring(first);
    }
}
