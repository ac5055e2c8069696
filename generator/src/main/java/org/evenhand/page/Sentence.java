package org.evenhand.page;

/** Makes sentences of what a check says in the manner of a compiler: small at the beginning, without a full stop. */
public final class Sentence {

    private Sentence() {}

    /** The same words with a capital and a full stop; nothing if there is nothing to say. */
    public static String of(String words) {
        String text = words.strip();
        if (text.isEmpty()) {
            return "";
        }
        int first = text.offsetByCodePoints(0, 1);
        String begun = Character.toString(Character.toTitleCase(text.codePointAt(0))) + text.substring(first);
        return begun.matches("(?s).*[.!?…][”’\"')]?") ? begun : begun + ".";
    }
}
