package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class HolmTest {

    @Test
    void adjustsAsTheDefinitionSays() {
        // Holm (1979): sorted p times m, m − 1, ...; each at least the one before. By hand: 0.01·4, 0.02·3, 0.03·2,
        // 0.04·1.
        assertArrayEquals(new double[] {0.06, 0.04, 0.06, 0.06}, Holm.adjust(0.04, 0.01, 0.03, 0.02), 1e-15);
    }

    @Test
    void neverExceedsOneAndKeepsASingleTestAsItIs() {
        assertArrayEquals(new double[] {1, 1, 0.9}, Holm.adjust(0.7, 0.6, 0.3), 1e-15);
        assertArrayEquals(new double[] {0.03}, Holm.adjust(0.03));
        assertArrayEquals(new double[0], Holm.adjust());
    }

    @Test
    void refusesWhatIsNoProbability() {
        assertThrows(IllegalArgumentException.class, () -> Holm.adjust(0.1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Holm.adjust(1.1));
    }

    @Test
    void theMatchingIntervalExcludesNoEffectExactlyWhenTheAdjustedTestRejects() {
        Estimate estimate = new Estimate(2, 0.7, 8, 0);
        double p = estimate.pTwoSided(0).orElseThrow();
        for (double others : new double[] {p / 2, 0.04, 0.5}) {
            double adjusted = Holm.adjust(p, others, others)[0];
            double confidence = Holm.confidence(p, adjusted, 0.05);
            assertTrue(confidence >= 0.95);
            assertEquals(adjusted < 0.05, !estimate.interval(confidence).contains(0));
        }
    }
}
