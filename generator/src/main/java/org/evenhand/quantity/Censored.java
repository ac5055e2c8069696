package org.evenhand.quantity;

/**
 * What is known of an event that was not seen: it takes longer, or is more, than the bound.
 *
 * @param bound how far it was followed
 */
public record Censored(Quantity bound) {

    /** Reads {@code "> 45 min"}. */
    public static Censored parse(String text, Unit wanted) throws MisreadException {
        int start = text.indexOf('>') + 1;
        while (start < text.length() && text.charAt(start) == ' ') {
            start++;
        }
        try {
            return new Censored(Quantity.parse(text.substring(start), wanted));
        } catch (MisreadException e) {
            throw e.shifted(start);
        }
    }

    /** Whether the text claims to be such a bound. */
    public static boolean isWritten(String text) {
        return text.startsWith(">");
    }

    @Override
    public String toString() {
        return "> " + bound;
    }
}
