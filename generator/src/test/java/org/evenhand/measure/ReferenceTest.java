package org.evenhand.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Reductions of logs against values that others computed; each source is in the name of its test. */
public class ReferenceTest {

    /** The cases of the reference that run nowhere but here, by their ids: those of a log over its own times. */
    public static List<String> referenceCases() {
        return Stream.concat(
                        trapezoids().map(arguments -> (JsonNode) arguments.get()[1]),
                        Stream.of(Reference.oneCase("trapezoid", "trap-edge")))
                .map(node -> node.get("id").asText())
                .toList();
    }

    @TempDir
    private Path folder;

    static Stream<Arguments> trapezoids() {
        return Reference.cases("trapezoid").stream()
                .filter(node -> !node.get("id").asText().equals("trap-edge"))
                .map(node -> Arguments.of(
                        node.get("id").asText() + ": " + node.get("source").asText(), node));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("trapezoids")
    void integrals_and_means_over_time_agree(String source, JsonNode node) throws IOException {
        JsonNode inputs = node.get("inputs");
        JsonNode expected = node.get("expected");
        boolean power = inputs.has("p_W");
        double[] t = Reference.numbers(inputs.get(power ? "t_s" : "t"));
        double[] p = Reference.numbers(inputs.get(power ? "p_W" : "y"));
        Bench bench = new Bench(folder, "power", "W")
                .yields("energy-j", new Statistic.Integral(), "power", "J")
                .yields("energy-wh", new Statistic.Integral(), "power", "W·h")
                .yields("mean", new Statistic.Mean(), "power", "W")
                .log("power [W]", t, p);
        double relative = node.get("tolerance").get("rel").asDouble();
        double energy = expected.get(power ? "energy_J" : "area").asDouble();
        assertEquals(energy, bench.known("energy-j").value(), relative * energy);
        if (power) {
            double wattHours = expected.get("energy_Wh").asDouble();
            double mean = expected.get("time_weighted_mean_W").asDouble();
            assertEquals(wattHours, bench.known("energy-wh").value(), 1e-12 * wattHours);
            assertEquals(mean, bench.known("mean").value(), 1e-12 * mean);
        }
    }

    @Test
    void trap_edge_a_duplicate_time_adds_nothing_and_one_sample_has_no_energy() throws IOException {
        JsonNode node = Reference.oneCase("trapezoid", "trap-edge");
        JsonNode inputs = node.get("inputs");
        Bench bench = new Bench(folder, "power", "W").yields("energy", new Statistic.Integral(), "power", "J");
        JsonNode duplicate = inputs.get("duplicate");
        bench.log("power [W]", Reference.numbers(duplicate.get("t_s")), Reference.numbers(duplicate.get("p_W")));
        assertEquals(
                node.get("expected").get("duplicate_energy_J").asDouble(),
                bench.known("energy").value(),
                1e-12);
        JsonNode one = inputs.get("one_sample");
        bench.log("power [W]", Reference.numbers(one.get("t_s")), Reference.numbers(one.get("p_W")));
        assertEquals("file-unreadable", bench.missing("energy"));
        JsonNode decreasing = inputs.get("decreasing");
        bench.log("power [W]", Reference.numbers(decreasing.get("t_s")), Reference.numbers(decreasing.get("p_W")));
        assertTrue(bench.measured().findings().stream()
                .anyMatch(f -> f.rule().equals("log-time-broken") && f.withholds()));
    }

    static Stream<Arguments> autocorrelations() {
        return Reference.cases("autocorrelation").stream()
                .map(node -> Arguments.of(
                        node.get("id").asText() + ": " + node.get("source").asText(), node));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("autocorrelations")
    void the_window_in_one_pass_has_the_certified_autocorrelation(String source, JsonNode node) {
        double[] y = Reference.column(node.get("inputs").get("csv").asText(), "y");
        Window window = new Window();
        for (int i = 0; i < y.length; i++) {
            window.add(i, y[i], 0);
        }
        SettledFacts facts = window.facts(y.length - 1, 1e9, Unit.ONE);
        double r1 = node.get("expected").get("r1").asDouble();
        boolean printed = node.get("tolerance").has("published_abs");
        double tolerance = printed
                ? node.get("tolerance").get("published_abs").asDouble()
                : Math.abs(r1) * node.get("tolerance").get("r1_rel").asDouble();
        assertEquals(r1, facts.lag1().orElseThrow(), tolerance);
        double effective = node.get("expected_computed").get("n_eff_ar1").asDouble();
        assertEquals(Math.min(y.length, effective), facts.effectiveSamples(), 1e-6 * effective);
    }

    @Test
    void sound_mean_a_closed_form_the_energetic_mean_of_levels() throws IOException {
        JsonNode node = Reference.oneCase("sound-level", "sound-mean-a");
        double[] levels = Reference.numbers(node.get("inputs").get("L"));
        double[] t = IntStream.range(0, levels.length).asDoubleStream().toArray();
        Bench bench = new Bench(folder, "sound", "dB(A)")
                .yields("level", new Statistic.LevelMean(), "sound", "dB(A)")
                .log("sound [dB(A)]", t, levels);
        assertEquals(
                node.get("expected").get("energetic_mean").asDouble(),
                bench.known("level").value(),
                node.get("tolerance").get("abs").asDouble());
    }

    @Test
    void exp_exact_own_case_of_the_reference_the_plateau_is_found_again() throws IOException {
        JsonNode node = Reference.oneCase("exp-approach", "exp-exact");
        Bench bench = approach(node);
        assertEquals(
                node.get("expected").get("final_value").asDouble(),
                bench.known("plateau").value(),
                1e-6);
        assertEquals(
                node.get("expected").get("tau").asDouble(),
                bench.measured().approaches().get("plateau").timeConstantS(),
                1e-6);
    }

    @Test
    void exp_not_reached_own_case_of_the_reference_a_plateau_too_far_is_refused() throws IOException {
        assertEquals(
                "plateau-far",
                approach(Reference.oneCase("exp-approach", "exp-not-reached")).missing("plateau"));
    }

    private Bench approach(JsonNode node) throws IOException {
        return new Bench(folder, "temperature", "°C")
                .yields("plateau", new Statistic.Asymptote(), "temperature", "°C")
                .log(
                        "temperature [°C]",
                        Reference.numbers(node.get("inputs").get("x")),
                        Reference.numbers(node.get("inputs").get("y")));
    }

    @Test
    void mk_steady_state_own_data_of_the_reference_the_last_600_s_are_settled() throws IOException {
        double[] t = Reference.column("data/synthetic-thermal-rise.csv", "t_s");
        double[] y = Reference.column("data/synthetic-thermal-rise.csv", "temp_C");
        JsonNode last = Reference.oneCase("mann-kendall", "mk-steady-state")
                .get("expected")
                .get("last");
        double windowS = t[t.length - 1] - 1200 - 1; // the case takes the samples after 1200 s
        MeasuredRun run = new Bench(folder, "temperature", "°C")
                .yields(
                        "settled",
                        new Statistic.Settled(Quantity.of(windowS + " s"), Quantity.of("1 K")),
                        "temperature",
                        "°C")
                .log("temperature [°C]", t, y)
                .measured();
        SettledFacts facts = run.settled().get("settled");
        assertEquals(last.get("n").asInt(), facts.samples());
        // The case was computed on ten times the temperature, so that ties are exact.
        double slope = last.get("theil_sen_slope").asDouble() / 10;
        assertEquals(slope * windowS, facts.theilSenDrift().orElseThrow(), 1e-9);
        assertEquals(last.get("p_two_sided").asDouble(), facts.trendP().orElseThrow(), 1e-9);
        assertTrue(facts.settled());
        assertEquals(Optional.empty(), run.findings().stream().findFirst());
    }
}
