package org.evenhand.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Set;

/**
 * A conversion between two units: y = x × factor + offset, exact until a number leaves.
 *
 * @param factor how many of the target unit one of the source unit is
 * @param offset what to add afterwards, in the target unit
 */
public record Conversion(Fraction factor, Fraction offset) {

    private static final Set<Long> POWERS_OF_TEN =
            Set.of(1L, 10L, 100L, 1_000L, 10_000L, 100_000L, 1_000_000L, 1_000_000_000L);

    /** Converts a decimal, rounded once to the nearest double. */
    public double apply(BigDecimal value) {
        if (isDecimal() && offset.numerator().signum() == 0) {
            return value.multiply(new BigDecimal(factor.numerator()))
                    .scaleByPowerOfTen(1 - factor.denominator().toString().length())
                    .doubleValue();
        }
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

    /** Whether the factor is a whole number of some power of ten, which is cheaper to reckon with, and as exact. */
    private boolean isDecimal() {
        BigInteger denominator = factor.denominator();
        return factor.pi() == 0
                && denominator.bitLength() <= 40
                && POWERS_OF_TEN.contains(denominator.longValueExact());
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
