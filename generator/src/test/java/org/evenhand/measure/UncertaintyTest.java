package org.evenhand.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.evenhand.model.Condition;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Derived;
import org.evenhand.model.Reduction.Operation;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Threshold;
import org.evenhand.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What instruments and notes contribute, after JCGM 100:2008 (GUM). */
class UncertaintyTest {

    private static final double ROOT_3 = Math.sqrt(3);

    @TempDir
    private Path folder;

    private Bench power(String first, String second) throws IOException {
        return new Bench(folder, "power", "W")
                .yields("mean", new Statistic.Mean(), "power", "W")
                .yields("energy", new Statistic.Integral(), "power", "J")
                .instrument("meter", "0.5 % of reading + 10 mW", "1 mW", "power")
                .log("time [s],power [W]", "0," + first, "100," + second);
    }

    @Test
    void gum_4_3_7_limits_of_error_are_rectangular_and_the_resolution_is_the_runs_own() throws IOException {
        Contributions of = power("4", "4").known("mean").contributions();
        Map<String, Double> expected = new TreeMap<>(Map.of(
                "meter gain", 0.005 * 4 / ROOT_3,
                "meter offset", 0.010 / ROOT_3,
                "meter resolution, run study/run-1, power", 0.001 / Math.sqrt(12)));
        assertEquals(expected.keySet(), of.byCause().keySet());
        expected.forEach((cause, u) -> assertEquals(u, of.byCause().get(cause), 1e-15, cause));
        double limits = (0.02 * 0.02 + 0.01 * 0.01) / 3 + 1e-6 / 12;
        assertEquals(Math.sqrt(limits), of.combined(), 1e-15);
    }

    @Test
    void an_integral_carries_the_offset_for_its_whole_duration() throws IOException {
        Contributions of = power("4", "6").known("energy").contributions();
        assertEquals(0.005 * 500 / ROOT_3, of.byCause().get("meter gain"), 1e-12);
        assertEquals(0.010 * 100 / ROOT_3, of.byCause().get("meter offset"), 1e-12);
    }

    @Test
    void gum_f_1_2_3_between_runs_with_one_instrument_offsets_cancel_and_gains_scale_with_the_difference()
            throws IOException {
        Contributions six = ((RunValue.Known) power("6", "6").measured("a").value("mean")).contributions();
        Contributions four = ((RunValue.Known) power("4", "4").measured("b").value("mean")).contributions();
        Contributions difference = six.minus(four);
        assertEquals(0.005 * 2 / ROOT_3, difference.byCause().get("meter gain"), 1e-15);
        assertEquals(0, difference.byCause().get("meter offset"), 1e-15);
        assertEquals(
                Math.sqrt(2) * 0.001 / Math.sqrt(12),
                Math.hypot(
                        difference.byCause().get("meter resolution, run study/a, power"),
                        difference.byCause().get("meter resolution, run study/b, power")),
                1e-15);
    }

    @Test
    void a_common_offset_cancels_between_column_and_ambient_and_no_other_does() throws IOException {
        Bench one = new Bench(folder, "temperature", "°C", "ambient", "°C")
                .yields("rise", new Statistic.Mean(), "temperature", "ambient", "K")
                .instrument("logger", "0.5 K", "", "temperature", "ambient")
                .log("time [s],temperature [°C],ambient [°C]", "0,60,20", "1,60,20");
        assertEquals(0, one.known("rise").contributions().combined(), 1e-15);
        Bench two = one.instrument("other", "0.5 K", "", "ambient");
        assertEquals(
                0.5 / ROOT_3 * Math.sqrt(2), two.known("rise").contributions().combined(), 1e-15);
    }

    @Test
    void a_stated_ambient_contributes_half_of_what_stands_behind_plus_minus() throws IOException {
        Bench bench = new Bench(folder, "temperature", "°C")
                .yields("rise", new Statistic.Mean(), "temperature", "ambient", "K")
                .ambient("21.4 ± 0.5 °C")
                .log("time [s],temperature [°C]", "0,60", "1,60");
        assertEquals(
                Map.of("ambient as stated, run study/run-1", -0.25),
                bench.known("rise").contributions().byCause());
        bench.instrument("hall-thermometer", "", "", "ambient");
        assertEquals(
                Map.of("ambient as stated, hall-thermometer", -0.25),
                bench.known("rise").contributions().byCause());
    }

    @Test
    void an_event_is_known_to_plus_minus_one_sampling_step() throws IOException {
        Condition condition =
                new Condition("clock", true, new Threshold.Fixed(Quantity.of("1710 MHz")), Optional.empty());
        Bench bench = new Bench(folder, "clock", "MHz")
                .yields("onset", new Reduction.TimeUntil(condition), "min")
                .instrument("board", "1 %", "")
                .log("time [s],clock [MHz]", "0,1800", "30,1800", "42,1700");
        RunValue.Known onset = bench.known("onset");
        assertEquals(0.7, onset.value(), 1e-15);
        // GUM 4.3.7 with the limits ± 12 s.
        assertEquals(12.0 / 60 / ROOT_3, onset.standardUncertainty(), 1e-15);
    }

    @Test
    void gum_energy_product_law_of_propagation_energy_from_voltage_current_and_time() {
        JsonNode node = Reference.oneCase("gum", "gum-energy-product");
        JsonNode in = node.get("inputs");
        Bench bench = new Bench(folder)
                .yields("voltage", new Reduction.Reading("voltage"), "V")
                .yields("current", new Reduction.Reading("current"), "A")
                .yields("time", new Reduction.Reading("time"), "s")
                .yields("power", new Derived(Operation.PRODUCT, "voltage", "current"), "W")
                .yields("energy", new Derived(Operation.PRODUCT, "power", "time"), "J")
                .yields("energy-mwh", new Derived(Operation.PRODUCT, "power", "time"), "mWh")
                .reading("voltage", expanded(in, "U", "uU", "V"))
                .reading("current", expanded(in, "I", "uI", "A"))
                .reading("time", expanded(in, "t", "ut", "s"));
        double energyJ = node.get("expected").get("E").asDouble();
        double u = node.get("expected").get("u_E").asDouble();
        assertEquals(energyJ, bench.known("energy").value(), 1e-12 * energyJ);
        assertEquals(u, bench.known("energy").standardUncertainty(), 1e-12 * u);
        assertEquals(u / 3.6, bench.known("energy-mwh").standardUncertainty(), 1e-12 * u);
    }

    private static String expanded(JsonNode in, String value, String u, String unit) {
        return in.get(value).asText() + " ± " + 2 * in.get(u).asDouble() + " " + unit;
    }

    @Test
    void a_quotient_of_two_values_of_one_meter_is_free_of_its_gain() throws IOException {
        Bench bench = power("4", "4")
                .yields("ratio", new Derived(Operation.QUOTIENT, "energy", "energy-again"), "1")
                .yields("energy-again", new Statistic.Integral(), "power", "mWh");
        RunValue.Known ratio = bench.known("ratio");
        assertEquals(1, ratio.value(), 1e-15);
        assertEquals(0, ratio.contributions().byCause().get("meter gain"), 1e-15);
    }

    @Test
    void an_instrument_of_another_quantity_is_a_finding() throws IOException {
        MeasuredRun run = new Bench(folder, "voltage", "V")
                .yields("mean", new Statistic.Mean(), "voltage", "V")
                .instrument("meter", "10 mW", "", "voltage")
                .log("time [s],voltage [V]", "0,5", "1,5")
                .measured();
        assertEquals(1, run.findings().size());
        assertEquals("unit-dimension", run.findings().get(0).rule());
        assertTrue(run.findings().get(0).withholds());
    }
}
