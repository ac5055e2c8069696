package org.evenhand.quantity;

/** What must be true of every misreading. */
final class Misread {

    private Misread() {}

    static void check(MisreadException e, String text) {
        // Where something is missing at the end, the place is one character behind the text.
        boolean within = e.start() >= 0 && e.length() >= 0 && e.start() + e.length() <= text.length() + 1;
        if (!within) {
            throw new IllegalStateException("characters " + e.start() + " to " + (e.start() + e.length()) + " of "
                    + text.length() + ": " + e.getMessage());
        }
        if (e.getMessage().isBlank() || e.remedy().isBlank()) {
            throw new IllegalStateException("a misreading without a word");
        }
    }
}
