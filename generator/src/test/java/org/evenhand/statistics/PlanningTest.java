package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers of repeats for equivalence, shares and failures, against handbooks, a program for bioequivalence, and simulation. */
class PlanningTest {

    /**
     * From memory: the R package PowerTOST, sampleN.TOST(CV) with its defaults (0.80 to 1.25, true ratio 0.95, power 0.8, α 0.05,
     * 2 × 2 crossover). A crossover of N subjects has N − 2 degrees of freedom and a variance of 2σ²/N: that of two means of N/2
     * values each with the deviation σ/√2.
     */
    @ParameterizedTest
    @CsvSource({"0.2, 20, 0.834680", "0.3, 40, 0.815845"})
    void theSizeOfACrossoverIsThatOfAProgramForBioequivalence(double variation, int subjects, double power) {
        double deviation = Math.sqrt(Math.log(1 + variation * variation)) / Math.sqrt(2);
        double margin = Math.log(1.25);
        double difference = Math.log(0.95);
        assertEquals(power, EquivalenceSize.powerForTwoMeans(subjects / 2, margin, difference, deviation, 0.05), 1e-6);
        assertEquals(
                OptionalInt.of(subjects / 2), EquivalenceSize.forTwoMeans(margin, difference, deviation, 0.05, 0.8));
    }

    @ParameterizedTest
    @CsvSource({"6, 1.5, 0", "12, 1.2, 0.3", "4, 3, 1"})
    void theChanceOfShowingEquivalenceIsThatOfSimulatedStudies(int n, double margin, double difference) {
        int studies = 20_000;
        Random random = new Random(7);
        int shown = 0;
        for (int study = 0; study < studies; study++) {
            double[] x = values(random, n, difference);
            double[] y = values(random, n, 0);
            double pooled = (variance(x) + variance(y)) / 2;
            double reach = Student.upperQuantile(0.05, 2.0 * (n - 1)) * Math.sqrt(pooled * 2 / n);
            double found = Sample.of(x).mean() - Sample.of(y).mean();
            shown += Math.abs(found) + reach < margin ? 1 : 0;
        }
        double power = EquivalenceSize.powerForTwoMeans(n, margin, difference, 1, 0.05);
        // Four standard errors of a share of one half, the widest.
        assertEquals(power, (double) shown / studies, 4 * Math.sqrt(0.25 / studies));
    }

    private static double variance(double[] values) {
        return StrictMath.pow(Sample.of(values).standardDeviation().orElseThrow(), 2);
    }

    private static double[] values(Random random, int n, double mean) {
        double[] values = new double[n];
        Arrays.setAll(values, i -> mean + random.nextGaussian());
        return values;
    }

    @Test
    void theMarginOfANumberIsTheOneThatNeedsThisNumber() {
        double margin = EquivalenceSize.marginFor(9, false, 2, 0.05, 0.8);
        assertEquals(0.8, EquivalenceSize.powerForTwoMeans(9, margin, 0, 2, 0.05), 1e-8);
        double ofPairs = EquivalenceSize.marginFor(9, true, 2, 0.05, 0.8);
        assertEquals(OptionalInt.of(9), EquivalenceSize.forPairs(ofPairs * (1 + 1e-6), 0, 2, 0.05, 0.8));
    }

    /** The inverse of R's power.t.test(n = 20, delta = 1, sd = 1): 0.8689528. */
    @Test
    void theDifferenceOfANumberIsTheOneThatNeedsThisNumber() {
        assertEquals(1, SampleSize.differenceForTwoMeans(20, 1, 0.05, 0.868952801692498), 1e-8);
        assertEquals(
                0.5, SampleSize.differenceForPairs(29, 0.8, 0.05, SampleSize.powerForPairs(29, 0.5, 0.8, 0.05)), 1e-8);
    }

    /** From memory: handbook values of success testing, "95 % reliability at 95 % confidence": 59, 93, 124 trials; 90 %: 29. */
    @ParameterizedTest
    @CsvSource({"0.95, 0, 59", "0.95, 1, 93", "0.95, 2, 124", "0.90, 0, 29", "0.99, 0, 299"})
    void trialsToShowAShareAreThoseOfHandbooks(double share, int failures, int trials) {
        assertEquals(OptionalInt.of(trials), SuccessSize.forShare(share, failures, 0.95));
    }

    /** From memory: NIST/SEMATECH e-Handbook 8.3.1.4, factors at 95 %: 3.00, 4.74, 6.30 for 0, 1, 2 failures. */
    @ParameterizedTest
    @CsvSource({"0, 3.00", "1, 4.74", "2, 6.30"})
    void timesToShowARateAreThoseOfTheHandbook(int failures, double factor) {
        assertEquals(factor * 200, SuccessSize.timeForRate(1.0 / 200, failures, 0.95), 0.005 * 200);
    }

    @Test
    void timeAndBoundAreInverse() {
        double time = SuccessSize.timeForRate(0.01, 3, 0.9);
        assertEquals(0.01, new PoissonRate(3, time).upperBound(0.9), 1e-12);
    }

    @Test
    void theWidestIntervalOfAShareIsNoWiderThanAsked() {
        int n = SuccessSize.forHalfWidth(0.1, 0.95).orElseThrow();
        for (int k = 0; k <= n; k++) {
            Interval interval = new Proportion(k, n).interval(0.95);
            assertTrue(interval.high() - interval.low() <= 0.2 + 1e-12, k + " of " + n);
        }
        Interval wider = new Proportion((n - 1) / 2, n - 1).interval(0.95);
        assertTrue(wider.high() - wider.low() > 0.2);
        // The normal approximation 1.96²·0.25/0.1² = 96.04 is too small for the exact interval.
        assertTrue(n > 97);
    }

    /** A table of χ²: 5.380 is not reached with probability 0.2 at 9 degrees of freedom; from memory. */
    @Test
    void theUpperLimitOfASpreadIsThatOfTheTable() {
        assertEquals(Math.sqrt(9 / 5.380), SampleSize.upperDeviation(1, 9, 0.8), 1e-4);
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> EquivalenceSize.powerForTwoMeans(1, 1, 0, 1, 0.05));
        assertThrows(IllegalArgumentException.class, () -> EquivalenceSize.forPairs(0, 0, 1, 0.05, 0.8));
        assertThrows(IllegalArgumentException.class, () -> EquivalenceSize.forPairs(1, 0, 1, 0.5, 0.8));
        assertThrows(IllegalArgumentException.class, () -> SuccessSize.forShare(1, 0, 0.95));
        assertThrows(IllegalArgumentException.class, () -> SuccessSize.forHalfWidth(0.5, 0.95));
        assertThrows(IllegalArgumentException.class, () -> SuccessSize.timeForRate(0, 0, 0.95));
        assertThrows(IllegalArgumentException.class, () -> SampleSize.upperDeviation(1, 0, 0.8));
        assertThrows(IllegalArgumentException.class, () -> SampleSize.differenceForPairs(5, 1, 0.05, 0.01));
        assertEquals(OptionalInt.empty(), EquivalenceSize.forTwoMeans(1e-6, 0, 1, 0.05, 0.8));
        // A true difference beyond the margin is never shown to be within it.
        assertEquals(OptionalInt.empty(), EquivalenceSize.forTwoMeans(1, 1.5, 1, 0.05, 0.8));
    }
}
