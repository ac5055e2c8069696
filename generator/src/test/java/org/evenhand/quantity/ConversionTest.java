package org.evenhand.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ConversionTest {

    /** Held against the fraction itself, whose arithmetic is that of java.math, by values drawn from a stated seed. */
    @Test
    void theShortWayForDecimalFactorsGivesTheDoubleNearestToTheExactResult() {
        List<Fraction> factors = List.of(
                Fraction.ONE,
                Fraction.of(60, 1),
                Fraction.of(-3, 1),
                Fraction.of(1, 100),
                Fraction.of(1, 1_000_000),
                Fraction.of(36, 10),
                Fraction.of(1, 60),
                Fraction.of(5, 9),
                Fraction.of("9.80665"));
        Random random = new Random(20260302);
        for (int i = 0; i < 20_000; i++) {
            BigDecimal value = BigDecimal.valueOf(random.nextLong() >> random.nextInt(64), random.nextInt(24) - 4);
            for (Fraction factor : factors) {
                double exact = Fraction.of(value).times(factor).toDouble();
                assertEquals(exact, new Conversion(factor, Fraction.ZERO).apply(value), value + " × " + factor);
            }
        }
    }
}
