package org.evenhand.chart;

/**
 * A closed interval on a value axis.
 *
 * @param low lower end, finite
 * @param high upper end, finite, not below {@code low}
 */
public record Interval(double low, double high) {

    /** @throws IllegalArgumentException if an end is not finite or the ends are swapped */
    public Interval {
        if (!(Double.isFinite(low) && Double.isFinite(high) && low <= high)) {
            throw new IllegalArgumentException("not an interval: " + low + " to " + high);
        }
    }
}
