package org.evenhand.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Optional;
import org.evenhand.model.Condition;
import org.evenhand.model.Method.Cooling;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.AmbientLimit;
import org.evenhand.model.Threshold;
import org.evenhand.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The highest ambient temperature at which a limit is not reached; the sums by hand. */
class HighestAmbientTest {

    @TempDir
    Path folder;

    private Bench bench() {
        return new Bench(folder)
                .cooling(Cooling.FIXED)
                .limit("temperature", "85 °C")
                .yields("rise", new Reduction.Reading("rise"), "K")
                .yields("highest", new AmbientLimit("temperature", "rise"), "°C")
                .reading("rise", "41.5 K");
    }

    @Test
    void it_is_the_limit_less_the_rise() {
        assertEquals(43.5, bench().known("highest").value(), 1e-12);
    }

    @Test
    void it_is_given_in_the_unit_asked_for() {
        RunValue.Known inFahrenheit = bench().yields("highest-f", new AmbientLimit("temperature", "rise"), "°F")
                .instrument("probe", "0.9 K", "", "rise")
                .known("highest-f");
        // SP 811, B.8: t/°F = 1.8 t/°C + 32, and 1.8 °F to a kelvin.
        assertEquals(110.3, inFahrenheit.value(), 1e-12);
        assertEquals(0.9 / Math.sqrt(3) * 1.8, inFahrenheit.standardUncertainty(), 1e-12);
    }

    @Test
    void what_the_rise_is_uncertain_by_it_is_uncertain_by_and_the_other_way_round() {
        Bench bench = bench().instrument("probe", "0.6 K", "", "rise");
        double ofRise = bench.known("rise").contributions().byCause().get("probe offset");
        assertEquals(0.6 / Math.sqrt(3), ofRise, 1e-12);
        assertEquals(-ofRise, bench.known("highest").contributions().byCause().get("probe offset"), 1e-12);
    }

    @Test
    void a_limit_stated_with_an_uncertainty_adds_its_own() {
        Bench bench = bench().limit("temperature", "85 ± 2 °C").instrument("probe", "0.6 K", "", "rise");
        // JCGM 100:2008, 5.1.2: 1 K, half of what stands behind ± at k = 2, and 0.6 K/√3.
        assertEquals(Math.sqrt(1 + 0.36 / 3), bench.known("highest").standardUncertainty(), 1e-12);
    }

    @Test
    void it_does_not_exist_under_cooling_that_answers_to_temperature_or_that_nobody_has_told_of() {
        assertEquals("rise-misused", bench().cooling(Cooling.CONTROLLED).missing("highest"));
        Bench untold = new Bench(folder)
                .limit("temperature", "85 °C")
                .yields("rise", new Reduction.Reading("rise"), "K")
                .yields("highest", new AmbientLimit("temperature", "rise"), "°C")
                .reading("rise", "41.5 K");
        assertEquals("rise-misused", untold.missing("highest"));
    }

    @Test
    void it_does_not_exist_where_the_clock_dropped_in_the_run() throws IOException {
        Condition drop = new Condition(
                "clock", true, new Threshold.OfSetting("clock", new BigDecimal("0.95")), Optional.empty());
        assertEquals(43.5, withClock(drop, "1800", "1800").known("highest").value(), 1e-12);
        assertEquals("rise-misused", withClock(drop, "1800", "1000").missing("highest"));
    }

    private Bench withClock(Condition drop, String first, String second) throws IOException {
        return new Bench(folder, "clock", "MHz")
                .cooling(Cooling.FIXED)
                .limit("temperature", "85 °C")
                .setting("clock", "1800 MHz")
                .yields("share", new Reduction.Share(drop), "%")
                .yields("rise", new Reduction.Reading("rise"), "K")
                .yields("highest", new AmbientLimit("temperature", "rise"), "°C")
                .reading("rise", "41.5 K")
                .log("time [s],clock [MHz]", "0," + first, "10," + second, "20," + first);
    }

    @Test
    void it_needs_a_limit_of_the_item_that_is_a_temperature_and_a_rise() {
        assertEquals(
                "field-missing",
                bench().yields("other", new AmbientLimit("throttling", "rise"), "°C")
                        .missing("other"));
        assertEquals(
                "unit-dimension",
                bench().limit("clock", "1800 MHz")
                        .yields("other", new AmbientLimit("clock", "rise"), "°C")
                        .missing("other"));
        assertEquals(
                "unit-dimension",
                bench().yields("hot", new Reduction.Reading("hot"), "°C")
                        .yields("other", new AmbientLimit("temperature", "hot"), "°C")
                        .reading("hot", "60 °C")
                        .missing("other"));
        assertEquals(
                "field-missing",
                bench().yields("unread", new Reduction.Reading("unread"), "K")
                        .yields("other", new AmbientLimit("temperature", "unread"), "°C")
                        .missing("other"));
        assertEquals(Unit.of("°C"), bench().known("highest").unit());
    }
}
