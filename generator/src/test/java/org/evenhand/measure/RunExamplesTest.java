package org.evenhand.measure;

import static org.evenhand.statistics.MethodsExamplesTest.agrees;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.evenhand.measure.RunValue.AtLeast;
import org.evenhand.model.Condition;
import org.evenhand.model.Method.Cooling;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Derived;
import org.evenhand.model.Reduction.Operation;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Threshold;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.MethodsExamples;
import org.evenhand.statistics.MethodsExamplesTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs the worked examples of {@code docs/methods.md} on single runs; each number there agrees to its last printed digit. */
class RunExamplesTest {

    @TempDir
    private Path folder;

    private interface Runner {
        void run(RunExamplesTest test, MethodsExamples.Block example) throws IOException;
    }

    private static final Map<String, Runner> RUNNERS = Map.ofEntries(
            Map.entry("integral", RunExamplesTest::integral),
            Map.entry("order-statistics", RunExamplesTest::orderStatistics),
            Map.entry("settled", RunExamplesTest::settled),
            Map.entry("asymptote", RunExamplesTest::asymptote),
            Map.entry("time-until", RunExamplesTest::timeUntil),
            Map.entry("share", RunExamplesTest::share),
            Map.entry("increase", RunExamplesTest::increase),
            Map.entry("level-mean", RunExamplesTest::levelMean),
            Map.entry("instrument", RunExamplesTest::instrument),
            Map.entry("derived", RunExamplesTest::derived),
            Map.entry("highest-ambient", RunExamplesTest::highestAmbient));

    static List<MethodsExamples.Block> examples() {
        return MethodsExamples.blocks("example").stream()
                .filter(example -> RUNNERS.containsKey(example.name()))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void theDocumentedExampleComesOut(MethodsExamples.Block example) throws IOException {
        RUNNERS.get(example.name()).run(this, example);
    }

    @Test
    void eachExampleOfThePageIsRunHereOrAmongThoseOfSeveralRuns() {
        List<String> documented = MethodsExamples.blocks("example").stream()
                .map(MethodsExamples.Block::name)
                .sorted()
                .toList();
        List<String> run = Stream.concat(RUNNERS.keySet().stream(), MethodsExamplesTest.names().stream())
                .sorted()
                .toList();
        assertEquals(run, documented);
    }

    private Bench log(MethodsExamples.Block example, String key, String column, String unit) throws IOException {
        return new Bench(folder, column, unit)
                .log(column + " [" + unit + "]", example.numbers("time-s"), example.numbers(key));
    }

    private void integral(MethodsExamples.Block example) throws IOException {
        Bench bench = log(example, "power-w", "power", "W")
                .yields("joule", new Statistic.Integral(), "power", "J")
                .yields("milliwatt-hour", new Statistic.Integral(), "power", "mWh")
                .yields("mean", new Statistic.Mean(), "power", "W");
        agrees(example, "energy-j", bench.known("joule").value());
        agrees(example, "energy-mwh", bench.known("milliwatt-hour").value());
        agrees(example, "mean-w", bench.known("mean").value());
        bench.maxGap(example.word("refused-with-max-gap"));
        assertEquals("log-gaps", bench.missing("joule"));
        assertEquals("log-gaps", bench.missing("mean"));
    }

    private void orderStatistics(MethodsExamples.Block example) throws IOException {
        Bench bench = log(example, "samples", "power", "W")
                .yields("median", new Statistic.Median(), "power", "W")
                .yields("p90", new Statistic.Percentile(0.9), "power", "W")
                .yields("maximum", new Statistic.Maximum(), "power", "W")
                .yields("minimum", new Statistic.Minimum(), "power", "W");
        agrees(example, "median", bench.known("median").value());
        agrees(example, "percentile-90", bench.known("p90").value());
        agrees(example, "maximum", bench.known("maximum").value());
        agrees(example, "minimum", bench.known("minimum").value());
    }

    private void settled(MethodsExamples.Block example) throws IOException {
        Statistic.Settled settled =
                new Statistic.Settled(Quantity.of(example.word("window-s") + " s"), Quantity.of("1 K"));
        Bench bench = log(example, "samples", "temperature", "°C").yields("settled", settled, "temperature", "°C");
        agrees(example, "mean", bench.known("settled").value());
        agrees(example, "standard-uncertainty", bench.known("settled").standardUncertainty());
        SettledFacts facts = bench.measured().settled().get("settled");
        agrees(example, "drift", facts.drift());
        agrees(example, "lag-1", facts.lag1().orElseThrow());
        agrees(example, "effective-size", facts.effectiveSamples());
    }

    private void asymptote(MethodsExamples.Block example) throws IOException {
        Bench bench = log(example, "samples", "temperature", "°C")
                .yields("plateau", new Statistic.Asymptote(), "temperature", "°C");
        agrees(example, "plateau", bench.known("plateau").value());
        ApproachFacts facts = bench.measured().approaches().get("plateau");
        agrees(example, "time-constant-s", facts.timeConstantS());
        agrees(example, "to-come", facts.remaining());
    }

    private static Condition below(MethodsExamples.Block example, String dwell) {
        return new Condition(
                "clock",
                true,
                new Threshold.Fixed(Quantity.of(example.word("below-mhz") + " MHz")),
                dwell.isEmpty() ? Optional.empty() : Optional.of(Quantity.of(dwell)));
    }

    private void timeUntil(MethodsExamples.Block example) throws IOException {
        Bench bench = log(example, "clock-mhz", "clock", "MHz")
                .yields("drop", new Reduction.TimeUntil(below(example, "20 s")), "s")
                .yields("longer", new Reduction.TimeUntil(below(example, "30 s")), "s");
        agrees(example, "until-with-dwell-20-s", bench.known("drop").value());
        agrees(example, "standard-uncertainty", bench.known("drop").standardUncertainty());
        assertEquals(new AtLeast(example.number("at-least-with-dwell-30-s"), Unit.of("s")), bench.value("longer"));
    }

    private void share(MethodsExamples.Block example) throws IOException {
        Bench bench =
                log(example, "clock-mhz", "clock", "MHz").yields("share", new Reduction.Share(below(example, "")), "1");
        agrees(example, "share", bench.known("share").value());
        agrees(example, "standard-uncertainty", bench.known("share").standardUncertainty());
    }

    private void increase(MethodsExamples.Block example) throws IOException {
        Statistic.Increase wrapping = new Statistic.Increase(Optional.of(Quantity.of(example.word("wraps-at") + " J")));
        Bench bench = log(example, "counter", "counter", "J").yields("increase", wrapping, "counter", "J");
        agrees(example, "increase", bench.known("increase").value());
    }

    private void levelMean(MethodsExamples.Block example) throws IOException {
        Bench bench =
                log(example, "level-db", "sound", "dB(A)").yields("level", new Statistic.LevelMean(), "sound", "dB(A)");
        agrees(example, "level-mean", bench.known("level").value());
    }

    private void instrument(MethodsExamples.Block example) {
        Contributions first = read(example, "first-w", "one");
        Contributions second = read(example, "second-w", "one");
        Contributions other = read(example, "second-w", "two");
        agrees(example, "uncertainty-of-first", first.combined());
        agrees(example, "uncertainty-of-second", second.combined());
        agrees(example, "of-difference-one-instrument", first.minus(second).combined());
        agrees(example, "of-difference-two-instruments", first.minus(other).combined());
    }

    private Contributions read(MethodsExamples.Block example, String key, String instrument) {
        return new Bench(folder)
                .yields(key, new Reduction.Reading(key), "W")
                .reading(key, example.word(key) + " W")
                .instrument(instrument, "0.5 % of reading + 0.1 W", "0.01 W", key)
                .known(key)
                .contributions();
    }

    private void derived(MethodsExamples.Block example) {
        double[] energy = example.numbers("energy-j");
        double[] frames = example.numbers("frames");
        Bench bench = new Bench(folder)
                .yields("energy", new Reduction.Reading("energy"), "J")
                .yields("frames", new Reduction.Reading("frames"), "frames")
                .yields("per-frame", new Derived(Operation.QUOTIENT, "energy", "frames"), "J/frames")
                // What stands behind ± in a file is expanded, k = 2.
                .reading("energy", energy[0] + " ± " + 2 * energy[1] + " J")
                .reading("frames", frames[0] + " ± " + 2 * frames[1] + " frames");
        agrees(example, "energy-per-frame", bench.known("per-frame").value());
        agrees(example, "standard-uncertainty", bench.known("per-frame").standardUncertainty());
    }

    private void highestAmbient(MethodsExamples.Block example) {
        Bench bench = new Bench(folder)
                .cooling(Cooling.FIXED)
                .limit("temperature", example.word("limit-c") + " °C")
                .yields("rise", new Reduction.Reading("rise"), "K")
                .yields("highest", new Reduction.AmbientLimit("temperature", "rise"), "°C")
                .reading("rise", example.word("rise-k") + " K");
        agrees(example, "highest-ambient-c", bench.known("highest").value());
    }
}
