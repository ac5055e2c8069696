package org.evenhand.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.quantity.Quantity;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of any log. */
class PropertiesTest {

    @TempDir
    private Path folder;

    private double[] times;
    private double[] values;

    private void draw(long seed) {
        Random random = new Random(seed);
        int n = 40 + random.nextInt(200);
        times = new double[n];
        values = new double[n];
        double t = 0;
        for (int i = 0; i < n; i++) {
            times[i] = t;
            t += random.nextInt(4) + 1;
            values[i] = Math.rint((20 + 40 * (1 - Math.exp(-t / 60)) + random.nextGaussian()) * 1000) / 1000;
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void another_unit_of_the_log_and_of_the_measurand_changes_nothing_but_the_unit(long seed) throws IOException {
        draw(seed);
        Statistic[] all = {
            new Statistic.Mean(),
            new Statistic.Median(),
            new Statistic.Maximum(),
            new Statistic.Minimum(),
            new Statistic.Percentile(0.9),
            new Statistic.Settled(Quantity.of("30 s"), Quantity.of("50 K")),
            new Statistic.Asymptote(),
        };
        double[] milli = Arrays.stream(values).map(v -> v * 1000).toArray();
        double[] minutes = Arrays.stream(times).map(t -> t / 60).toArray();
        for (Statistic statistic : all) {
            RunValue celsius = new Bench(folder, "temperature", "°C")
                    .yields("value", statistic, "temperature", "°C")
                    .log("temperature [°C]", times, values)
                    .value("value");
            Bench other = new Bench(folder, "temperature", "°C")
                    .yields("value", statistic, "temperature", "°F")
                    .log("temperature [m°C]", minutes, milli);
            Files.writeString(
                    folder.resolve("log.csv"),
                    Files.readString(folder.resolve("log.csv")).replace("time [s]", "time [min]"));
            RunValue fahrenheit = other.value("value");
            assertEquals(celsius.getClass(), fahrenheit.getClass());
            if (celsius instanceof RunValue.Known in && fahrenheit instanceof RunValue.Known out) {
                // SP 811, B.8: F = C × 9/5 + 32, differences without the 32.
                assertEquals(in.value() * 9 / 5 + 32, out.value(), 1e-7, statistic.word());
                assertEquals(in.withinRun() * 9 / 5, out.withinRun(), 1e-7, statistic.word());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void an_integral_is_the_sum_of_the_integrals_of_its_parts(long seed) throws IOException {
        draw(seed);
        int split = times.length / 3;
        double whole = energy(0, times.length);
        double parts = energy(0, split + 1) + energy(split, times.length);
        assertEquals(whole, parts, 1e-12 * whole);
    }

    private double energy(int from, int to) throws IOException {
        return new Bench(folder, "power", "W")
                .yields("energy", new Statistic.Integral(), "power", "J")
                .log("power [W]", Arrays.copyOfRange(times, from, to), Arrays.copyOfRange(values, from, to))
                .known("energy")
                .value();
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void a_shifted_temperature_shifts_its_mean(long seed) throws IOException {
        draw(seed);
        double[] shifted = Arrays.stream(values).map(v -> v + 7).toArray();
        double mean = mean(values);
        assertEquals(mean + 7, mean(shifted), 1e-11);
    }

    private double mean(double[] column) throws IOException {
        return new Bench(folder, "temperature", "°C")
                .yields("mean", new Statistic.Mean(), "temperature", "°C")
                .log("temperature [°C]", times, column)
                .known("mean")
                .value();
    }
}
