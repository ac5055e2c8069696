package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Fits, series, means of ratios and planning at their edges. */
class FitsTest {

    @Test
    void twoPointsMakeNoFitWithUncertainty() {
        assertTrue(LineFit.of(new double[] {1, 2}, new double[] {1, 2}).isEmpty());
        assertTrue(LineFit.of(new double[0], new double[0]).isEmpty());
        assertTrue(LineFitThroughOrigin.of(new double[] {1}, new double[] {1}).isEmpty());
    }

    @Test
    void equalXHaveNoSlope() {
        double[] same = {2, 2, 2, 2};
        double[] y = {1, 2, 3, 4};
        assertTrue(LineFit.of(same, y).isEmpty());
        assertTrue(LineFitThroughOrigin.of(new double[4], y).isEmpty());
        assertTrue(TheilSen.of(same, y).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> LineFit.of(same, new double[] {1}));
    }

    @Test
    void aLevelLineHasSlopeZeroAndNoRSquared() {
        LineFit fit =
                LineFit.of(new double[] {1, 2, 3}, new double[] {0.1, 0.1, 0.1}).orElseThrow();
        assertEquals(0, fit.slope().value());
        assertEquals(0, fit.residualDeviation());
        assertTrue(fit.rSquared().isEmpty());
        assertTrue(fit.slope().pTwoSided(0).isEmpty());
    }

    @Test
    void aPowerLawHasItsExponentAsLogarithmicSlope() {
        double[] x = {1, 2, 4, 8, 16};
        double[] y = Arrays.stream(x).map(v -> 3 * Math.pow(v, 0.75)).toArray();
        LineFit fit = LineFit.ofLogarithms(x, y).orElseThrow();
        assertEquals(0.75, fit.slope().value(), 1e-12);
        assertEquals(Math.log(3), fit.intercept().value(), 1e-12);
        y[2] = 0;
        assertTrue(LineFit.ofLogarithms(x, y).isEmpty());
    }

    @Test
    void aSeriesWithoutBendHasNoTimeConstant() {
        double[] t = {0, 1, 2, 3, 4, 5, 6, 7};
        assertTrue(ApproachFit.of(t, t).isEmpty());
        assertTrue(ApproachFit.of(t, new double[8]).isEmpty());
        assertTrue(
                ApproachFit.of(new double[] {0, 1, 2}, new double[] {0, 1, 1.5}).isEmpty());
        double[] step = {0, 5, 5, 5, 5, 5, 5, 5};
        assertTrue(ApproachFit.of(t, step).isEmpty());
        // Bent the other way, like a charge that speeds up.
        double[] upward = Arrays.stream(t).map(v -> v * v).toArray();
        assertTrue(ApproachFit.of(t, upward).isEmpty());
    }

    @Test
    void whatIsStillToComeIsTheRestOfTheApproach() {
        double[] t = new double[31];
        Arrays.setAll(t, i -> 60.0 * i);
        double[] y =
                Arrays.stream(t).map(v -> 21 + 40 * (1 - Math.exp(-v / 600))).toArray();
        ApproachFit fit = ApproachFit.of(t, y).orElseThrow();
        assertEquals(61, fit.finalValue().value(), 1e-9);
        assertEquals(3, fit.timeConstantsSeen(), 1e-9);
        assertEquals(40 * Math.exp(-3), fit.remaining(), 1e-9);
        // Cooling is the same with a negative change.
        double[] cooling = Arrays.stream(y).map(v -> 100 - v).toArray();
        assertEquals(-40, ApproachFit.of(t, cooling).orElseThrow().rise().value(), 1e-9);
    }

    @Test
    void noiseDoesNotBreakTheApproachFit() {
        Random random = new Random(11);
        int found = 0;
        for (int study = 0; study < 200; study++) {
            double[] t = new double[40];
            Arrays.setAll(t, i -> 30.0 * i);
            double[] y = Arrays.stream(t)
                    .map(v -> 20 + 30 * (1 - Math.exp(-v / 300)) + 0.3 * random.nextGaussian())
                    .toArray();
            ApproachFit fit = ApproachFit.of(t, y).orElseThrow();
            found += fit.finalValue().interval(0.95).contains(50) ? 1 : 0;
        }
        // 95 % of 200 is 190; a binomial count below 178 has a chance of less than 1e-4.
        assertTrue(found >= 178, "covered " + found + " of 200");
    }

    @Test
    void aConstantSeriesHasNoCorrelationAndNoTrend() {
        assertTrue(Autocorrelation.of(Sample.of(3, 3, 3)).isEmpty());
        assertTrue(Autocorrelation.of(Sample.of(3)).isEmpty());
        MannKendall flat = MannKendall.of(Sample.of(3, 3, 3));
        assertEquals(0, flat.s());
        assertTrue(
                flat.z().isEmpty() && flat.pTwoSided().isEmpty() && flat.tauB().isEmpty());
        assertThrows(IllegalArgumentException.class, () -> MannKendall.of(Sample.of(3)));
    }

    @Test
    void anAlternatingSeriesIsWorthNoMoreThanItsLength() {
        Autocorrelation result =
                Autocorrelation.of(Sample.of(1, -1, 1, -1, 1, -1)).orElseThrow();
        // Closed form: −5 products of −1 over 6 squares.
        assertEquals(-5.0 / 6, result.lag1(), 1e-15);
        assertEquals(6, result.effectiveSize());
    }

    @Test
    void tooManyPointsAreRefusedRatherThanKept() {
        double[] many = new double[TheilSen.MOST_POINTS + 1];
        Arrays.setAll(many, i -> i);
        assertThrows(IllegalArgumentException.class, () -> TheilSen.of(many, many));
    }

    @Test
    void threeEqualValuesOrTwoHaveNoOutlier() {
        assertTrue(Grubbs.of(Sample.of(1, 2), 0.05).isEmpty());
        assertTrue(Grubbs.of(Sample.of(2, 2, 2), 0.05).isEmpty());
        // Two equal values and a third: G has its largest possible value (n − 1)/√n, whatever the distance.
        Grubbs extreme = Grubbs.of(Sample.of(1, 1, 9), 0.05).orElseThrow();
        assertEquals(2 / Math.sqrt(3), extreme.statistic(), 1e-12);
        assertEquals(2, extreme.index());
        assertTrue(extreme.p() >= 0 && extreme.p() <= 1e-6);
    }

    @Test
    void geometricMeansRefuseWhatHasNoLogarithm() {
        assertThrows(IllegalArgumentException.class, () -> GeometricMean.of(1, 0));
        assertThrows(IllegalArgumentException.class, () -> GeometricMean.of(1, -2));
        assertThrows(IllegalArgumentException.class, () -> GeometricMean.of());
        assertThrows(IllegalArgumentException.class, () -> GeometricMean.ofLogRatios(List.of()));
    }

    @Test
    void equalRatiosAverageLikeIndependentMeans() {
        // JCGM 100:2008, 5.1.2 and G.4.1: four equal parts have half the uncertainty and four times the degrees of
        // freedom.
        Estimate part = new Estimate(Math.log(1.2), 0.04, 6, 0);
        Estimate mean = GeometricMean.ofLogRatios(List.of(part, part, part, part));
        assertEquals(Math.log(1.2), mean.value(), 1e-15);
        assertEquals(0.02, mean.typeA(), 1e-15);
        assertEquals(24, mean.degreesOfFreedom(), 1e-12);
    }

    @Test
    void theLogarithmOfARatioHasTheRelativeUncertainties() {
        // Delta method: u²(ln r) = (ux/x)² + (uy/y)².
        Estimate log = IndependentMeans.of(new Estimate(30, 0.3, 5, 0), new Estimate(20, 0.4, 7, 0))
                .logRatio()
                .orElseThrow();
        assertEquals(Math.log(1.5), log.value(), 1e-15);
        assertEquals(Math.hypot(0.01, 0.02), log.typeA(), 1e-15);
        assertEquals(25 / (1.0 / 5 + 16.0 / 7), log.degreesOfFreedom(), 1e-9);
    }

    @Test
    void levelsNeedNumbersAndMayBeVeryLoudOrVeryQuiet() {
        assertThrows(IllegalArgumentException.class, () -> SoundLevel.energeticMeanDb());
        assertThrows(IllegalArgumentException.class, () -> SoundLevel.energeticMeanDb(Double.NaN));
        assertEquals(5000, SoundLevel.energeticMeanDb(5000, 5000), 1e-9);
        assertEquals(-5000, SoundLevel.energeticMeanDb(-5000, -5000), 1e-9);
        SoundLevel.Corrected louder = SoundLevel.correctedForBackground(40, 45, 15);
        assertTrue(louder.upperBoundOnly());
        assertEquals(40 - louder.correctionDb(), louder.levelDb());
    }

    @Test
    void noncentralTWithoutShiftIsStudentsT() {
        for (double t : new double[] {-3, -0.5, 0, 1, 4}) {
            double central = 1 - Student.upperTail(t, java.util.OptionalDouble.of(7));
            assertEquals(central, NoncentralT.cumulative(t, 7, 0), 1e-13);
        }
    }

    @Test
    void planningKnowsItsLimits() {
        assertEquals(OptionalInt.of(2), SampleSize.forTwoMeans(1000, 1, 0.05, 0.8));
        assertEquals(OptionalInt.empty(), SampleSize.forTwoMeans(1e-6, 1, 0.05, 0.8));
        assertEquals(OptionalInt.of(2), SampleSize.forHalfWidth(1, 100, 0.95));
        assertEquals(OptionalInt.empty(), SampleSize.forHalfWidth(1, 1e-9, 0.95));
        assertThrows(IllegalArgumentException.class, () -> SampleSize.forTwoMeans(0, 1, 0.05, 0.8));
        assertThrows(IllegalArgumentException.class, () -> SampleSize.forPairs(1, 0, 0.05, 0.8));
        assertThrows(IllegalArgumentException.class, () -> SampleSize.powerForPairs(1, 1, 1, 0.05));
    }
}
