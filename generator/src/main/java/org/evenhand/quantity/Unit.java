package org.evenhand.quantity;

import java.util.Objects;

/**
 * A unit of measurement: how many SI units it is, exactly.
 *
 * <p>A value v in this unit is v × factor + offset in the coherent SI unit of the dimension (K for points of
 * temperature).
 *
 * @param symbol as pages write it, after the SI Brochure ("mW·h")
 * @param code the UCUM code ("mW.h")
 * @param dimension what it measures
 * @param kind what may be done with its numbers
 * @param factor the size in coherent SI units; not zero
 * @param offset where its zero lies in coherent SI units; zero but for points
 */
public record Unit(String symbol, String code, Dimension dimension, UnitKind kind, Fraction factor, Fraction offset) {

    /** The number one: counts without a name, readings on a scale of their own. */
    public static final Unit ONE = new Unit("1", "1", Dimension.ONE, UnitKind.DIFFERENCE, Fraction.ONE, Fraction.ZERO);

    public Unit {
        Objects.requireNonNull(symbol, "symbol");
        Objects.requireNonNull(code, "code");
        if (factor.numerator().signum() == 0) {
            throw new IllegalArgumentException("a unit of no size: " + symbol);
        }
    }

    /**
     * Reads a unit of the table.
     *
     * @param text a symbol of the SI Brochure or a UCUM code, case-sensitive
     * @throws MisreadException if the table has no such unit; with a suggestion where one is near
     */
    public static Unit parse(String text) throws MisreadException {
        return UnitParser.parse(text);
    }

    /** A unit known to be in the table, for the program's own constants. */
    public static Unit of(String text) {
        try {
            return parse(text);
        } catch (MisreadException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /** Whether a value of this unit can be written in the other without saying anything else. */
    public boolean convertsTo(Unit other) {
        return dimension.equals(other.dimension) && kind == other.kind && (kind != UnitKind.LEVEL || equals(other));
    }

    /**
     * The unit of a difference of two values of this unit: K for points, dB for levels, percentage points for percentages, the
     * unit itself otherwise.
     */
    public Unit ofDifference() {
        return switch (kind) {
            case POINT -> Unit.of("K");
            case LEVEL -> Unit.of("dB");
            case DIFFERENCE -> symbol.equals("%") ? Unit.of("percentage points") : this;
        };
    }

    /** Whether values are without a unit to write: the number one. */
    public boolean isOne() {
        return symbol.equals("1");
    }

    /** This unit multiplied by another; neither may be a point or a level. */
    public Unit times(Unit other) {
        return product(other, 1);
    }

    /** This unit divided by another; neither may be a point or a level. */
    public Unit per(Unit other) {
        return product(other, -1);
    }

    private Unit product(Unit other, int sign) {
        if (kind != UnitKind.DIFFERENCE || other.kind != UnitKind.DIFFERENCE) {
            throw new ArithmeticException(symbol + " and " + other.symbol + " cannot be multiplied or divided");
        }
        return new Unit(
                UnitParser.join(symbol, other.symbol, sign > 0 ? "·" : "/"),
                UnitParser.join(code, other.code, sign > 0 ? "." : "/"),
                dimension.times(other.dimension.power(sign)),
                UnitKind.DIFFERENCE,
                factor.times(other.factor.power(sign)),
                Fraction.ZERO);
    }

    /**
     * How to convert numbers of this unit into another.
     *
     * @throws IllegalArgumentException if they are not of one dimension and kind
     */
    public Conversion to(Unit other) {
        if (!convertsTo(other)) {
            throw new IllegalArgumentException(symbol + " does not convert to " + other.symbol);
        }
        return new Conversion(
                factor.dividedBy(other.factor),
                offset.plus(other.offset.negated()).dividedBy(other.factor));
    }

    /** How to convert a difference of two numbers of this unit into another: the offset plays no part. */
    public Conversion differenceTo(Unit other) {
        if (!dimension.equals(other.dimension)) {
            throw new IllegalArgumentException(symbol + " does not convert to " + other.symbol);
        }
        return new Conversion(factor.dividedBy(other.factor), Fraction.ZERO);
    }
}
