package org.evenhand.prose;

import java.util.OptionalDouble;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Interval;

/**
 * A number with what is known of it.
 *
 * @param value absent if only a bound is known, or nothing
 * @param low the lower end of its interval; absent if there is none
 * @param high the upper end of its interval; absent if there is none
 * @param unit of all three
 */
public record Figure(OptionalDouble value, OptionalDouble low, OptionalDouble high, Unit unit) {

    static Figure of(double value, Unit unit) {
        return new Figure(OptionalDouble.of(value), OptionalDouble.empty(), OptionalDouble.empty(), unit);
    }

    static Figure of(OptionalDouble value, java.util.Optional<Interval> interval, Unit unit) {
        return new Figure(
                value,
                interval.map(i -> OptionalDouble.of(i.low())).orElse(OptionalDouble.empty()),
                interval.map(i -> OptionalDouble.of(i.high())).orElse(OptionalDouble.empty()),
                unit);
    }

    /** Something that is only known to be larger. */
    static Figure atLeast(double bound, Unit unit) {
        return new Figure(OptionalDouble.empty(), OptionalDouble.of(bound), OptionalDouble.empty(), unit);
    }

    /** Something that is only known to be smaller. */
    static Figure atMost(double bound, Unit unit) {
        return new Figure(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(bound), unit);
    }

    static Figure none(Unit unit) {
        return new Figure(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), unit);
    }

    boolean hasInterval() {
        return low.isPresent() && high.isPresent();
    }

    /** Half the width of the interval; zero where there is none. */
    double halfWidth() {
        return hasInterval() ? (high.getAsDouble() - low.getAsDouble()) / 2 : 0;
    }

    /** The figure times a factor plus an offset, in another unit; a negative factor swaps the ends. */
    Figure scaled(double factor, double offset, Unit other) {
        OptionalDouble newLow = apply(factor < 0 ? high : low, factor, offset);
        OptionalDouble newHigh = apply(factor < 0 ? low : high, factor, offset);
        return new Figure(apply(value, factor, offset), newLow, newHigh, other);
    }

    /** One divided by the figure; nothing where that has no meaning. */
    Figure inverse() {
        boolean positive = value.orElse(0) > 0 && low.orElse(1) > 0;
        return positive ? new Figure(invert(value), invert(high), invert(low), unit) : none(unit);
    }

    private static OptionalDouble apply(OptionalDouble x, double factor, double offset) {
        return x.isPresent() ? OptionalDouble.of(x.getAsDouble() * factor + offset) : x;
    }

    private static OptionalDouble invert(OptionalDouble x) {
        return x.isPresent() ? OptionalDouble.of(1 / x.getAsDouble()) : x;
    }
}
