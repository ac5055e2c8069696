package org.evenhand.quantity;

import java.math.BigDecimal;

/**
 * A conversion between two units: y = x × factor + offset, exact until a number leaves.
 *
 * @param factor how many of the target unit one of the source unit is
 * @param offset what to add afterwards, in the target unit
 */
public record Conversion(Fraction factor, Fraction offset) {

    /** Converts a decimal, rounded once to the nearest double. */
    public double apply(BigDecimal value) {
        return Fraction.of(value).times(factor).plus(offset).toDouble();
    }

    /**
     * Converts a double that stands for the decimal which prints it, so that 21 400 m°C is 21.4 °C to the last bit.
     *
     * @param value any finite number
     */
    public double apply(double value) {
        return apply(BigDecimal.valueOf(value));
    }

    /** A conversion for many numbers: the same to within a unit in the last place, and fast. */
    public Fast fast() {
        boolean exact = factor.pi() == 0
                && factor.numerator().bitLength() <= 53
                && factor.denominator().bitLength() <= 53;
        return exact
                ? new Fast(
                        factor.numerator().doubleValue(), factor.denominator().doubleValue(), offset.toDouble())
                : new Fast(factor.toDouble(), 1, offset.toDouble());
    }

    /** Whether nothing has to be done. */
    public boolean isIdentity() {
        return factor.equals(Fraction.ONE) && offset.numerator().signum() == 0;
    }

    /** The same in doubles, for the samples of a log. */
    public record Fast(double multiplier, double divisor, double offset) {

        public double apply(double value) {
            return value * multiplier / divisor + offset;
        }
    }
}
