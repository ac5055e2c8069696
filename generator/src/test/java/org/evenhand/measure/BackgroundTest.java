package org.evenhand.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Levels are freed from their background, by values that instrument makers and ISO 3746:2010 print. */
class BackgroundTest {

    @TempDir
    private Path folder;

    @Test
    void sound_background_examples_published_and_computed_with_R() {
        JsonNode node = Reference.oneCase("sound-level", "sound-background-examples");
        double[] on = Reference.numbers(node.get("inputs").get("L_on"));
        double[] background = Reference.numbers(node.get("inputs").get("L_background"));
        double[] printed = Reference.numbers(node.get("expected").get("L_source"));
        double[] computed = Reference.numbers(node.get("expected_computed").get("L_source"));
        for (int i = 0; i < on.length; i++) {
            RunValue value = level(on[i], background[i] + " dB(A)").value("level");
            if (on[i] - background[i] < 3) {
                // Its 91 over 90 dB is one that no standard accepts: a bound, that of a difference of 3 dB.
                assertTrue(value instanceof RunValue.AtMost, value.toString());
                continue;
            }
            double levelDb = ((RunValue.Known) value).value();
            assertEquals(computed[i], levelDb, 1e-9);
            assertEquals(
                    printed[i],
                    levelDb,
                    node.get("tolerance").get("published_abs").asDouble());
        }
    }

    @Test
    void sound_k1_iso3746_nearer_than_3_dB_the_correction_of_3_dB_gives_an_upper_bound() {
        JsonNode node = Reference.oneCase("sound-level", "sound-k1-iso3746");
        double[] on = Reference.numbers(node.get("inputs").get("L_on"));
        double[] background = Reference.numbers(node.get("inputs").get("L_background"));
        double[] k1 = Reference.numbers(node.get("expected_computed").get("K1"));
        // The last two: 3 dB is still corrected, 1.5 dB is not.
        RunValue at3 = level(on[2], background[2] + " dB(A)").value("level");
        assertEquals(on[2] - k1[2], ((RunValue.Known) at3).value(), 1e-4);
        RunValue below = level(on[3], background[3] + " dB(A)").value("level");
        assertEquals(on[3] - k1[3], ((RunValue.AtMost) below).bound(), 1e-4);
    }

    @Test
    void beyond_15_dB_nothing_is_taken_off_after_ISO_3744() {
        RunValue value = level(50, "34.9 dB(A)").value("level");
        assertEquals(50, ((RunValue.Known) value).value(), 0);
    }

    @Test
    void without_a_background_there_is_no_level() {
        Bench bench = level(50, null);
        assertEquals("background-missing", bench.missing("level"));
    }

    @Test
    void a_background_of_another_weighting_is_not_taken_off() {
        assertEquals("unit-dimension", level(50, "40 dB(C)").missing("level"));
    }

    @Test
    void a_method_that_does_not_ask_for_it_keeps_the_level_as_read() {
        Bench bench = new Bench(folder)
                .yields("level", new Reduction.Reading("sound"), "dB(A)")
                .reading("sound", "50 dB(A)");
        assertEquals(50, bench.known("level").value(), 0);
    }

    @Test
    void the_level_of_a_column_is_corrected_alike() throws IOException {
        Bench bench = new Bench(folder, "sound", "dB(A)")
                .yields("level", new Statistic.LevelMean(), "sound", "dB(A)")
                .background("50 dB(A)")
                .log("sound [dB(A)]", new double[] {0, 1, 2}, new double[] {55, 55, 55});
        // The fourth of the published examples: 55 over 50 dB.
        assertEquals(53.3491146137323, bench.known("level").value(), 1e-9);
    }

    @Test
    void an_offset_of_the_meter_is_common_to_both_readings_and_passes_unchanged() {
        Bench bench = level(55, "50 dB(A)").instrument("meter", "1 dB(A)", "", "sound");
        // A rectangular limit of 1 dB: the level and its background shift together. JCGM 100:2008, 4.3.7.
        assertEquals(1 / Math.sqrt(3), bench.known("level").contributions().combined(), 1e-12);
    }

    @Test
    void what_is_stated_of_the_background_counts_by_how_near_it_is() {
        Bench bench = level(55, "50 ± 1 dB(A)");
        // c − 1 = 1/(10^0.5 − 1), from the derivative of the formula by the background; half of "±" is one u.
        double byBackground = 1 / (Math.pow(10, 0.5) - 1);
        assertEquals(0.5 * byBackground, bench.known("level").contributions().combined(), 1e-12);
    }

    private Bench level(double levelDb, String background) {
        Bench bench = new Bench(folder)
                .yields("level", new Reduction.Reading("sound"), "dB(A)")
                .reading("sound", levelDb + " dB(A)");
        return background == null ? bench.needsBackground() : bench.background(background);
    }
}
