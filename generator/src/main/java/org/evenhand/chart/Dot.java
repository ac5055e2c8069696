package org.evenhand.chart;

/**
 * One run's value, or a bound for it.
 *
 * @param value finite, in the unit of the axis
 * @param bound whether the true value is known, or only that it lies above or below
 */
public record Dot(double value, Bound bound) {

    /** What is known of the true value. */
    public enum Bound {
        /** It is the value. */
        EXACT,
        /** It is the value or more, as for a time that the end of the run cut off. */
        AT_LEAST,
        /** It is the value or less, as for a sound below its background. */
        AT_MOST
    }

    /** @throws IllegalArgumentException if the value is not finite */
    public Dot {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a dot has a finite value, not " + value);
        }
    }

    public static Dot at(double value) {
        return new Dot(value, Bound.EXACT);
    }

    public static Dot atLeast(double value) {
        return new Dot(value, Bound.AT_LEAST);
    }

    public static Dot atMost(double value) {
        return new Dot(value, Bound.AT_MOST);
    }

    Sign sign() {
        return switch (bound) {
            case EXACT -> Sign.DOT;
            case AT_LEAST -> Sign.AT_LEAST;
            case AT_MOST -> Sign.AT_MOST;
        };
    }
}
