package org.evenhand.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Objects;

/**
 * An exact rational number times a whole power of π, in lowest terms with a positive denominator.
 *
 * <p>Conversion factors between units are exact by definition; keeping them as fractions means that rounding happens
 * once, when a number leaves. The power of π is there for the plane angle alone.
 *
 * @param numerator any whole number
 * @param denominator at least one
 * @param pi the power of π that multiplies the fraction
 */
public record Fraction(BigInteger numerator, BigInteger denominator, int pi) {

    /** π to 50 decimals. Source: A000796 of the On-Line Encyclopedia of Integer Sequences. */
    private static final BigDecimal PI = new BigDecimal("3.14159265358979323846264338327950288419716939937510");

    private static final MathContext DIGITS = new MathContext(40);

    public static final Fraction ONE = of(1, 1);
    public static final Fraction ZERO = of(0, 1);

    public Fraction {
        Objects.requireNonNull(numerator, "numerator");
        if (denominator.signum() == 0) {
            throw new ArithmeticException("denominator is zero");
        }
        BigInteger divisor = numerator.gcd(denominator);
        if (denominator.signum() < 0) {
            divisor = divisor.negate();
        }
        numerator = numerator.divide(divisor);
        denominator = denominator.divide(divisor);
    }

    public static Fraction of(long numerator, long denominator) {
        return new Fraction(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator), 0);
    }

    /** The exact value of a decimal literal such as {@code 9.80665}. */
    public static Fraction of(String decimal) {
        return of(new BigDecimal(decimal));
    }

    public static Fraction of(BigDecimal decimal) {
        if (decimal.scale() <= 0) {
            return new Fraction(decimal.toBigIntegerExact(), BigInteger.ONE, 0);
        }
        return new Fraction(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()), 0);
    }

    public Fraction times(Fraction other) {
        return new Fraction(
                numerator.multiply(other.numerator), denominator.multiply(other.denominator), pi + other.pi);
    }

    public Fraction dividedBy(Fraction other) {
        return new Fraction(
                numerator.multiply(other.denominator), denominator.multiply(other.numerator), pi - other.pi);
    }

    /** @throws ArithmeticException if the two carry different powers of π, for no fraction is their sum */
    public Fraction plus(Fraction other) {
        if (numerator.signum() == 0) {
            return other;
        }
        if (other.numerator.signum() == 0) {
            return this;
        }
        if (pi != other.pi) {
            throw new ArithmeticException("different powers of π");
        }
        return new Fraction(
                numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator),
                pi);
    }

    public Fraction negated() {
        return new Fraction(numerator.negate(), denominator, pi);
    }

    public Fraction power(int exponent) {
        Fraction result = ONE;
        for (int i = 0; i < Math.abs(exponent); i++) {
            result = result.times(this);
        }
        return exponent < 0 ? ONE.dividedBy(result) : result;
    }

    /** How many bits it takes to write its larger part down, π taken for two bits. */
    int bits() {
        return Math.max(numerator.bitLength(), denominator.bitLength()) + 2 * Math.abs(pi);
    }

    /** To 40 significant digits, exact where the expansion ends before. */
    public BigDecimal toBigDecimal() {
        BigDecimal quotient = new BigDecimal(numerator).divide(new BigDecimal(denominator), DIGITS);
        return pi >= 0 ? quotient.multiply(PI.pow(pi), DIGITS) : quotient.divide(PI.pow(-pi), DIGITS);
    }

    /** The nearest double. */
    public double toDouble() {
        return toBigDecimal().doubleValue();
    }
}
