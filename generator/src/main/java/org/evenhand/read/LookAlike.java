package org.evenhand.read;

import java.util.Locale;
import java.util.OptionalInt;

/**
 * Characters that look like those of a name and are others, or are not seen at all.
 *
 * <p>Source: single letters of the confusables of UTS #39, "Unicode Security Mechanisms", from memory. A name with any
 * other foreign letter is refused as well, as no name.
 */
final class LookAlike {

    private static final String FOREIGN =
            "\u0430\u0435\u043E\u0440\u0441\u0443\u0445\u0456\u0458\u0455\u04BB\u0501\u051B\u051D"
                    + "\u0261\u0131\u03BF\u03C1\u03B1\u03BD\u03B9\u03BA\u03C5\u2010\u2011\u2013\u2212";
    private static final String MEANT = "aeopcyxijshdqw" + "giopaviku----";

    private LookAlike() {}

    /** Where the first such character stands. */
    static OptionalInt in(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (FOREIGN.indexOf(text.charAt(i)) >= 0 || isUnseen(text.charAt(i))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** The text as it looks. */
    static String seen(String text) {
        StringBuilder seen = new StringBuilder();
        for (char c : text.toCharArray()) {
            int foreign = FOREIGN.indexOf(c);
            if (!isUnseen(c)) {
                seen.append(foreign >= 0 ? MEANT.charAt(foreign) : c);
            }
        }
        return seen.toString();
    }

    /** What a character is, for a message. */
    static String named(char c) {
        return String.format(
                Locale.ROOT, "U+%04X, %s", (int) c, Character.getName(c).toLowerCase(Locale.ROOT));
    }

    /** Zero-width characters and the soft hyphen. */
    private static boolean isUnseen(char c) {
        return c == '\u00AD' || c >= '\u200B' && c <= '\u200F' || c == '\u2060' || c == '\uFEFF';
    }
}
