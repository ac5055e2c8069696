package org.evenhand.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.evenhand.measure.RunValue.AtLeast;
import org.evenhand.model.Condition;
import org.evenhand.model.Reading;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Derived;
import org.evenhand.model.Reduction.Operation;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Threshold;
import org.evenhand.quantity.Censored;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Autocorrelation;
import org.evenhand.statistics.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each reduction makes of small logs whose answer is plain to see, or known in the trade. */
class ReductionTest {

    @TempDir
    private Path folder;

    private static Condition below(String threshold, String dwell) {
        return new Condition(
                "clock",
                true,
                new Threshold.Fixed(Quantity.of(threshold)),
                Optional.ofNullable(dwell).map(Quantity::of));
    }

    private Bench clock(Reduction reduction, String unit, String... lines) throws IOException {
        String[] all = new String[lines.length + 1];
        all[0] = "time [s],clock [MHz]";
        System.arraycopy(lines, 0, all, 1, lines.length);
        return new Bench(folder, "clock", "MHz")
                .yields("value", reduction, unit)
                .log(all);
    }

    private Bench temperature(Statistic statistic, String unit, String... lines) throws IOException {
        String[] all = new String[lines.length + 1];
        all[0] = "time [s],temperature [°C]";
        System.arraycopy(lines, 0, all, 1, lines.length);
        return new Bench(folder, "temperature", "°C")
                .yields("value", statistic, "temperature", unit)
                .log(all);
    }

    @ParameterizedTest(name = "common practice, no source: a task of {0} that takes {1} draws {2} W on average")
    @CsvSource({"60 s, 88 mWh, 5.28", "90 s, 112 mWh, 4.48"})
    void energy_over_time_is_power(String time, String energy, double powerW) {
        Bench bench = new Bench(folder)
                .yields("energy", new Reduction.Reading("energy"), "mWh")
                .yields("time", new Reduction.Reading("time"), "s")
                .yields("power", new Derived(Operation.QUOTIENT, "energy", "time"), "W")
                .reading("energy", energy)
                .reading("time", time);
        assertEquals(powerW, bench.known("power").value(), 1e-12);
    }

    @Test
    void common_practice_no_source_5_V_times_3_A_is_15_W() {
        Bench bench = new Bench(folder)
                .yields("power", new Derived(Operation.PRODUCT, "voltage", "current"), "W")
                .yields("voltage", new Reduction.Reading("voltage"), "V")
                .yields("current", new Reduction.Reading("current"), "A")
                .reading("voltage", "5 V")
                .reading("current", "3000 mA");
        assertEquals(15, bench.known("power").value(), 1e-12);
    }

    @Test
    void derived_units_are_converted_and_must_fit() {
        Bench bench = new Bench(folder)
                .yields("frames", new Reduction.Reading("frames"), "frames")
                .yields("energy", new Reduction.Reading("energy"), "J")
                .yields("per-energy", new Derived(Operation.QUOTIENT, "frames", "energy"), "frames/mWh")
                .yields("wrong", new Derived(Operation.QUOTIENT, "frames", "energy"), "W")
                .yields("itself", new Derived(Operation.PRODUCT, "itself", "itself"), "1")
                .reading("frames", "1200 frames")
                .reading("energy", "3600 J");
        // 3600 J are 1000 mWh (SP 811: 1 W h = 3600 J).
        assertEquals(1.2, bench.known("per-energy").value(), 1e-12);
        assertEquals("unit-dimension", bench.missing("wrong"));
        assertEquals("reference-unresolved", bench.missing("itself"));
    }

    @Test
    void a_difference_of_temperatures_is_in_kelvin() {
        Bench bench = new Bench(folder)
                .yields("hot", new Reduction.Reading("hot"), "°C")
                .yields("cold", new Reduction.Reading("cold"), "°C")
                .yields("rise", new Derived(Operation.DIFFERENCE, "hot", "cold"), "K")
                .reading("hot", "77 °F")
                .reading("cold", "32 °F");
        // SP 811, B.8: a rise of 45 °F is one of 25 K.
        assertEquals(25, bench.known("rise").value(), 1e-12);
    }

    @Test
    void what_derives_from_a_bound_or_from_nothing_is_missing_and_says_why() {
        Bench bench = new Bench(folder)
                .yields("time", new Reduction.Reading("time"), "s")
                .yields("work", new Reduction.Reading("work"), "frames")
                .yields("none", new Reduction.Reading("none"), "s")
                .yields("rate", new Derived(Operation.QUOTIENT, "work", "time"), "frames/s")
                .yields("other", new Derived(Operation.QUOTIENT, "work", "none"), "frames/s")
                .reading("work", "5140 frames")
                .reading("time", new Reading.NotReached(new Censored(Quantity.of("45 min"))));
        assertEquals(new AtLeast(2700, Unit.of("s")), bench.value("time"));
        assertEquals("censored", bench.missing("rate"));
        assertEquals("field-missing", bench.missing("none"));
        assertEquals("field-missing", bench.missing("other"));
    }

    @Test
    void judgements_are_noted_as_they_are() {
        Bench bench = new Bench(folder)
                .yields("holds", new Reduction.Observation("holds"), "1")
                .reading("holds", Reading.Observed.PARTLY);
        assertEquals(new RunValue.Noted(Reading.Observed.PARTLY), bench.value("holds"));
    }

    @Test
    void extremes_and_order_statistics_of_the_samples() throws IOException {
        String[] lines = {"0,5", "1,1", "2,", "3,4", "4,9", "5,7"};
        assertEquals(
                9,
                temperature(new Statistic.Maximum(), "°C", lines).known("value").value());
        assertEquals(
                1,
                temperature(new Statistic.Minimum(), "°C", lines).known("value").value());
        assertEquals(
                5,
                temperature(new Statistic.Median(), "°C", lines).known("value").value());
        // Hyndman & Fan 1996, definition 1: the fourth of five is the least that 80 % do not exceed, the fifth for 81
        // %.
        assertEquals(
                7,
                temperature(new Statistic.Percentile(0.8), "°C", lines)
                        .known("value")
                        .value());
        assertEquals(
                9,
                temperature(new Statistic.Percentile(0.81), "°C", lines)
                        .known("value")
                        .value());
        assertEquals(
                4.5,
                temperature(new Statistic.Median(), "°C", "0,5", "1,1", "2,4", "3,9")
                        .known("value")
                        .value());
    }

    @Test
    void a_gap_longer_than_the_method_allows_is_not_bridged() throws IOException {
        String[] lines = {"0,20", "10,20", "11,", "30,20"};
        assertEquals(
                20,
                temperature(new Statistic.Mean(), "°C", lines)
                        .maxGap("20 s")
                        .known("value")
                        .value());
        assertEquals(
                "log-gaps",
                temperature(new Statistic.Mean(), "°C", lines).maxGap("19 s").missing("value"));
    }

    @Test
    void what_is_taken_off_may_be_a_column_in_another_unit_or_what_the_run_states() throws IOException {
        Bench column = new Bench(folder, "temperature", "°C", "ambient", "°F")
                .yields("rise", new Statistic.Mean(), "temperature", "ambient", "K")
                .log("time [s],temperature [°C],ambient [°F]", "0,30,68", "1,40,68");
        assertEquals(15, column.known("rise").value(), 1e-12); // 68 °F are 20 °C: SP 811, B.8
        Bench stated = new Bench(folder, "temperature", "°C", "ambient", "°C")
                .yields("rise", new Statistic.Mean(), "temperature", "ambient", "K")
                .log("time [s],temperature [°C]", "0,30", "1,40");
        assertEquals("ambient-missing", stated.missing("rise"));
        assertEquals(15, stated.ambient("20 °C").known("rise").value(), 1e-12);
    }

    @Test
    void a_counter_rises_across_its_wrap_and_a_reset_is_refused() throws IOException {
        Optional<Quantity> wrap = Optional.of(Quantity.of("256 events"));
        Bench bench = new Bench(folder, "count", "events")
                .yields("wraps", new Statistic.Increase(wrap), "count", "events")
                .yields("plain", new Statistic.Increase(Optional.empty()), "count", "events")
                .log("time [s],count [events]", "0,250", "1,255", "2,4", "3,10");
        assertEquals(16, bench.known("wraps").value()); // 250 … 255, 0 … 10 in eight bits
        assertEquals("implausible", bench.missing("plain"));
    }

    @ParameterizedTest(name = "below {0} for {1}: {2}")
    @CsvSource({
        "1710 MHz, , 3",
        "1710 MHz, 2 s, 5",
        "1710 MHz, 4 s, > 9",
        "1000 MHz, , > 9",
        "1600 MHz, , > 9",
    })
    void time_until_is_the_first_sample_of_a_whole_dwell(String threshold, String dwell, String expected)
            throws IOException {
        Reduction reduction = new Reduction.TimeUntil(below(threshold, dwell));
        RunValue value = clock(
                        reduction,
                        "s",
                        "0,1800",
                        "2,1800",
                        "3,1700",
                        "4,1800",
                        "5,1600",
                        "6,1600",
                        "8,1600",
                        "9,1710.5")
                .value("value");
        if (expected.startsWith(">")) {
            // Right-censored at the last sample.
            assertEquals(new AtLeast(9, Unit.of("s")), value);
        } else {
            assertEquals(Double.parseDouble(expected), value.number().orElseThrow());
        }
    }

    @Test
    void a_dwell_that_has_only_begun_at_the_end_is_censored_where_it_began() throws IOException {
        Reduction reduction = new Reduction.TimeUntil(below("1710 MHz", "10 s"));
        assertEquals(
                new AtLeast(2, Unit.of("s")),
                clock(reduction, "s", "0,1800", "1,1800", "2,1700", "3,1700").value("value"));
    }

    @Test
    void a_threshold_may_be_a_multiple_of_a_setting() throws IOException {
        Condition condition = new Condition(
                "clock", true, new Threshold.OfSetting("clock", new BigDecimal("0.95")), Optional.empty());
        Bench bench = clock(new Reduction.TimeUntil(condition), "min", "0,1800", "60,1710", "120,1709");
        assertEquals("field-missing", bench.missing("value"));
        assertEquals(2, bench.setting("clock", "1.8 GHz").known("value").value());
    }

    @Test
    void a_share_is_weighted_by_the_step_after_each_sample() throws IOException {
        Reduction reduction = new Reduction.Share(below("1710 MHz", null));
        RunValue.Known share =
                clock(reduction, "%", "0,1800", "6,1700", "9,1800", "10,1700").known("value");
        assertEquals(30, share.value(), 1e-12); // 3 s of 10 s
    }

    @Test
    void a_settled_value_is_the_mean_of_the_last_window_and_refused_while_it_drifts() throws IOException {
        Statistic settled = new Statistic.Settled(Quantity.of("4 s"), Quantity.of("1 K"));
        String[] flat = {"0,20", "2,50", "3,60", "4,60.2", "5,59.8", "6,60.2", "7,59.8"};
        assertEquals(60, temperature(settled, "°C", flat).known("value").value(), 1e-12);
        String[] rising = {"0,20", "2,50", "3,60", "4,60.5", "5,61", "6,61.5", "7,62"};
        assertEquals("not-settled", temperature(settled, "°C", rising).missing("value"));
        SettledFacts facts =
                temperature(settled, "°C", rising).measured().settled().get("value");
        assertEquals(2, facts.drift(), 1e-12); // half a kelvin a second over four seconds
        String[] small = {"0,20", "1,20", "2,20"};
        assertEquals("not-settled", temperature(settled, "°C", small).missing("value"));
    }

    @Test
    void a_window_too_large_for_the_ring_is_read_again_with_the_same_result() throws IOException {
        int n = 150_000;
        double[] t = new double[n];
        double[] y = new double[n];
        Random random = new Random(7);
        double noise = 0;
        for (int i = 0; i < n; i++) {
            t[i] = i;
            noise = 0.6 * noise + random.nextGaussian();
            y[i] = 60 + noise;
        }
        Statistic settled = new Statistic.Settled(Quantity.of("100000 s"), Quantity.of("1 K"));
        RunValue.Known value = new Bench(folder, "temperature", "°C")
                .yields("value", settled, "temperature", "°C")
                .log("temperature [°C]", t, y)
                .known("value");
        // Against the statistics of arrays, which are checked against NIST's certified values.
        Sample window = Sample.of(Arrays.copyOfRange(y, n - 1 - 100_000, n));
        assertEquals(window.mean(), value.value(), 1e-10);
        double effective = Autocorrelation.of(window).orElseThrow().effectiveSize();
        assertEquals(window.standardDeviation().orElseThrow() / Math.sqrt(effective), value.withinRun(), 1e-10);
    }

    @Test
    void a_median_of_many_samples_is_right_to_within_its_stated_error() throws IOException {
        int n = 100_001;
        double[] t = new double[n];
        double[] y = new double[n];
        Random random = new Random(11);
        for (int i = 0; i < n; i++) {
            t[i] = i;
            y[i] = random.nextGaussian();
        }
        RunValue.Known value = new Bench(folder, "power", "W")
                .yields("value", new Statistic.Median(), "power", "W")
                .log("power [W]", t, y)
                .known("value");
        Arrays.sort(y);
        double limit = value.contributions().combined() * Math.sqrt(3);
        assertEquals(y[n / 2], value.value(), limit * (1 + 1e-9));
        assertTrue(limit < 1e-3);
    }

    @Test
    void a_median_of_many_samples_may_lie_in_a_wide_gap_between_two_of_them() throws IOException {
        int n = 100_000;
        double[] t = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            t[i] = i;
            y[i] = i % 2 == 0 ? 1 : 2;
        }
        RunValue.Known value = new Bench(folder, "power", "W")
                .yields("value", new Statistic.Median(), "power", "W")
                .log("power [W]", t, y)
                .known("value");
        // The middle two are 1 and 2 (Hyndman and Fan, definition 2).
        double limit = value.contributions().combined() * Math.sqrt(3);
        assertEquals(1.5, value.value(), limit * (1 + 1e-9));
        assertTrue(limit < 1e-4);
    }

    @Test
    void the_log_as_a_whole_is_described() throws IOException {
        MeasuredRun run = temperature(
                        new Statistic.Maximum(), "°C", "0,20", "1,21", "2,21", "3,21", "4,", "10,15", "11,21", "12,20")
                .measured();
        LogFacts log = run.log().orElseThrow();
        assertEquals(8, log.samples());
        assertEquals(12, log.durationS());
        assertEquals(1, log.typicalStepS());
        assertEquals(6, log.longestStepS());
        assertEquals(4, log.longestStepFromS());
        assertEquals(5.0 / 13, log.shareMissing(), 1e-12);
        LogFacts.ColumnFacts column = log.column("temperature").orElseThrow();
        assertEquals(7, column.samples());
        assertEquals(20, column.first());
        assertEquals(20, column.last());
        assertEquals(15, column.lowest());
        assertEquals(21, column.highest());
        assertEquals(3, column.longestConstant());
        assertEquals(3, column.longestAtHighest());
        assertEquals(1, column.longestAtLowest());
        // Trapezoids by hand: 20.5 + 21 + 21 + 7 × 18 + 18 + 20.5 = 227 K·s over 12 s.
        assertEquals(227.0 / 12, column.mean(), 1e-12);
        assertEquals(7, run.series().get("temperature").size());
        assertEquals(1, run.series().get("temperature").gaps().size());
        assertEquals(OptionalDouble.of(21), run.value("value").number());
    }
}
