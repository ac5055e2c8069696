package org.evenhand.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Writes numbers for readers; the one place where anything is rounded.
 *
 * <p>An uncertainty keeps two significant digits, rounded up from the half; the value is rounded to the same decimal place,
 * half to even. Source: JCGM 100:2008, 7.2.6, and docs/methods.md.
 */
public final class Figures {

    /** Stands between a number and its unit. */
    public static final String NO_BREAK_SPACE = "\u00a0";

    private static final String MINUS = "\u2212";

    /** Digits of a value of which nothing is known but itself. */
    private static final int DIGITS_ALONE = 4;

    private Figures() {}

    /**
     * The number of decimals at which an uncertainty has two significant digits; negative for tens, hundreds …
     *
     * @param uncertainty above zero
     */
    public static int decimals(double uncertainty) {
        BigDecimal exact = new BigDecimal(uncertainty);
        BigDecimal rounded = exact.round(new MathContext(2, RoundingMode.HALF_UP));
        // 0.0996 becomes 0.10, not 0.100: the place follows the rounded number.
        return 1 - (rounded.precision() - rounded.scale() - 1);
    }

    /** The decimals for a value without an uncertainty: four significant digits, or none if it is whole. */
    public static int decimalsAlone(double value) {
        if (value == 0 || (value == Math.rint(value) && Math.abs(value) < 1e15)) {
            return 0;
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(DIGITS_ALONE, RoundingMode.HALF_EVEN));
        int decimals = DIGITS_ALONE - 1 - (rounded.precision() - rounded.scale() - 1);
        return Math.max(0, Math.min(decimals, rounded.stripTrailingZeros().scale()));
    }

    /** A value at a decimal place, half to even, with a true minus sign. */
    public static String at(double value, int decimals) {
        return signed(value, decimals, RoundingMode.HALF_EVEN);
    }

    /** An uncertainty at a decimal place, rounded up from the half. */
    public static String uncertaintyAt(double uncertainty, int decimals) {
        return signed(uncertainty, decimals, RoundingMode.HALF_UP);
    }

    /** A value at the precision of its uncertainty, or at four digits if it has none (zero or not finite). */
    public static String value(double value, double uncertainty) {
        return at(
                value,
                uncertainty > 0 && uncertainty <= Double.MAX_VALUE ? decimals(uncertainty) : decimalsAlone(value));
    }

    /** A number with its unit behind a no-break space; nothing is added for the number one. */
    public static String withUnit(String number, Unit unit) {
        return unit.isOne() ? number : number + NO_BREAK_SPACE + unit.symbol();
    }

    private static String signed(double value, int decimals, RoundingMode mode) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, mode);
        String digits = rounded.abs()
                .setScale(Math.max(0, decimals), RoundingMode.UNNECESSARY)
                .toPlainString();
        return rounded.signum() < 0 ? MINUS + digits : digits;
    }
}
