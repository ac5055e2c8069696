package org.evenhand.chart;

import java.util.Objects;
import java.util.Optional;

/**
 * An estimate as it is drawn.
 *
 * @param value finite, in the unit of the axis
 * @param interval empty where none can be stated, for example for a single run
 */
public record Estimate(double value, Optional<Interval> interval) {

    /** @throws IllegalArgumentException if the value is not finite */
    public Estimate {
        Objects.requireNonNull(interval, "interval");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("an estimate is finite, not " + value);
        }
    }

    /** An estimate with its interval. */
    public static Estimate of(double value, double low, double high) {
        return new Estimate(value, Optional.of(new Interval(low, high)));
    }

    /** An estimate for which no interval can be stated. */
    public static Estimate alone(double value) {
        return new Estimate(value, Optional.empty());
    }
}
