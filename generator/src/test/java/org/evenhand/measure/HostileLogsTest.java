package org.evenhand.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.evenhand.model.Condition;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Threshold;
import org.evenhand.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Logs that were damaged, by accident or on purpose: every measurand has an answer, and nothing is thrown. */
class HostileLogsTest {

    @TempDir
    private Path folder;

    private Bench bench() throws IOException {
        Condition hot = new Condition(
                "temperature", false, new Threshold.Fixed(Quantity.of("50 °C")), Optional.of(Quantity.of("3 s")));
        return new Bench(folder, "temperature", "°C", "power", "W")
                .yields("mean", new Statistic.Mean(), "temperature", "°C")
                .yields("median", new Statistic.Median(), "temperature", "°C")
                .yields("energy", new Statistic.Integral(), "power", "mWh")
                .yields("increase", new Statistic.Increase(Optional.empty()), "power", "W")
                .yields("settled", new Statistic.Settled(Quantity.of("10 s"), Quantity.of("1 K")), "temperature", "°C")
                .yields("plateau", new Statistic.Asymptote(), "temperature", "°C")
                .yields("onset", new Reduction.TimeUntil(hot), "s")
                .yields("share", new Reduction.Share(hot), "%")
                .yields("square", new Reduction.Derived(Reduction.Operation.PRODUCT, "energy", "energy"), "mWh²")
                .yields("ratio", new Reduction.Derived(Reduction.Operation.QUOTIENT, "energy", "energy"), "1")
                .instrument("meter", "1 % of reading + 1 W", "1 W", "power")
                .log("time [s],temperature [°C],power [W]", "0,20,5", "1,30,5");
    }

    private static String log() {
        StringBuilder log = new StringBuilder("time [s],temperature [°C],power [W]\n");
        for (int i = 0; i < 40; i++) {
            log.append(i)
                    .append(',')
                    .append(20 + i)
                    .append(".5,")
                    .append(5 + i % 3)
                    .append('\n');
        }
        return log.toString();
    }

    private void assertAnswered(MeasuredRun run) {
        assertEquals(10, run.values().size());
        run.values().values().forEach(value -> assertNotNull(value));
        assertTrue(run.findings().size() <= 21);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void any_damage_to_the_bytes_is_survived(long seed) throws IOException {
        Random random = new Random(seed);
        Bench bench = bench();
        for (int round = 0; round < 250; round++) {
            byte[] bytes = log().getBytes(StandardCharsets.UTF_8);
            int hits = 1 + random.nextInt(6);
            for (int i = 0; i < hits; i++) {
                byte[] odd = {'"', '\r', '\n', ',', '.', '-', 'e', '9', 0, (byte) 0xc3, (byte) 0xff, ' ', '['};
                bytes[random.nextInt(bytes.length)] = odd[random.nextInt(odd.length)];
            }
            int length = random.nextInt(4) == 0 ? random.nextInt(bytes.length) : bytes.length;
            Files.write(folder.resolve("log.csv"), java.util.Arrays.copyOf(bytes, length));
            assertAnswered(bench.measured());
        }
    }

    @Test
    void numbers_at_the_edge_of_what_can_be_computed_with_give_no_infinity() throws IOException {
        for (String number : List.of("1e100", "-1e100", "1e-100", "1e-300", "0", "1e150", "9e999")) {
            Bench bench = bench();
            StringBuilder log = new StringBuilder("time [s],temperature [°C],power [W]\n");
            for (int i = 0; i < 30; i++) {
                log.append(i).append(",20,").append(i % 2 == 0 ? number : "-1").append('\n');
                log.append(i).append(".5,").append(number).append(",0\n");
            }
            Files.writeString(folder.resolve("log.csv"), log);
            assertAnswered(bench.measured());
        }
    }
}
