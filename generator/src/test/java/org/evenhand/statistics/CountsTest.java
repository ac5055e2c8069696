package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rates, proportions and survival at their edges. */
class CountsTest {

    @ParameterizedTest(name = "no failure in {0} h: rate below {1} per hour at 95 % (common practice, no source)")
    @CsvSource({"16, 0.187", "48, 0.062"})
    void aTestWithoutFailureBoundsTheRate(double hours, double bound) {
        PoissonRate rate = new PoissonRate(0, hours);
        assertEquals(bound, rate.upperBound(0.95), 5e-4);
        // Getting through the same time again at that rate has the chance that the bound leaves: 5 %.
        assertEquals(0.05, rate.chanceOfNoEvent(hours, 0.95), 1e-15);
        assertEquals(0.05 * 0.05 * 0.05, rate.chanceOfNoEvent(3 * hours, 0.95), 1e-15);
        assertTrue(rate.meanTimeBetween().isEmpty());
        assertEquals(0, rate.interval(0.95).low());
        assertEquals(0, rate.lowerBound(0.95));
    }

    @Test
    void oneOfOneLeavesNearlyEverythingOpen() {
        // Common practice, no source: 2.5 % to 100 %.
        Interval interval = new Proportion(1, 1).interval(0.95);
        assertEquals(0.025, interval.low(), 1e-12);
        assertEquals(1, interval.high());
    }

    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource({"0, 5", "1, 5", "3, 17", "17, 17", "499, 1000", "1, 100000"})
    void countingTheOppositeMirrorsTheInterval(int successes, int trials) {
        Interval interval = new Proportion(successes, trials).interval(0.95);
        Interval mirrored = new Proportion(trials - successes, trials).interval(0.95);
        assertEquals(interval.low(), 1 - mirrored.high(), 1e-12);
        assertEquals(interval.high(), 1 - mirrored.low(), 1e-12);
    }

    @Test
    void impossibleCountsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Proportion(0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Proportion(3, 2));
        assertThrows(IllegalArgumentException.class, () -> new Proportion(-1, 2));
        assertThrows(IllegalArgumentException.class, () -> new PoissonRate(-1, 2));
        assertThrows(IllegalArgumentException.class, () -> new PoissonRate(1, 0));
        assertThrows(IllegalArgumentException.class, () -> CensoredTime.event(-1));
        assertThrows(IllegalArgumentException.class, () -> CensoredTime.event(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> KaplanMeier.of(List.of()));
    }

    private static List<CensoredTime> events(double... times) {
        return DoubleStream.of(times).mapToObj(CensoredTime::event).toList();
    }

    @Test
    void withoutCensoringSurvivalIsTheShareStillWaiting() {
        KaplanMeier curve = KaplanMeier.of(events(3, 1, 2, 5, 4));
        for (int i = 0; i < 5; i++) {
            assertEquals((4 - i) / 5.0, curve.steps().get(i).survival(), 1e-15);
        }
        assertEquals(OptionalDouble.of(3), curve.median());
        KaplanMeier.Step last = curve.steps().get(4);
        assertTrue(last.standardUncertainty().isEmpty() && last.interval(0.95).isEmpty());
    }

    @Test
    void allCensoredNeverReachesTheMedian() {
        KaplanMeier curve = KaplanMeier.of(List.of(CensoredTime.censored(45), CensoredTime.censored(45)));
        assertTrue(curve.median().isEmpty());
        assertTrue(curve.medianLow(0.95).isEmpty());
        assertTrue(curve.medianHigh(0.95).isEmpty());
        assertEquals(0, curve.events());
    }

    @Test
    void groupsWithoutEventCannotBeCompared() {
        List<CensoredTime> none = List.of(CensoredTime.censored(45), CensoredTime.censored(40));
        assertTrue(LogRank.of(List.of(none, none)).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> LogRank.of(List.of(none)));
    }

    @ParameterizedTest(name = "{0} and {0} times wholly apart: 2 of {1} arrangements")
    @CsvSource({"3, 20", "4, 70", "5, 252", "6, 924"})
    void groupsWhollyApartHaveTheSmallestExactPValue(int n, int arrangements) {
        // Closed form: of C(2n, n) arrangements only this one and its mirror image set the groups so far apart.
        double[] early = new double[n];
        double[] late = new double[n];
        Arrays.setAll(early, i -> 1 + i);
        Arrays.setAll(late, i -> 100 + i);
        LogRank test = LogRank.of(List.of(events(early), events(late))).orElseThrow();
        assertTrue(test.pExact().orElseThrow() <= 2.0 / arrangements + 1e-12);
        assertTrue(test.pExact().orElseThrow() >= 1.0 / arrangements);
        assertEquals(n, test.observed().get(0));
        assertEquals(2.0 * n, test.expected().get(0) + test.expected().get(1), 1e-12);
        assertEquals(ChiSquaredDistribution.of(1).survivalProbability(test.chiSquared()), test.pAsymptotic(), 1e-15);
    }

    @Test
    void mixedGroupsHaveALargeExactPValue() {
        LogRank test =
                LogRank.of(List.of(events(1, 4, 5, 8), events(2, 3, 6, 7))).orElseThrow();
        assertTrue(test.pExact().orElseThrow() > 0.5);
        // Which group is named first makes no difference.
        LogRank swapped =
                LogRank.of(List.of(events(2, 3, 6, 7), events(1, 4, 5, 8))).orElseThrow();
        assertEquals(test.chiSquared(), swapped.chiSquared(), 1e-12);
        assertEquals(test.pExact(), swapped.pExact());
    }

    @Test
    void threeGroupsAreArrangedToo() {
        LogRank test =
                LogRank.of(List.of(events(1, 2), events(3, 4), events(5, 6))).orElseThrow();
        // 6!/(2!·2!·2!) = 90 arrangements; the three groups may change names in 3! ways.
        double smallest = 6.0 / 90;
        assertEquals(2, test.degreesOfFreedom());
        assertTrue(test.pExact().orElseThrow() >= 1.0 / 90 && test.pExact().orElseThrow() <= 1);
        assertEquals(0, Math.IEEEremainder(test.pExact().orElseThrow() * 90, 1), 1e-9);
        assertTrue(test.pExact().orElseThrow() >= smallest - 1e-12);
    }

    @Test
    void beyondTenThousandArrangementsOnlyTheAsymptoticValueIsGiven() {
        double[] eight = {1, 3, 5, 7, 9, 11, 13, 15};
        double[] others = {2, 4, 6, 8, 10, 12, 14, 16};
        // C(16, 8) = 12 870.
        assertTrue(LogRank.of(List.of(events(eight), events(others)))
                .orElseThrow()
                .pExact()
                .isEmpty());
    }
}
