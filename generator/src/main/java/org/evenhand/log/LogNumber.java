package org.evenhand.log;

/** Reads the numbers of a log: digits with one decimal marker and perhaps an exponent, and nothing else. */
final class LogNumber {

    /** Beyond anything that is measured, and still small enough to be squared and summed. */
    private static final double LARGEST = 1e100;

    private LogNumber() {}

    /**
     * The number that a field holds.
     *
     * @param text without spaces around it; not empty
     * @param decimal the decimal marker of the file
     * @return the nearest double; NaN if the text can be read in two ways, or in none, or is too large to be measured
     */
    static double parse(String text, char decimal) {
        int at = 0;
        int end = text.length();
        if (at < end && isSign(text.charAt(at))) {
            at++;
        }
        int whole = digits(text, at);
        at += whole;
        int fraction = 0;
        if (at < end && text.charAt(at) == decimal) {
            at++;
            fraction = digits(text, at);
            at += fraction;
            if (fraction == 0) {
                return Double.NaN;
            }
        }
        if (whole + fraction == 0) {
            return Double.NaN;
        }
        if (at < end && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            at++;
            if (at < end && isSign(text.charAt(at))) {
                at++;
            }
            int exponent = digits(text, at);
            at += exponent;
            if (exponent == 0 || exponent > 3) {
                return Double.NaN;
            }
        }
        if (at < end) {
            return Double.NaN;
        }
        double value = Double.parseDouble(text.replace('−', '-').replace(decimal, '.'));
        return Math.abs(value) <= LARGEST ? value : Double.NaN;
    }

    /** A whole number that may be written in hexadecimal, as status words are; NaN if it is none. */
    static double parseWhole(String text, char decimal) {
        if (text.length() > 2 && text.length() <= 14 && (text.startsWith("0x") || text.startsWith("0X"))) {
            for (int i = 2; i < text.length(); i++) {
                if (Character.digit(text.charAt(i), 16) < 0 || text.charAt(i) > 'f') {
                    return Double.NaN;
                }
            }
            return Long.parseLong(text.substring(2), 16);
        }
        return parse(text, decimal);
    }

    private static boolean isSign(char c) {
        return c == '+' || c == '-' || c == '−';
    }

    private static int digits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at - from;
    }
}
