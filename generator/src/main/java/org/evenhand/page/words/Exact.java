package org.evenhand.page.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers for machines: the shortest decimal that reads back as the same number, alike on every Java. */
public final class Exact {

    private Exact() {}

    /**
     * The shortest of 15, 16 or 17 significant digits that parses back, without an exponent from 1e-9 up to 1e21.
     *
     * @throws IllegalArgumentException if the number is not finite: what does not exist is absent, and never such a number
     */
    public static String of(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("no number to write: " + value);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal exact = new BigDecimal(value);
        BigDecimal shortest = exact;
        for (int digits = 15; digits <= 17; digits++) {
            shortest = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (shortest.doubleValue() == value) {
                break;
            }
        }
        shortest = shortest.stripTrailingZeros();
        int exponent = shortest.precision() - shortest.scale() - 1;
        if (exponent >= -9 && exponent < 21) {
            return shortest.toPlainString();
        }
        BigDecimal mantissa = shortest.scaleByPowerOfTen(-exponent).stripTrailingZeros();
        return mantissa.toPlainString() + "e" + exponent;
    }
}
