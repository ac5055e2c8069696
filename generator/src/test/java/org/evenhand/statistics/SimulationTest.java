package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Simulated studies of which the truth is known: how often intervals hold it, and how often tests raise a false alarm. Seeded, so
 * that every run is the same. The shares found are stated in {@code docs/methods.md} and compared with it here.
 */
class SimulationTest {

    private static final int STUDIES = 20_000;

    /** Four standard errors of a share of 5 % in 20 000 studies: 4·√(0.05·0.95/20 000). */
    private static final double CHANCE = 0.0062;

    private static final double RESOLUTION = 0.5;

    /** Ways to draw one value, with standard deviation 1 where not said otherwise, and the true mean. */
    private enum Law {
        NORMAL(10, Random::nextGaussian, 0),
        // An exponential law is skewed by 2; StrictMath, so that it is the same everywhere.
        SKEWED(10, random -> -1 - StrictMath.log(1 - random.nextDouble()), 0),
        ROUNDED(10.1, Random::nextGaussian, RESOLUTION),
        /** Normal, with three times the scatter on one side. */
        UNEVEN(10, Random::nextGaussian, 0);

        private final double mean;
        private final ToDoubleFunction<Random> deviation;
        private final double step;

        Law(double mean, ToDoubleFunction<Random> deviation, double step) {
            this.mean = mean;
            this.deviation = deviation;
            this.step = step;
        }

        Sample draw(Random random, int n, double shift) {
            double scatter = this == UNEVEN && shift > 0 ? 3 : 1;
            double[] values = new double[n];
            Arrays.setAll(values, i -> rounded(mean + shift + scatter * deviation.applyAsDouble(random)));
            return Sample.of(values);
        }

        private double rounded(double value) {
            return step > 0 ? Math.rint(value / step) * step : value;
        }

        /** The mean as the program would state it: a rounded indication carries its resolution as type B. */
        Estimate mean(Sample sample) {
            Estimate mean = Estimate.ofMean(sample).orElseThrow();
            return step > 0 ? mean.withTypeB(TypeB.resolution(step)) : mean;
        }
    }

    static List<MethodsExamples.Block> coverages() {
        return MethodsExamples.blocks("simulation");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("coverages")
    void intervalsCoverAsTheDocumentStates(MethodsExamples.Block stated) {
        Law law = Law.valueOf(stated.word("law").toUpperCase(Locale.ROOT));
        int n = (int) stated.number("n");
        Map<String, Double> found = coverage(law, n, new Random(1000L * law.ordinal() + n));
        for (Map.Entry<String, Double> share : found.entrySet()) {
            assertEquals(stated.number(share.getKey()) / 100, share.getValue(), CHANCE, share.getKey());
            if (law == Law.NORMAL) {
                // What the intervals promise; of the mean exactly, of difference and ratio by Welch's approximation.
                assertTrue(share.getValue() >= 0.95 - CHANCE, share.toString());
            }
        }
        if (law == Law.NORMAL) {
            assertEquals(0.95, found.get("mean"), CHANCE);
        }
    }

    @Test
    void everyLawIsSimulatedWithThreeFiveAndTenValues() {
        List<String> names =
                coverages().stream().map(b -> b.word("law") + " " + b.word("n")).toList();
        for (Law law : Law.values()) {
            for (int n : new int[] {3, 5, 10}) {
                String wanted = law.name().toLowerCase(Locale.ROOT) + " " + n;
                assertTrue(names.contains(wanted), wanted);
            }
        }
    }

    private static Map<String, Double> coverage(Law law, int n, Random random) {
        int mean = 0;
        int difference = 0;
        int ratio = 0;
        for (int study = 0; study < STUDIES; study++) {
            Estimate x = law.mean(law.draw(random, n, 5));
            Estimate y = law.mean(law.draw(random, n, 0));
            IndependentMeans means = IndependentMeans.of(x, y);
            double trueRatio = (law.mean + 5) / law.mean;
            boolean ratioHolds = accepts(means.at(trueRatio), 0);
            mean += accepts(x, law.mean + 5) ? 1 : 0;
            difference += accepts(means.at(1), 5) ? 1 : 0;
            ratio += ratioHolds ? 1 : 0;
            if (study % 20 == 0) {
                agreesWithIntervals(means, x, trueRatio, ratioHolds);
            }
        }
        return Map.of(
                "mean", (double) mean / STUDIES,
                "difference", (double) difference / STUDIES,
                "ratio", (double) ratio / STUDIES);
    }

    /** An interval holds what its test does not reject; the test is quicker to compute. */
    private static boolean accepts(Estimate estimate, double truth) {
        return estimate.pTwoSided(truth).orElse(estimate.value() == truth ? 1 : 0) >= 0.05;
    }

    private static void agreesWithIntervals(IndependentMeans means, Estimate x, double trueRatio, boolean ratioHolds) {
        assertEquals(accepts(x, 15), x.interval(0.95).contains(15));
        Optional<Estimate> difference = means.difference();
        difference.ifPresent(d -> assertEquals(accepts(d, 5), d.interval(0.95).contains(5)));
        means.ratioInterval(0.95).ifPresent(interval -> assertEquals(ratioHolds, interval.contains(trueRatio)));
    }

    @Test
    void exactIntervalsOfProportionsCoverAtLeastAsPromised() {
        // Clopper and Pearson (1934): the coverage is never below the confidence, whatever the share.
        Random random = new Random(3);
        for (int n : new int[] {3, 5, 10}) {
            Interval[] intervals = new Interval[n + 1];
            Arrays.setAll(intervals, k -> new Proportion(k, n).interval(0.95));
            for (double share : new double[] {0.02, 0.3, 0.5, 0.9}) {
                int covered = 0;
                for (int study = 0; study < STUDIES; study++) {
                    int successes = 0;
                    for (int trial = 0; trial < n; trial++) {
                        successes += random.nextDouble() < share ? 1 : 0;
                    }
                    covered += intervals[successes].contains(share) ? 1 : 0;
                }
                assertTrue((double) covered / STUDIES >= 0.95 - CHANCE, n + " trials of share " + share);
            }
        }
    }

    @Test
    void sixComparisonsWithoutEffectRaiseAFalseAlarmInAtMostFivePercentOfStudies() {
        for (Law law : new Law[] {Law.NORMAL, Law.SKEWED}) {
            Random random = new Random(6);
            int alarms = 0;
            for (int study = 0; study < STUDIES; study++) {
                Estimate[] levels = new Estimate[4];
                Arrays.setAll(levels, i -> law.mean(law.draw(random, 5, 0)));
                double[] p = new double[6];
                int next = 0;
                for (int i = 0; i < 4; i++) {
                    for (int j = 0; j < i; j++) {
                        p[next++] = IndependentMeans.of(levels[i], levels[j])
                                .difference()
                                .orElseThrow()
                                .pTwoSided(0)
                                .orElseThrow();
                    }
                }
                alarms += Arrays.stream(Holm.adjust(p)).min().orElseThrow() < 0.05 ? 1 : 0;
            }
            assertTrue((double) alarms / STUDIES <= 0.05 + CHANCE, law + ": " + alarms);
        }
    }

    @Test
    void equivalenceIsWronglyClaimedInAtMostFivePercentOfStudies() {
        // The truth lies exactly on the margin, the worst case.
        Interval margin = new Interval(-2, 2);
        for (int n : new int[] {3, 5, 10}) {
            Random random = new Random(90 + n);
            int claimed = 0;
            int claimedOfRatio = 0;
            for (int study = 0; study < STUDIES; study++) {
                Estimate x = Law.NORMAL.mean(Law.NORMAL.draw(random, n, 2));
                Estimate y = Law.NORMAL.mean(Law.NORMAL.draw(random, n, 0));
                IndependentMeans means = IndependentMeans.of(x, y);
                Estimate d = means.difference().orElseThrow();
                claimed += Math.max(
                                        d.pAbove(margin.low()).orElseThrow(),
                                        d.pBelow(margin.high()).orElseThrow())
                                < 0.05
                        ? 1
                        : 0;
                // 12 / 10 is the upper margin of a ratio with m = 0.2.
                claimedOfRatio += means.at(1.2).pBelow(0).orElseThrow() < 0.05
                                && means.at(1 / 1.2).pAbove(0).orElseThrow() < 0.05
                        ? 1
                        : 0;
                if (study % 100 == 0) {
                    Equivalence whole = Equivalence.of(d, margin, 0.05).orElseThrow();
                    assertEquals(whole.equivalent(), Math.max(whole.pLower(), whole.pUpper()) < 0.05);
                }
            }
            assertTrue((double) claimed / STUDIES <= 0.05 + CHANCE, n + ": " + claimed);
            assertTrue((double) claimedOfRatio / STUDIES <= 0.05 + CHANCE, n + ": " + claimedOfRatio);
        }
    }
}
