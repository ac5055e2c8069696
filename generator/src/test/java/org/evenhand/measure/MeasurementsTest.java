package org.evenhand.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import org.evenhand.log.Methods;
import org.evenhand.model.LogSource;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Origin;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.evenhand.model.RunOutcome;
import org.evenhand.model.Status;
import org.evenhand.model.Study;
import org.evenhand.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MeasurementsTest {

    @TempDir
    private Path root;

    private static final Method METHOD = Methods.with(
            Optional.empty(),
            List.of(
                    Methods.mean("temperature", "°C"),
                    Methods.measurand(
                            "settled",
                            new Reduction.OfColumn(
                                    new Statistic.Settled(Quantity.of("20 s"), Quantity.of("5 K")),
                                    "temperature",
                                    Optional.empty()),
                            "°C")),
            "temperature",
            "°C");

    private static Run run(String id, String log) {
        return new Run(
                id,
                "study",
                METHOD.id(),
                Optional.empty(),
                "item",
                Optional.empty(),
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                Optional.of(new LogSource(log, Map.of(), ',', '.')),
                Map.of(),
                RunOutcome.COMPLETED,
                Optional.empty(),
                Origin.MEASURED,
                Map.of(),
                List.of(),
                List.of(),
                List.of(),
                Methods.NOWHERE);
    }

    private static ResultsFolder folder(Method method, List<Run> runs) {
        Study study = new Study(
                "study",
                "Which?",
                Optional.empty(),
                List.of(method.id()),
                "item",
                List.of("item"),
                OptionalInt.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                Status.DRAFT,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                "",
                1,
                runs,
                Methods.NOWHERE);
        return new ResultsFolder(
                Optional.empty(),
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeMap<>(Map.of(method.id(), method)),
                new TreeMap<>(Map.of("study", study)),
                new TreeSet<>(),
                List.of(),
                new TreeMap<>(),
                List.of(),
                new TreeMap<>(),
                org.evenhand.model.Limits.DEFAULT);
    }

    @Test
    void the_order_of_files_and_the_number_of_threads_change_nothing()
            throws IOException, InterruptedException, ExecutionException {
        List<Run> runs = new ArrayList<>();
        Random random = new Random(3);
        for (int i = 0; i < 40; i++) {
            StringBuilder log = new StringBuilder("time [s],temperature [°C]\n");
            for (int k = 0; k < 200; k++) {
                log.append(k).append(',').append(random.nextGaussian()).append('\n');
            }
            Files.writeString(root.resolve("log-" + i + ".csv"), i % 7 == 0 ? log + "x,y\n" : log);
            runs.add(run("run-" + i, "log-" + i + ".csv"));
        }
        runs.add(run("run-lost", "nowhere.csv"));
        String one = described(new ForkJoinPool(1)
                .submit(() -> Measurements.measure(folder(METHOD, runs), root))
                .get());
        List<Run> shuffled = new ArrayList<>(runs);
        Collections.shuffle(shuffled, random);
        String many = described(new ForkJoinPool(8)
                .submit(() -> Measurements.measure(folder(METHOD, shuffled), root))
                .get());
        assertEquals(one, many);
        assertTrue(one.contains("run-lost"), one);
    }

    private static String described(Measurements measurements) {
        StringBuilder text = new StringBuilder();
        measurements
                .byStudy()
                .get("study")
                .forEach((id, run) -> text.append(id)
                        .append(run.values())
                        .append(run.log())
                        .append(run.settled())
                        .append(run.approaches())
                        .append(run.sha256())
                        .append('\n'));
        return text.append(measurements.findings()).toString();
    }

    @Test
    void units_that_do_not_fit_are_found_once_for_each_study() throws IOException {
        Measurand wrong = Methods.measurand(
                "energy", new Reduction.OfColumn(new Statistic.Integral(), "power", Optional.empty()), "W");
        Measurand kelvin = Methods.mean("temperature", "K");
        Method method = Methods.with(Optional.empty(), List.of(wrong, kelvin), "power", "W", "temperature", "°C");
        Measurements measurements = Measurements.measure(folder(method, List.of()), root);
        assertEquals(
                List.of("unit-dimension", "unit-dimension"),
                measurements.findings().stream().map(f -> f.rule()).toList());
        assertEquals(
                "measurand “energy”: “integral” yields energy in W·s, which does not convert to power in W",
                measurements.findings().get(0).message());
    }
}
