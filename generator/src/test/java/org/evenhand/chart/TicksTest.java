package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Steps of 1, 2 and 5, and what readers expect of a clock: common practice, no source. */
class TicksTest {

    private static List<String> labels(Ticks ticks) {
        return ticks.ticks().stream().map(Ticks.Tick::label).toList();
    }

    @Test
    void steps_are_one_two_or_five() {
        assertEquals(List.of("0", "2", "4", "6", "8", "10"), labels(Ticks.linear(0, 10, 6)));
        assertEquals(List.of("0", "5", "10"), labels(Ticks.linear(0, 10, 5)));
        assertEquals(List.of("−0.4", "−0.2", "0", "0.2"), labels(Ticks.linear(-0.41, 0.21, 4)));
        assertEquals(List.of("21.0", "21.5", "22.0"), labels(Ticks.linear(20.9, 22.1, 4)));
    }

    @Test
    void a_tick_is_the_nearest_double_to_its_label() {
        for (Ticks.Tick tick : Ticks.linear(0, 1, 11).ticks()) {
            assertEquals(Double.parseDouble(tick.label()), tick.value());
        }
    }

    @Test
    void there_are_never_more_than_asked() {
        for (int decade = -12; decade <= 12; decade++) {
            double scale = StrictMath.pow(10, decade);
            for (int most = 2; most < 12; most++) {
                for (double low : new double[] {-7.3, 0, 0.99, 123.4}) {
                    int count = Ticks.linear(low * scale, (low + 1.37) * scale, most)
                            .ticks()
                            .size();
                    assertTrue(count <= most, low + " " + scale + " " + most + ": " + count);
                }
            }
        }
    }

    @Test
    void a_logarithmic_axis_has_round_places_in_each_decade_or_whole_decades() {
        assertEquals(List.of("0.5", "1", "2"), labels(Ticks.logarithmic(0.4, 2.5, 6)));
        assertEquals(List.of("1", "10", "100"), labels(Ticks.logarithmic(0.9, 110, 4)));
        assertEquals(List.of("0.8", "0.9", "1.0", "1.1", "1.2"), labels(Ticks.logarithmic(0.8, 1.25, 5)));
        assertTrue(Ticks.logarithmic(1e-9, 1e9, 5).ticks().size() <= 5);
    }

    @Test
    void time_is_told_in_the_unit_its_length_asks_for() {
        assertEquals("s", Ticks.time(0, 90, 6).unit());
        assertEquals(List.of("0", "15", "30", "45", "60", "75", "90"), labels(Ticks.time(0, 90, 7)));
        assertEquals("min", Ticks.time(0, 2700, 10).unit());
        assertEquals(List.of("0", "15", "30", "45"), labels(Ticks.time(0, 2700, 4)));
        assertEquals("h", Ticks.time(0, 86_400, 5).unit());
        assertEquals(List.of("0", "6", "12", "18", "24"), labels(Ticks.time(0, 86_400, 5)));
        assertEquals("d", Ticks.time(0, 10 * 86_400, 6).unit());
        assertEquals(900, Ticks.time(0, 2700, 4).ticks().get(1).value());
    }

    @Test
    void long_numbers_become_powers_of_ten() {
        assertEquals("999999", Ticks.label(new BigDecimal("999999")));
        assertEquals("10⁶", Ticks.label(new BigDecimal("1E6")));
        assertEquals("−2.5 × 10⁷", Ticks.label(new BigDecimal("-25000000")));
        assertEquals("0.0005", Ticks.label(new BigDecimal("0.0005")));
        assertEquals("5 × 10⁻⁵", Ticks.label(new BigDecimal("0.00005")));
    }
}
