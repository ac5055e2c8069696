package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Differences and ratios: edges and properties, the latter over seeded random studies. */
class ContrastTest {

    record Study(Sample x, Sample y) {}

    private static final Sample STEADY = Sample.of(5, 5, 5);
    private static final Sample SPREAD = Sample.of(4, 6, 8, 7);

    /** Two hundred studies of 2 to 8 values a side, with means that differ by about as much as can be shown. */
    static List<Study> studies() {
        Random random = new Random(20260302);
        return IntStream.range(0, 200)
                .mapToObj(i -> new Study(sample(random, 2 + random.nextInt(7)), sample(random, 2 + random.nextInt(7))))
                .toList();
    }

    private static Sample sample(Random random, int n) {
        double mean = 10 + 3 * random.nextGaussian();
        double deviation = 0.2 + 3 * random.nextDouble();
        return Sample.of(IntStream.range(0, n)
                .mapToDouble(i -> mean + deviation * random.nextGaussian())
                .toArray());
    }

    private static Sample map(Sample sample, double factor, double offset) {
        return Sample.of(
                Arrays.stream(sample.values()).map(v -> v * factor + offset).toArray());
    }

    private static IndependentMeans means(Study study) {
        return IndependentMeans.of(study.x(), study.y()).orElseThrow();
    }

    @Test
    void oneValueOnASideAllowsNoComparison() {
        assertTrue(IndependentMeans.of(Sample.of(1), SPREAD).isEmpty());
        assertTrue(IndependentMeans.of(SPREAD, Sample.of(1)).isEmpty());
        assertTrue(PairedMeans.of(Sample.of(1), Sample.of(2)).isEmpty());
    }

    @Test
    void pairsOfUnequalNumberAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> PairedMeans.of(STEADY, SPREAD));
    }

    @Test
    void aSideWithoutScatterLeavesTheOthersDegreesOfFreedom() {
        // Welch–Satterthwaite with one variance zero: the degrees of freedom of the other side, here 4 − 1.
        Estimate difference =
                IndependentMeans.of(STEADY, SPREAD).orElseThrow().difference().orElseThrow();
        assertEquals(3, difference.effectiveDegreesOfFreedom().orElseThrow(), 1e-12);
        assertEquals(SPREAD.standardError().orElseThrow(), difference.standardUncertainty(), 1e-15);
    }

    @Test
    void twoSidesWithoutScatterHaveNoDifferenceToTest() {
        IndependentMeans means = IndependentMeans.of(STEADY, Sample.of(6, 6, 6)).orElseThrow();
        assertTrue(means.difference().isEmpty());
        assertTrue(means.ratioInterval(0.95).isEmpty());
        assertTrue(means.logRatio().isEmpty());
        assertEquals(5.0 / 6, means.ratio().orElseThrow());
    }

    @Test
    void scatterOfRoundingOnlyCountsAsNone() {
        // 1.1 − 1.0 and 2.1 − 2.0 differ in binary only.
        PairedMeans pairs =
                PairedMeans.of(Sample.of(1.1, 2.1, 3.1), Sample.of(1, 2, 3)).orElseThrow();
        assertTrue(pairs.difference().isEmpty());
    }

    @Test
    void instrumentErrorsMakeTwoSteadySidesComparable() {
        Estimate x = Estimate.ofMean(STEADY).orElseThrow().withTypeB(0.3);
        Estimate y = Estimate.ofMean(Sample.of(6, 6, 6)).orElseThrow().withTypeB(0.4);
        Estimate difference = IndependentMeans.of(x, y).difference().orElseThrow();
        assertEquals(0.5, difference.standardUncertainty(), 1e-15);
        assertTrue(difference.effectiveDegreesOfFreedom().isEmpty());
        assertTrue(IndependentMeans.of(x, y).ratioInterval(0.95).isPresent());
    }

    @Test
    void anOffsetCommonToBothSidesCancelsInTheDifference() {
        // JCGM 100:2008, 5.2.2: u²(x − y) = ux² + uy² − 2·cov.
        Estimate x = Estimate.ofMean(SPREAD).orElseThrow().withTypeB(0.5);
        Estimate y = Estimate.ofMean(map(SPREAD, 1, 3)).orElseThrow().withTypeB(0.5);
        assertEquals(
                0, new IndependentMeans(x, y, 0.25).difference().orElseThrow().typeB());
        assertEquals(
                Math.sqrt(0.5),
                IndependentMeans.of(x, y).difference().orElseThrow().typeB(),
                1e-15);
        assertThrows(IllegalArgumentException.class, () -> new IndependentMeans(x, y, 0.26));
    }

    @Test
    void aGainErrorCommonToBothSidesScalesWithTheDifferenceAndCancelsInTheRatio() {
        double gain = 0.01;
        Estimate x = new Estimate(30, 0.2, 4, gain * 30);
        Estimate y = new Estimate(20, 0.2, 4, gain * 20);
        IndependentMeans means = new IndependentMeans(x, y, gain * gain * 30 * 20);
        assertEquals(gain * 10, means.difference().orElseThrow().typeB(), 1e-12);
        // The root of what rounding leaves of a variance of 0.1.
        assertEquals(0, means.at(1.5).typeB(), 1e-8);
        assertEquals(0, means.logRatio().orElseThrow().typeB(), 1e-8);
    }

    @Test
    void aDenominatorThatCannotBeToldFromZeroLeavesTheRatioUnbounded() {
        // Mean 0.5 with standard error 0.29: zero is not rejected at 95 %.
        IndependentMeans means =
                IndependentMeans.of(Sample.of(4, 5, 6), Sample.of(0, 0.5, 1)).orElseThrow();
        assertTrue(means.difference().isPresent());
        assertTrue(means.ratioInterval(0.95).isEmpty());
        assertTrue(IndependentMeans.of(Sample.of(4, 5, 6), Sample.of(-1, 0, 1))
                .orElseThrow()
                .ratio()
                .isEmpty());
    }

    @Test
    void aDenominatorJustToldFromZeroHasAVeryWideRatio() {
        IndependentMeans means =
                IndependentMeans.of(Sample.of(4, 5, 6), Sample.of(1, 1.9, 2.8)).orElseThrow();
        assertTrue(means.denominator().pTwoSided(0).orElseThrow() > 0.05);
        assertTrue(means.ratioInterval(0.95).isEmpty());
        Interval at90 = means.ratioInterval(0.9).orElseThrow();
        assertTrue(at90.high() > 3 * means.ratio().orElseThrow());
        // At the limits the test is just not rejected.
        assertEquals(0.1, means.at(at90.high()).pTwoSided(0).orElseThrow(), 1e-9);
        assertEquals(0.1, means.at(at90.low()).pTwoSided(0).orElseThrow(), 1e-9);
    }

    @ParameterizedTest
    @MethodSource("studies")
    void theRatioHoldsOneExactlyWhenTheDifferenceHoldsZero(Study study) {
        for (double confidence : new double[] {0.8, 0.9, 0.95, 0.99}) {
            IndependentMeans means = means(study);
            boolean zero = means.difference().orElseThrow().interval(confidence).contains(0);
            Optional<Interval> ratio = means.ratioInterval(confidence);
            ratio.ifPresent(interval -> assertEquals(zero, interval.contains(1)));
            ratio.ifPresent(
                    interval -> assertTrue(interval.contains(means.ratio().orElseThrow())));
        }
    }

    @ParameterizedTest
    @MethodSource("studies")
    void thePairedRatioHoldsOneExactlyWhenThePairedDifferenceHoldsZero(Study study) {
        int n = Math.min(study.x().size(), study.y().size());
        PairedMeans pairs = PairedMeans.of(
                        Sample.of(Arrays.copyOf(study.x().values(), n)),
                        Sample.of(Arrays.copyOf(study.y().values(), n)))
                .orElseThrow();
        boolean zero = pairs.difference().orElseThrow().interval(0.95).contains(0);
        pairs.ratioInterval(0.95).ifPresent(interval -> assertEquals(zero, interval.contains(1)));
    }

    @ParameterizedTest
    @MethodSource("studies")
    void theIntervalExcludesZeroExactlyWhenThePValueIsBelowTheError(Study study) {
        Estimate difference = means(study).difference().orElseThrow();
        double p = difference.pTwoSided(0).orElseThrow();
        assertFalse(difference.interval(1 - p * 0.999).contains(0)
                && difference.interval(1 - p * 1.001).contains(0));
        assertEquals(p < 0.05, !difference.interval(0.95).contains(0));
    }

    @ParameterizedTest
    @MethodSource("studies")
    void swappingTheSidesNegatesTheDifferenceAndInvertsTheRatio(Study study) {
        IndependentMeans there = means(study);
        IndependentMeans back = means(new Study(study.y(), study.x()));
        Interval a = there.difference().orElseThrow().interval(0.95);
        Interval b = back.difference().orElseThrow().interval(0.95);
        assertEquals(a.low(), -b.high(), 1e-12 * a.halfWidth());
        assertEquals(a.high(), -b.low(), 1e-12 * a.halfWidth());
        Optional<Interval> ratio = there.ratioInterval(0.95);
        Optional<Interval> inverse = back.ratioInterval(0.95);
        if (ratio.isPresent()
                && inverse.isPresent()
                && ratio.get().low() > 0
                && inverse.get().low() > 0) {
            assertEquals(1, ratio.get().low() * inverse.get().high(), 1e-9);
            assertEquals(1, ratio.get().high() * inverse.get().low(), 1e-9);
        }
    }

    @ParameterizedTest
    @MethodSource("studies")
    void anotherUnitScalesTheDifferenceAndLeavesTheRatio(Study study) {
        IndependentMeans original = means(study);
        IndependentMeans scaled = means(new Study(map(study.x(), 3600, 0), map(study.y(), 3600, 0)));
        Interval a = original.difference().orElseThrow().interval(0.95);
        Interval b = scaled.difference().orElseThrow().interval(0.95);
        assertEquals(3600 * a.low(), b.low(), 1e-9 * b.halfWidth());
        assertEquals(3600 * a.high(), b.high(), 1e-9 * b.halfWidth());
        assertEquals(
                original.ratioInterval(0.95).isPresent(),
                scaled.ratioInterval(0.95).isPresent());
        original.ratioInterval(0.95).ifPresent(ratio -> {
            Interval other = scaled.ratioInterval(0.95).orElseThrow();
            assertEquals(ratio.low(), other.low(), 1e-9 * Math.abs(ratio.low()));
            assertEquals(ratio.high(), other.high(), 1e-9 * Math.abs(ratio.high()));
        });
    }

    @ParameterizedTest
    @MethodSource("studies")
    void aCommonShiftLeavesTheDifference(Study study) {
        Interval a = means(study).difference().orElseThrow().interval(0.95);
        Interval b = means(new Study(map(study.x(), 1, 273.15), map(study.y(), 1, 273.15)))
                .difference()
                .orElseThrow()
                .interval(0.95);
        assertEquals(a.low(), b.low(), 1e-9 * a.halfWidth() + 1e-11);
        assertEquals(a.high(), b.high(), 1e-9 * a.halfWidth() + 1e-11);
    }

    @ParameterizedTest
    @MethodSource("studies")
    void theOrderOfTheValuesDoesNotMatterBeyondRounding(Study study) {
        double[] reversed = study.x().values();
        for (int i = 0, j = reversed.length - 1; i < j; i++, j--) {
            double held = reversed[i];
            reversed[i] = reversed[j];
            reversed[j] = held;
        }
        Estimate a = means(study).difference().orElseThrow();
        Estimate b =
                means(new Study(Sample.of(reversed), study.y())).difference().orElseThrow();
        assertEquals(a.value(), b.value(), 1e-13);
        assertEquals(a.standardUncertainty(), b.standardUncertainty(), 1e-13);
    }

    @ParameterizedTest
    @MethodSource("studies")
    void equivalenceIsTheShortIntervalInsideTheMargin(Study study) {
        IndependentMeans means = means(study);
        Interval margin = new Interval(-3, 3);
        Equivalence difference =
                Equivalence.of(means.difference().orElseThrow(), margin, 0.05).orElseThrow();
        assertEquals(difference.equivalent(), Math.max(difference.pLower(), difference.pUpper()) < 0.05);
        Equivalence.ofRatio(means, 0.3, 0.05).ifPresent(ratio -> {
            assertEquals(ratio.equivalent(), ratio.interval().isInside(new Interval(1 / 1.3, 1.3)));
            assertEquals(ratio.equivalent(), Math.max(ratio.pLower(), ratio.pUpper()) < 0.05);
        });
    }

    @Test
    void pairsOfNegativeValuesHaveTheRatioOfTheirOpposites() {
        Sample x = Sample.of(-14, -8.8, -11.2, -14.2);
        Sample y = Sample.of(-13.2, -8.2, -10.9, -14.3);
        Interval negative =
                PairedMeans.of(x, y).orElseThrow().ratioInterval(0.95).orElseThrow();
        Interval positive = PairedMeans.of(map(x, -1, 0), map(y, -1, 0))
                .orElseThrow()
                .ratioInterval(0.95)
                .orElseThrow();
        assertEquals(positive.low(), negative.low(), 1e-12);
        assertEquals(positive.high(), negative.high(), 1e-12);
        Equivalence a = Equivalence.ofRatio(PairedMeans.of(x, y).orElseThrow(), 0.2, 0.05)
                .orElseThrow();
        assertTrue(a.equivalent());
        assertTrue(a.pLower() < 0.05 && a.pUpper() < 0.05);
    }

    @Test
    void thePairedRatioIsTheClosedFormOfFieller() {
        // Fieller (1954) for pairs: roots of (x̄ − ρȳ)² = t²(sxx − 2ρ·sxy + ρ²·syy)/n, t with n − 1 degrees of freedom.
        double[] x = {14, 8.8, 11.2, 14.2, 11.8, 6.4, 9.8, 11.3, 9.3, 13.6};
        double[] y = {13.2, 8.2, 10.9, 14.3, 10.7, 6.6, 9.5, 10.8, 8.8, 13.3};
        int n = x.length;
        double mx = Arrays.stream(x).sum() / n;
        double my = Arrays.stream(y).sum() / n;
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        for (int i = 0; i < n; i++) {
            sxx += (x[i] - mx) * (x[i] - mx) / (n - 1);
            sxy += (x[i] - mx) * (y[i] - my) / (n - 1);
            syy += (y[i] - my) * (y[i] - my) / (n - 1);
        }
        double t2n = 2.262157162798205 * 2.262157162798205 / n;
        double a = my * my - t2n * syy;
        double b = mx * my - t2n * sxy;
        double c = mx * mx - t2n * sxx;
        double root = Math.sqrt(b * b - a * c);
        Interval interval = PairedMeans.of(Sample.of(x), Sample.of(y))
                .orElseThrow()
                .ratioInterval(0.95)
                .orElseThrow();
        assertEquals((b - root) / a, interval.low(), 1e-12);
        assertEquals((b + root) / a, interval.high(), 1e-12);
    }

    /** One instrument read the same on both sides: its offset and gain cancel, and rounding must not pass for an uncertainty. */
    @Test
    void whatIsCommonToEqualSidesCancelsWithoutARest() {
        for (double u : new double[] {0.1, 0.3, 0.5773502691896258, 1 / 3.0, 1e9 / 7}) {
            double other = Math.sqrt(3 * (u * u / 3));
            IndependentMeans means = new IndependentMeans(
                    new Estimate(200, 0, 3, u),
                    new Estimate(200, 0, 2, other),
                    Math.min(u, other) * Math.max(u, other));
            assertEquals(0, means.at(1).typeB());
            assertTrue(means.difference().isEmpty());
        }
    }
}
