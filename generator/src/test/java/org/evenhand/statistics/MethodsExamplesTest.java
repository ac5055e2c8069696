package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs the worked examples of {@code docs/methods.md}; each number there agrees to its last printed digit. */
public class MethodsExamplesTest {

    /** The names of the examples that run here. */
    public static List<String> names() {
        return RUNNERS.keySet().stream().sorted().toList();
    }

    private static final Map<String, Consumer<MethodsExamples.Block>> RUNNERS = Map.ofEntries(
            Map.entry("mean", MethodsExamplesTest::mean),
            Map.entry("type-b", MethodsExamplesTest::typeB),
            Map.entry("median", MethodsExamplesTest::median),
            Map.entry("grubbs", MethodsExamplesTest::grubbs),
            Map.entry("dip", MethodsExamplesTest::dip),
            Map.entry("difference", MethodsExamplesTest::difference),
            Map.entry("paired", MethodsExamplesTest::paired),
            Map.entry("ratio", MethodsExamplesTest::ratio),
            Map.entry("equivalence", MethodsExamplesTest::equivalence),
            Map.entry("holm", MethodsExamplesTest::holm),
            Map.entry("line", MethodsExamplesTest::line),
            Map.entry("line-through-origin", MethodsExamplesTest::throughOrigin),
            Map.entry("exponent", MethodsExamplesTest::exponent),
            Map.entry("survival", MethodsExamplesTest::survival),
            Map.entry("log-rank", MethodsExamplesTest::logRank),
            Map.entry("proportion", MethodsExamplesTest::proportion),
            Map.entry("failure-rate", MethodsExamplesTest::failureRate),
            Map.entry("geometric-mean", MethodsExamplesTest::geometricMean),
            Map.entry("sound-level", MethodsExamplesTest::soundLevel),
            Map.entry("budget", MethodsExamplesTest::budget),
            Map.entry("sample-size", MethodsExamplesTest::sampleSize),
            Map.entry("planned-size", MethodsExamplesTest::plannedSize),
            Map.entry("autocorrelation", MethodsExamplesTest::autocorrelation),
            Map.entry("trend", MethodsExamplesTest::trend),
            Map.entry("approach", MethodsExamplesTest::approach));

    static List<MethodsExamples.Block> examples() {
        return MethodsExamples.blocks("example").stream()
                .filter(example -> RUNNERS.containsKey(example.name()))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void theDocumentedExampleComesOut(MethodsExamples.Block example) {
        RUNNERS.get(example.name()).accept(example);
    }

    @Test
    void everyComputationHasAnExample() {
        TreeSet<String> documented =
                examples().stream().map(MethodsExamples.Block::name).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(RUNNERS.keySet()), documented);
    }

    /** Agrees to the last digit printed. */
    public static void agrees(MethodsExamples.Block example, String key, double actual) {
        String printed = example.word(key);
        int decimals = new BigDecimal(printed).scale();
        double tolerance = decimals > 0 ? 0.5 * Math.pow(10, -decimals) : 1e-9;
        assertEquals(Double.parseDouble(printed), actual, tolerance, key);
    }

    private static void agrees(MethodsExamples.Block example, String key, OptionalDouble actual) {
        agrees(example, key, actual.orElseThrow());
    }

    private static void agrees(MethodsExamples.Block example, Interval interval) {
        agrees(example, "low", interval.low());
        agrees(example, "high", interval.high());
    }

    private static Sample sample(MethodsExamples.Block example, String key) {
        return Sample.of(example.numbers(key));
    }

    private static IndependentMeans means(MethodsExamples.Block example) {
        return IndependentMeans.of(sample(example, "x"), sample(example, "y")).orElseThrow();
    }

    private static void mean(MethodsExamples.Block example) {
        Sample values = sample(example, "values");
        agrees(example, "mean", values.mean());
        agrees(example, "standard-deviation", values.standardDeviation());
        agrees(example, Estimate.ofMean(values).orElseThrow().interval(0.95));
    }

    private static void typeB(MethodsExamples.Block example) {
        Estimate mean = Estimate.ofMean(sample(example, "values"))
                .orElseThrow()
                .withTypeB(TypeB.rectangular(example.number("limits-of-error")));
        agrees(example, "type-a", mean.typeA());
        agrees(example, "type-b", mean.typeB());
        agrees(example, "combined", mean.standardUncertainty());
        agrees(example, "degrees-of-freedom", mean.effectiveDegreesOfFreedom());
    }

    private static void median(MethodsExamples.Block example) {
        Sample values = sample(example, "values");
        agrees(example, "median", values.median());
        agrees(example, MedianInterval.of(values, 0.95).orElseThrow().interval());
    }

    private static void grubbs(MethodsExamples.Block example) {
        Grubbs result = Grubbs.of(sample(example, "values"), 0.05).orElseThrow();
        agrees(example, "suspect", result.value());
        agrees(example, "g", result.statistic());
        agrees(example, "critical", result.critical());
        assertTrue(result.outlier());
    }

    private static void dip(MethodsExamples.Block example) {
        agrees(example, "dip", DipTest.of(sample(example, "values")).dip());
    }

    private static void difference(MethodsExamples.Block example) {
        Estimate difference = means(example).difference().orElseThrow();
        agrees(example, "difference", difference.value());
        agrees(example, "standard-uncertainty", difference.standardUncertainty());
        agrees(example, "degrees-of-freedom", difference.effectiveDegreesOfFreedom());
        agrees(example, "p", difference.pTwoSided(0));
        agrees(example, difference.interval(0.95));
        agrees(example, "smallest-shown", difference.expandedUncertainty(0.95));
    }

    private static void paired(MethodsExamples.Block example) {
        Estimate difference = PairedMeans.of(sample(example, "x"), sample(example, "y"))
                .orElseThrow()
                .difference()
                .orElseThrow();
        agrees(example, "difference", difference.value());
        agrees(example, "p", difference.pTwoSided(0));
        agrees(example, difference.interval(0.95));
    }

    private static void ratio(MethodsExamples.Block example) {
        agrees(example, "ratio", means(example).ratio());
        agrees(example, means(example).ratioInterval(0.95).orElseThrow());
    }

    private static void equivalence(MethodsExamples.Block example) {
        Interval margin = new Interval(-example.number("margin"), example.number("margin"));
        Equivalence result = Equivalence.of(means(example).difference().orElseThrow(), margin, 0.05)
                .orElseThrow();
        agrees(example, "p-lower", result.pLower());
        agrees(example, "p-upper", result.pUpper());
        agrees(example, result.interval());
        assertTrue(result.equivalent());
    }

    private static void holm(MethodsExamples.Block example) {
        double[] adjusted = Holm.adjust(example.numbers("p"));
        double[] expected = example.numbers("adjusted");
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], adjusted[i], 1e-12);
        }
    }

    private static void line(MethodsExamples.Block example) {
        LineFit fit = LineFit.of(example.numbers("x"), example.numbers("y")).orElseThrow();
        agrees(example, "slope", fit.slope().value());
        agrees(example, "residual-deviation", fit.residualDeviation());
        agrees(example, "r-squared", fit.rSquared());
        agrees(example, fit.slope().interval(0.95));
    }

    private static void throughOrigin(MethodsExamples.Block example) {
        LineFitThroughOrigin fit = LineFitThroughOrigin.of(example.numbers("x"), example.numbers("y"))
                .orElseThrow();
        agrees(example, "slope", fit.slope().value());
        agrees(example, "residual-deviation", fit.residualDeviation());
        agrees(example, "standard-uncertainty", fit.slope().standardUncertainty());
        agrees(example, "r-squared-uncentred", fit.rSquaredUncentred());
    }

    private static void exponent(MethodsExamples.Block example) {
        LineFit fit =
                LineFit.ofLogarithms(example.numbers("x"), example.numbers("y")).orElseThrow();
        agrees(example, "exponent", fit.slope().value());
        assertTrue(fit.slope().interval(0.95).high() < 1);
    }

    private static List<CensoredTime> times(MethodsExamples.Block example, String key) {
        return Arrays.stream(example.word(key).split("\\s+"))
                .map(word -> word.endsWith("+")
                        ? CensoredTime.censored(Double.parseDouble(word.substring(0, word.length() - 1)))
                        : CensoredTime.event(Double.parseDouble(word)))
                .toList();
    }

    private static void survival(MethodsExamples.Block example) {
        KaplanMeier curve = KaplanMeier.of(times(example, "times"));
        double[] expected = example.numbers("survival");
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], curve.steps().get(i).survival(), 5e-5);
        }
        agrees(example, "median", curve.median());
        agrees(example, "median-low", curve.medianLow(0.95));
        assertEquals("not-reached", example.word("median-high"));
        assertTrue(curve.medianHigh(0.95).isEmpty());
    }

    private static void logRank(MethodsExamples.Block example) {
        LogRank test = LogRank.of(List.of(times(example, "first"), times(example, "second")))
                .orElseThrow();
        agrees(example, "p-exact", test.pExact());
    }

    private static void proportion(MethodsExamples.Block example) {
        agrees(
                example,
                new Proportion((int) example.number("successes"), (int) example.number("trials")).interval(0.95));
    }

    private static void failureRate(MethodsExamples.Block example) {
        PoissonRate rate = new PoissonRate((int) example.number("failures"), example.number("hours"));
        agrees(example, "upper-bound", rate.upperBound(0.95));
        agrees(example, "chance", rate.chanceOfNoEvent(example.number("longer"), 0.95));
    }

    private static void geometricMean(MethodsExamples.Block example) {
        double[] ratios = example.numbers("ratios");
        agrees(example, "geometric-mean", GeometricMean.of(ratios));
        List<Estimate> parts = DoubleStream.of(ratios)
                .mapToObj(r -> new Estimate(
                        StrictMath.log(r), example.number("relative-uncertainty"), example.number("freedom"), 0))
                .toList();
        Estimate mean = GeometricMean.ofLogRatios(parts);
        agrees(example, "log-uncertainty", mean.standardUncertainty());
        agrees(example, "degrees-of-freedom", mean.effectiveDegreesOfFreedom());
    }

    private static void soundLevel(MethodsExamples.Block example) {
        agrees(example, "energetic-mean", SoundLevel.energeticMeanDb(example.numbers("levels")));
        agrees(
                example,
                "standard-uncertainty-of-mean",
                Estimate.ofMean(Sample.of(SoundLevel.linearisedDb(example.numbers("levels"))))
                        .orElseThrow()
                        .standardUncertainty());
        agrees(
                example,
                "corrected",
                SoundLevel.correctedForBackground(example.number("with-source"), example.number("background"), 15)
                        .levelDb());
    }

    private static void budget(MethodsExamples.Block example) {
        double[] u = example.numbers("u");
        double[] freedom = example.numbers("freedom");
        List<UncertaintyBudget.Input> inputs = java.util.stream.IntStream.range(0, u.length)
                .mapToObj(i -> UncertaintyBudget.Input.typeA(u[i], freedom[i]))
                .toList();
        double[] ones = new double[u.length];
        Arrays.fill(ones, 1);
        UncertaintyBudget.Combined combined = UncertaintyBudget.of(inputs).combine(ones);
        agrees(example, "combined", combined.standardUncertainty());
        agrees(example, "degrees-of-freedom", combined.degreesOfFreedom());
        agrees(example, "expanded", combined.expanded(0.95));
    }

    private static void sampleSize(MethodsExamples.Block example) {
        agrees(example, "two-means", SampleSize.forTwoMeans(0.5, 1, 0.05, 0.8).orElseThrow());
        agrees(example, "pairs", SampleSize.forPairs(0.5, 0.8, 0.05, 0.9).orElseThrow());
        agrees(example, "half-width", SampleSize.forHalfWidth(1, 0.5, 0.95).orElseThrow());
    }

    private static void plannedSize(MethodsExamples.Block example) {
        agrees(example, "trials-for-share", SuccessSize.forShare(0.95, 0, 0.95).orElseThrow());
        agrees(
                example,
                "trials-with-one-failure",
                SuccessSize.forShare(0.95, 1, 0.95).orElseThrow());
        agrees(example, "time-for-rate", SuccessSize.timeForRate(0.01, 0, 0.95));
    }

    private static void autocorrelation(MethodsExamples.Block example) {
        Autocorrelation result = Autocorrelation.of(sample(example, "values")).orElseThrow();
        agrees(example, "lag-1", result.lag1());
        agrees(example, "effective-size", result.effectiveSize());
    }

    private static void trend(MethodsExamples.Block example) {
        Sample values = sample(example, "values");
        double[] order = java.util.stream.IntStream.rangeClosed(1, values.size())
                .asDoubleStream()
                .toArray();
        MannKendall test = MannKendall.of(values);
        TheilSen line = TheilSen.of(order, values.values()).orElseThrow();
        agrees(example, "s", test.s());
        agrees(example, "z", test.z());
        agrees(example, "slope", line.slope());
        agrees(example, line.interval(0.95).orElseThrow());
    }

    private static void approach(MethodsExamples.Block example) {
        ApproachFit fit = ApproachFit.throughZero(example.numbers("x"), example.numbers("y"))
                .orElseThrow();
        agrees(example, "final-value", fit.finalValue().value());
        agrees(example, "standard-uncertainty", fit.finalValue().standardUncertainty());
        agrees(example, "time-constant", fit.timeConstant().value());
    }
}
