package org.evenhand.statistics;

/**
 * A closed interval of numbers.
 *
 * @param low the lower limit, finite
 * @param high the upper limit, finite, not below {@code low}
 */
public record Interval(double low, double high) {

    /**
     * @throws IllegalArgumentException if a limit is NaN or infinite, or the limits are in the wrong order
     */
    public Interval {
        Arguments.finite(low, "low");
        Arguments.finite(high, "high");
        if (!(low <= high)) {
            throw new IllegalArgumentException("low " + low + " must not exceed high " + high);
        }
    }

    /** Whether the value lies in the interval or on one of its limits. */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    /** Whether this interval lies wholly inside the other, touching neither of its limits. */
    public boolean isInside(Interval other) {
        return other.low < low && high < other.high;
    }

    /** Half the distance between the limits; for a symmetric interval the expanded uncertainty. */
    public double halfWidth() {
        return high / 2 - low / 2;
    }
}
