package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EstimateTest {

    @ParameterizedTest(name = "Student's t, two-sided {0}, {1} degrees of freedom: {2} (printed tables; from memory)")
    @CsvSource({
        "0.95, 1, 12.706",
        "0.95, 2, 4.303",
        "0.95, 4, 2.776",
        "0.95, 9, 2.262",
        "0.95, 30, 2.042",
        "0.99, 5, 4.032",
        "0.90, 10, 1.812",
        "0.999, 3, 12.924"
    })
    void studentFactorsAgreeWithPrintedTables(double confidence, double freedom, double factor) {
        assertEquals(factor, Student.factor(confidence, OptionalDouble.of(freedom)), 5e-4);
    }

    @Test
    void infinitelyManyDegreesOfFreedomGiveTheNormalFactor() {
        // 1.959963984540054: the 0.975 quantile of the normal law, from memory.
        assertEquals(1.959963984540054, Student.factor(0.95, OptionalDouble.empty()), 1e-14);
    }

    @Test
    void oneValueHasAMeanButNoInterval() {
        Sample single = Sample.of(4.2);
        assertEquals(4.2, single.mean());
        assertEquals(4.2, single.median());
        assertTrue(single.standardDeviation().isEmpty());
        assertTrue(single.standardError().isEmpty());
        assertTrue(Estimate.ofMean(single).isEmpty());
    }

    @Test
    void noValueIsRefused() {
        assertThrows(IllegalArgumentException.class, Sample::of);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e200})
    void valuesThatWouldSpoilAMeanAreRefused(double value) {
        assertThrows(IllegalArgumentException.class, () -> Sample.of(1, value));
    }

    @ParameterizedTest(name = "{0} taken {1} times")
    @CsvSource({"0.1, 3", "0.1, 10", "1e-7, 7", "-273.15, 6", "1234567.891, 11", "1e150, 4"})
    void equalValuesHaveExactlyThatMeanAndNoScatter(double value, int n) {
        double[] values = new double[n];
        java.util.Arrays.fill(values, value);
        Sample sample = Sample.of(values);
        assertEquals(value, sample.mean());
        assertEquals(OptionalDouble.of(0), sample.standardDeviation());
        Estimate mean = Estimate.ofMean(sample).orElseThrow();
        assertEquals(new Interval(value, value), mean.interval(0.95));
        assertTrue(mean.tStatistic(0).isEmpty());
        assertTrue(mean.pTwoSided(0).isEmpty());
    }

    @Test
    void typeBAloneExpandsWithTheNormalFactor() {
        // JCGM 100:2008, 4.3.7 and G.6.6: limits of error of 0.3 are 0.3/√3, with infinitely many degrees of freedom.
        Estimate estimate = new Estimate(10, 0, 4, TypeB.rectangular(0.3));
        assertTrue(estimate.effectiveDegreesOfFreedom().isEmpty());
        assertEquals(1.959963984540054 * 0.3 / Math.sqrt(3), estimate.expandedUncertainty(0.95), 1e-14);
    }

    @Test
    void equalPartsOfBothTypesHaveFourTimesTheDegreesOfFreedom() {
        // Welch–Satterthwaite with one finite part: ν (u/uA)⁴ = ν·(√2)⁴.
        Estimate estimate = new Estimate(10, 0.5, 3, 0.5);
        assertEquals(0.5 * Math.sqrt(2), estimate.standardUncertainty(), 1e-15);
        assertEquals(12, estimate.effectiveDegreesOfFreedom().orElseThrow(), 1e-12);
    }

    @Test
    void veryLargeAndVerySmallValuesKeepTheirDegreesOfFreedom() {
        for (double unit : new double[] {1e-120, 1, 1e120}) {
            Estimate estimate = new Estimate(unit, unit, 3, unit);
            assertEquals(12, estimate.effectiveDegreesOfFreedom().orElseThrow(), 1e-12);
            assertEquals(Math.sqrt(2), estimate.standardUncertainty() / unit, 1e-15);
        }
    }

    @Test
    void impossibleUncertaintiesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Estimate(1, -0.1, 3, 0));
        assertThrows(IllegalArgumentException.class, () -> new Estimate(1, 0.1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Estimate(Double.NaN, 0.1, 3, 0));
        assertThrows(IllegalArgumentException.class, () -> new Estimate(1, 0.1, 3, Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> new Estimate(1, 0.1, 3, 0).interval(1));
        assertThrows(IllegalArgumentException.class, () -> new Interval(2, 1));
    }

    @ParameterizedTest(name = "n = {0}: ranks {1} and n + 1 - {1} (tables of order-statistic intervals; from memory)")
    @CsvSource({"6, 1", "7, 1", "8, 1", "9, 2", "10, 2", "11, 2", "12, 3", "15, 4", "20, 6", "25, 8", "50, 18"})
    void medianIntervalsHaveThePublishedRanks(int n, int rank) {
        double[] values =
                java.util.stream.IntStream.rangeClosed(1, n).asDoubleStream().toArray();
        MedianInterval result = MedianInterval.of(Sample.of(values), 0.95).orElseThrow();
        assertEquals(rank, result.rank());
        assertEquals(new Interval(rank, n + 1 - rank), result.interval());
        assertTrue(result.coverage() >= 0.95);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void fewerThanSixValuesHaveNoIntervalOfTheMedian(int n) {
        double[] values =
                java.util.stream.IntStream.rangeClosed(1, n).asDoubleStream().toArray();
        assertTrue(MedianInterval.of(Sample.of(values), 0.95).isEmpty());
    }

    @Test
    void sixValuesCoverTheMedianExceptInTwoOfSixtyFourCases() {
        // All six on one side: 2·(1/2)⁶ = 1/32.
        MedianInterval result =
                MedianInterval.of(Sample.of(5, 3, 9, 1, 7, 2), 0.95).orElseThrow();
        assertEquals(new Interval(1, 9), result.interval());
        assertEquals(31.0 / 32, result.coverage(), 1e-15);
    }
}
