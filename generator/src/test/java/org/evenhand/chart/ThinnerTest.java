package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected values come from the summary statistics of the Java runtime. */
class ThinnerTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7, 599, 600, 601, 5000, 100_003})
    void extremes_ends_mean_and_count_survive_at_any_length(int n) {
        Thinner thinner = new Thinner(300);
        DoubleSummaryStatistics all = new DoubleSummaryStatistics();
        Random random = new Random(n);
        double first = Double.NaN;
        double last = Double.NaN;
        for (int i = 0; i < n; i++) {
            double value = random.nextGaussian() + (i == n / 3 ? 40 : i == n / 2 ? -40 : 0);
            first = i == 0 ? value : first;
            last = value;
            all.accept(value);
            thinner.add(i * 0.1, value);
        }
        Trace trace = thinner.trace();
        List<Trace.Bucket> buckets = trace.buckets();
        assertTrue(buckets.size() < 600);
        assertEquals(n, trace.samples());
        assertEquals(n >= 600, trace.thinned());
        assertEquals(n, buckets.stream().mapToLong(Trace.Bucket::count).sum());
        assertEquals(
                all.getMin(),
                buckets.stream().mapToDouble(Trace.Bucket::low).min().orElseThrow());
        assertEquals(
                all.getMax(),
                buckets.stream().mapToDouble(Trace.Bucket::high).max().orElseThrow());
        assertEquals(first, buckets.get(0).first());
        assertEquals(last, buckets.get(buckets.size() - 1).last());
        double sum = buckets.stream().mapToDouble(b -> b.mean() * b.count()).sum();
        // Rounding of some 1e5 additions of numbers near 1.
        assertEquals(all.getAverage(), sum / n, 1e-10);
        for (int i = 1; i < buckets.size(); i++) {
            assertTrue(buckets.get(i).fromS() > buckets.get(i - 1).toS());
        }
    }

    @Test
    void a_short_log_is_kept_sample_by_sample() {
        Thinner thinner = new Thinner(10);
        for (int i = 0; i < 15; i++) {
            thinner.add(i, i * i);
        }
        assertFalse(thinner.trace().thinned());
        assertEquals(15, thinner.trace().buckets().size());
        assertEquals(49, thinner.trace().buckets().get(7).mean());
    }

    @Test
    void which_extreme_came_first_is_remembered() {
        Trace.Bucket up = Trace.Bucket.of(0, 1, false).with(Trace.Bucket.of(1, 3, false));
        Trace.Bucket down = Trace.Bucket.of(2, 5, false).with(Trace.Bucket.of(3, 0, false));
        assertTrue(up.lowFirst());
        assertFalse(down.lowFirst());
        assertFalse(up.with(down).lowFirst());
        assertTrue(Trace.Bucket.of(0, 0, false).with(down).lowFirst());
    }

    @Test
    void a_long_gap_stays_a_gap_however_much_is_thinned() {
        Thinner thinner = new Thinner(50);
        for (int i = 0; i < 100_000; i++) {
            thinner.add(i, i >= 40_000 && i < 50_000 ? Double.NaN : 1);
        }
        List<Trace.Bucket> gaps = thinner.trace().buckets().stream()
                .filter(Trace.Bucket::gapBefore)
                .toList();
        assertEquals(1, gaps.size());
        assertEquals(50_000, gaps.get(0).fromS());
        assertEquals(90_000, thinner.trace().samples());
    }

    @Test
    void a_log_that_is_missing_every_other_sample_does_not_outgrow_its_room() {
        Thinner thinner = new Thinner(50);
        for (int i = 0; i < 100_000; i++) {
            thinner.add(i, i % 2 == 0 ? i : Double.NaN);
        }
        assertTrue(thinner.trace().buckets().size() < 100);
        assertEquals(50_000, thinner.trace().samples());
    }

    @Test
    void time_that_runs_backwards_or_is_no_number_is_refused() {
        Thinner thinner = new Thinner(10);
        thinner.add(5, 1);
        assertThrows(IllegalArgumentException.class, () -> thinner.add(4, 1));
        assertThrows(IllegalArgumentException.class, () -> thinner.add(Double.NaN, 1));
    }

    @Test
    void nothing_but_missing_samples_gives_an_empty_trace() {
        Thinner thinner = new Thinner(10);
        thinner.add(0, Double.NaN);
        assertEquals(List.of(), thinner.trace().buckets());
        thinner.add(1, 2);
        assertFalse(thinner.trace().buckets().get(0).gapBefore());
    }
}
