package org.evenhand.statistics;

/** The checks that public entry points share; each says what was given and what is allowed. */
final class Arguments {

    private Arguments() {}

    static double finite(double value, String name) {
        if (Math.abs(value) <= Double.MAX_VALUE) {
            return value;
        }
        throw new IllegalArgumentException(name + " must be finite, not " + value);
    }

    static double positive(double value, String name) {
        if (value > 0 && value <= Double.MAX_VALUE) {
            return value;
        }
        throw new IllegalArgumentException(name + " must be positive and finite, not " + value);
    }

    static double notNegative(double value, String name) {
        if (value >= 0 && value <= Double.MAX_VALUE) {
            return value;
        }
        throw new IllegalArgumentException(name + " must be finite and not negative, not " + value);
    }

    /** A confidence, a probability of error or a power: strictly between 0 and 1. */
    static double fraction(double value, String name) {
        if (value > 0 && value < 1) {
            return value;
        }
        throw new IllegalArgumentException(name + " must lie strictly between 0 and 1, not " + value);
    }

    static void sameLength(double[] x, double[] y) {
        if (x.length == y.length) {
            return;
        }
        throw new IllegalArgumentException("x and y must be of one length, not " + x.length + " and " + y.length);
    }

    static double[] allFinite(double[] values, String name) {
        for (double value : values) {
            finite(value, name);
        }
        return values;
    }
}
