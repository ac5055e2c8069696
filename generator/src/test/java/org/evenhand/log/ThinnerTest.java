package org.evenhand.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ThinnerTest {

    @Test
    void a_short_series_is_kept_as_it_is() {
        Thinner thinner = new Thinner(100);
        for (int i = 0; i < 400; i++) {
            thinner.add(i, i % 7);
        }
        ThinSeries series = thinner.series(10);
        assertEquals(400, series.size());
        assertFalse(series.isThinned());
        assertEquals(399, series.timeS(399));
        assertEquals(399 % 7, series.value(399));
    }

    @ParameterizedTest
    @ValueSource(ints = {401, 1000, 12_345, 300_000})
    void a_long_series_keeps_its_ends_its_extremes_and_its_bounds(int n) {
        Random random = new Random(n);
        Thinner thinner = new Thinner(100);
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        double t = 0;
        double first = Double.NaN;
        double last = Double.NaN;
        for (int i = 0; i < n; i++) {
            double value = random.nextGaussian();
            thinner.add(t, value);
            least = Math.min(least, value);
            greatest = Math.max(greatest, value);
            first = i == 0 ? value : first;
            last = value;
            t += i == n - 1 ? 0 : 0.5 + random.nextDouble();
        }
        ThinSeries series = thinner.series(100);
        assertTrue(series.isThinned());
        assertTrue(series.size() <= 400, "points: " + series.size());
        assertTrue(series.size() >= 150, "points: " + series.size());
        assertEquals(first, series.value(0));
        assertEquals(last, series.value(series.size() - 1));
        assertEquals(t, series.timeS(series.size() - 1));
        double thinLeast = Double.POSITIVE_INFINITY;
        double thinGreatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < series.size(); i++) {
            assertTrue(i == 0 || series.timeS(i) >= series.timeS(i - 1));
            thinLeast = Math.min(thinLeast, series.value(i));
            thinGreatest = Math.max(thinGreatest, series.value(i));
        }
        assertEquals(least, thinLeast);
        assertEquals(greatest, thinGreatest);
    }

    @Test
    void holes_are_gaps_whether_samples_or_values_are_lacking() {
        Thinner thinner = new Thinner(10);
        for (int i = 0; i < 1000; i++) {
            if (i < 300 || i >= 320) {
                thinner.add(i, i >= 500 && i < 540 ? Double.NaN : 1);
            }
        }
        assertEquals(
                List.of(new ThinSeries.Gap(299, 320), new ThinSeries.Gap(499, 540)),
                thinner.series(5).gaps());
        assertEquals(List.of(new ThinSeries.Gap(499, 540)), thinner.series(30).gaps());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void samples_taken_many_at_a_time_leave_what_single_ones_leave(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 40; round++) {
            Thinner single = new Thinner(10);
            Thinner many = new Thinner(10);
            double t = random.nextInt(3) * 1e6;
            for (int block = random.nextInt(40); block >= 0; block--) {
                double[] times = new double[1 + random.nextInt(200)];
                double[] values = new double[times.length];
                for (int i = 0; i < times.length; i++) {
                    // Whole steps hit the bounds of buckets; now and then time stands still or leaps.
                    t += random.nextInt(50) == 0 ? random.nextInt(300) : random.nextInt(3);
                    times[i] = t;
                    values[i] = random.nextInt(20) == 0 ? Double.NaN : random.nextInt(100);
                    single.add(t, values[i]);
                }
                many.add(times, values, times.length);
            }
            assertEquals(text(single.series(5)), text(many.series(5)));
        }
    }

    private static String text(ThinSeries series) {
        StringBuilder text = new StringBuilder(series.gaps() + " " + series.isThinned());
        for (int i = 0; i < series.size(); i++) {
            text.append(' ').append(series.timeS(i)).append(':').append(series.value(i));
        }
        return text.toString();
    }

    @Test
    void an_empty_series_has_no_points() {
        assertEquals(0, new Thinner(10).series(1).size());
    }
}
