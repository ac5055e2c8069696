package org.evenhand.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.log.Methods;
import org.evenhand.model.Instrument;
import org.evenhand.model.Item;
import org.evenhand.model.LogSource;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Origin;
import org.evenhand.model.Reading;
import org.evenhand.model.Reduction;
import org.evenhand.model.Run;
import org.evenhand.model.RunOutcome;
import org.evenhand.quantity.Accuracy;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.words.Words;

/** A bench to measure one run on: put a run together, and see what comes of it. */
final class Bench {

    private final Path folder;
    private final String[] records;
    private final List<Measurand> measurands = new ArrayList<>();
    private final Map<String, Instrument> instruments = new LinkedHashMap<>();
    private final Map<String, String> readWith = new LinkedHashMap<>();
    private final Map<String, Reading> readings = new LinkedHashMap<>();
    private final Map<String, String> settings = new LinkedHashMap<>();
    private Optional<Quantity> ambient = Optional.empty();
    private Optional<Quantity> maxGap = Optional.empty();
    private Optional<LogSource> log = Optional.empty();
    private final Map<String, String> circumstances = new LinkedHashMap<>();
    private boolean needsBackground;
    private Optional<Method.Cooling> cooling = Optional.empty();
    private final Map<String, Quantity> limits = new LinkedHashMap<>();

    /** @param records names and units of columns, one after the other */
    Bench(Path folder, String... records) {
        this.folder = folder;
        this.records = records;
    }

    Bench yields(String id, Reduction reduction, String unit) {
        measurands.add(Methods.measurand(id, reduction, unit));
        return this;
    }

    Bench yields(String id, Reduction.Statistic statistic, String column, String unit) {
        return yields(id, new Reduction.OfColumn(statistic, column, Optional.empty()), unit);
    }

    Bench yields(String id, Reduction.Statistic statistic, String column, String minus, String unit) {
        return yields(id, new Reduction.OfColumn(statistic, column, Optional.of(minus)), unit);
    }

    Bench instrument(String id, String accuracy, String resolution, String... columns) {
        try {
            Optional<Accuracy> limits = accuracy.isEmpty() ? Optional.empty() : Optional.of(Accuracy.parse(accuracy));
            Optional<Quantity> step = resolution.isEmpty() ? Optional.empty() : Optional.of(Quantity.of(resolution));
            instruments.put(
                    id,
                    new Instrument(
                            id,
                            Optional.empty(),
                            "anything",
                            Optional.empty(),
                            step,
                            limits,
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Methods.NOWHERE));
        } catch (MisreadException e) {
            throw new IllegalArgumentException(e);
        }
        return readWith(id, columns);
    }

    Bench readWith(String id, String... columns) {
        for (String column : columns) {
            readWith.put(column, id);
        }
        return this;
    }

    Bench reading(String name, String quantity) {
        return reading(name, new Reading.Measured(Quantity.of(quantity)));
    }

    Bench reading(String name, Reading reading) {
        readings.put(name, reading);
        return this;
    }

    Bench setting(String name, String value) {
        settings.put(name, value);
        return this;
    }

    Bench ambient(String quantity) {
        ambient = Optional.of(Quantity.of(quantity));
        return this;
    }

    Bench cooling(Method.Cooling whether) {
        cooling = Optional.of(whether);
        return this;
    }

    /** What the maker of the item states. */
    Bench limit(String name, String quantity) {
        limits.put(name, Quantity.of(quantity));
        return this;
    }

    /** The method asks for a background reading. */
    Bench needsBackground() {
        needsBackground = true;
        return this;
    }

    Bench background(String level) {
        circumstances.put("background", level);
        return needsBackground();
    }

    Bench maxGap(String quantity) {
        maxGap = Optional.of(Quantity.of(quantity));
        return this;
    }

    /** A log of these lines, the first of which is the header. */
    Bench log(String... lines) throws IOException {
        Files.writeString(folder.resolve("log.csv"), String.join("\n", lines) + "\n");
        log = Optional.of(new LogSource("log.csv", Map.of(), ',', '.'));
        return this;
    }

    /** A log with one column. */
    Bench log(String header, double[] timesS, double[] values) throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add("time [s]," + header);
        for (int i = 0; i < timesS.length; i++) {
            lines.add(timesS[i] + "," + values[i]);
        }
        return log(lines.toArray(new String[0]));
    }

    MeasuredRun measured() {
        return measured("run-1");
    }

    MeasuredRun measured(String id) {
        Method method = Methods.with(maxGap, needsBackground, cooling, measurands, records);
        Run run = new Run(
                id,
                "study",
                method.id(),
                Optional.empty(),
                "item",
                Optional.of("A1"),
                settings,
                Optional.empty(),
                Optional.empty(),
                ambient,
                readWith,
                log,
                readings,
                RunOutcome.COMPLETED,
                Optional.empty(),
                Origin.MEASURED,
                circumstances,
                List.of(),
                List.of(),
                List.of(),
                Methods.NOWHERE);
        Item item = new Item(
                "item",
                "Item",
                "small computer",
                Optional.empty(),
                List.of("A1"),
                Optional.empty(),
                Optional.empty(),
                limits,
                Optional.empty(),
                List.of(),
                Methods.NOWHERE);
        return Measurements.measure(
                run, Map.of(method.id(), method), Map.of(item.id(), item), instruments, folder, Words.english());
    }

    RunValue value(String measurand) {
        return measured().value(measurand);
    }

    RunValue.Known known(String measurand) {
        RunValue value = value(measurand);
        if (value instanceof RunValue.Known known) {
            return known;
        }
        throw new AssertionError(measurand + ": " + value);
    }

    /** The rule that a missing value names. */
    String missing(String measurand) {
        RunValue value = value(measurand);
        if (value instanceof RunValue.Missing missing) {
            return missing.rule();
        }
        throw new AssertionError(measurand + ": " + value);
    }
}
