package org.evenhand.quantity;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * A number with its unit, as somebody wrote it, and the expanded uncertainty if one was given.
 *
 * @param value exactly the decimal that was written
 * @param expandedUncertainty what stood behind "±" (k = 2), as a difference in the same unit; not negative
 * @param unit of the table
 */
public record Quantity(BigDecimal value, Optional<BigDecimal> expandedUncertainty, Unit unit) {

    public Quantity {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(unit, "unit");
        if (expandedUncertainty.isPresent() && expandedUncertainty.get().signum() < 0) {
            throw new IllegalArgumentException("negative uncertainty");
        }
    }

    public static Quantity of(String value, String unit) {
        return new Quantity(new BigDecimal(value), Optional.empty(), Unit.of(unit));
    }

    /**
     * Reads {@code "45 min"}, {@code "21.4 ± 0.5 °C"}, {@code "-3.2e-3 K"}; a number alone has the unit 1 only where
     * {@link #parseCount} is called.
     */
    public static Quantity parse(String text) throws MisreadException {
        return new QuantityParser(text).quantity();
    }

    /** Reads a quantity that must convert to the given unit. */
    public static Quantity parse(String text, Unit wanted) throws MisreadException {
        return new QuantityParser(text).quantity(wanted);
    }

    /** Reads a quantity that may be a plain number, which then has the unit 1. */
    public static Quantity parseCount(String text) throws MisreadException {
        return new QuantityParser(text).count();
    }

    /** A quantity known to be right, for the program's own constants. */
    public static Quantity of(String text) {
        try {
            return parse(text);
        } catch (MisreadException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /** The value in another unit, rounded once to the nearest double. */
    public double in(Unit other) {
        return unit.to(other).apply(value);
    }

    /** The value as a difference in another unit: 10 °F are 5.56 K. */
    public double differenceIn(Unit other) {
        return unit.differenceTo(other).apply(value);
    }

    /** The standard uncertainty in another unit: half of what stood behind "±" (k = 2); zero if none was given. */
    public double standardUncertaintyIn(Unit other) {
        return expandedUncertainty
                .map(u -> unit.differenceTo(other).apply(u) / 2)
                .orElse(0.0);
    }

    /** As it is written in data: "21.4 ± 0.5 °C". A plain number stands without a unit. */
    @Override
    public String toString() {
        return value.toPlainString()
                + expandedUncertainty.map(u -> " ± " + u.toPlainString()).orElse("")
                + (unit.isOne() ? "" : " " + unit.symbol());
    }
}
