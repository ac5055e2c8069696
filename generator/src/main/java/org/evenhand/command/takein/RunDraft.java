package org.evenhand.command.takein;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.evenhand.command.UnusableException;
import org.evenhand.log.LogOutcome;
import org.evenhand.log.LogReader;
import org.evenhand.log.SampleSink;
import org.evenhand.log.Samples;
import org.evenhand.model.ColumnMapping;
import org.evenhand.model.LogSource;
import org.evenhand.model.Subject;

/**
 * A run that can be written: its file, the original, and the clean log where one is needed.
 *
 * @param id of the run
 * @param original where the untouched log lies now
 * @param proposal how it is taken in
 * @param conditions what the log cannot tell
 * @param started when it began, where that is known
 * @param to where it goes
 */
record RunDraft(
        String id,
        Path original,
        Proposal proposal,
        Conditions conditions,
        Optional<OffsetDateTime> started,
        Destination to) {

    private static final SampleSink NOWHERE = new SampleSink() {
        @Override
        public void begin(List<String> columns, boolean[] present) {}

        @Override
        public void samples(Samples some) {}
    };

    /** How the log reader fares with what would be written. */
    LogOutcome rehearse() {
        Subject subject = Subject.run(to.study().id(), id);
        if (!proposal.needsCleanLog()) {
            Path parent = original.toAbsolutePath().getParent();
            LogSource source = source(original.getFileName().toString());
            return LogReader.read(parent, source, to.method(), subject, NOWHERE);
        }
        Path aside = null;
        try {
            aside = Files.createTempDirectory("evenhand-take-in");
            Files.writeString(aside.resolve("clean.csv"), CleanLog.text(proposal));
            LogSource source = new LogSource("clean.csv", Map.of(), ',', '.');
            return LogReader.read(aside, source, to.method(), subject, NOWHERE);
        } catch (IOException e) {
            throw new UnusableException("cannot write to the folder for temporary files");
        } finally {
            discard(aside);
        }
    }

    private static void discard(Path aside) {
        if (aside == null) {
            return;
        }
        try {
            Files.deleteIfExists(aside.resolve("clean.csv"));
            Files.deleteIfExists(aside);
        } catch (IOException e) {
            aside.toFile().deleteOnExit(); // what is left there is only a copy
        }
    }

    /** The files that would be new, with what is written there; the original is null, since it is copied. */
    Map<Path, String> files() {
        Map<Path, String> files = new LinkedHashMap<>();
        if (!isInFolder()) {
            files.put(copy(), null);
        }
        if (proposal.needsCleanLog()) {
            files.put(clean(), CleanLog.text(proposal));
        }
        files.put(to.of("runs/" + id + ".json"), json());
        return files;
    }

    /** Writes them. */
    void write() {
        try {
            for (Map.Entry<Path, String> file : files().entrySet()) {
                Files.createDirectories(file.getKey().getParent());
                if (file.getValue() == null) {
                    Files.copy(original, file.getKey());
                } else {
                    Files.write(file.getKey(), file.getValue().getBytes(StandardCharsets.UTF_8));
                }
            }
        } catch (IOException e) {
            throw new UnusableException(
                    "cannot write to " + to.of("") + "; check that you may, and that there is room");
        }
    }

    private boolean isInFolder() {
        try {
            return original.toRealPath().startsWith(to.root().toRealPath());
        } catch (IOException e) {
            throw new UnusableException(original + " cannot be reached");
        }
    }

    /** Where the untouched original lies when the run is written. */
    private Path kept() {
        return isInFolder() ? original : copy();
    }

    private Path copy() {
        String name = original.getFileName().toString();
        int dot = name.indexOf('.');
        String ending = dot < 0 ? "" : name.substring(dot).replaceAll("[^A-Za-z0-9.]", "");
        return to.of("logs/" + id + (proposal.needsCleanLog() ? ".original" : "") + ending);
    }

    private Path clean() {
        return to.of("logs/" + id + ".csv");
    }

    private LogSource source(String file) {
        Map<String, ColumnMapping> columns = new LinkedHashMap<>();
        TimeColumn time = proposal.time();
        if (!time.title()
                .equals(time.unit().map(u -> "time [" + u.symbol() + "]").orElse("time"))) {
            columns.put("time", new ColumnMapping(time.title(), time.unit(), OptionalInt.empty()));
        }
        for (Column column : proposal.columns()) {
            if (!column.title().equals(CleanLog.header(column)) || column.bit().isPresent()) {
                boolean flag = column.bit().isPresent() || column.unit().unit().isOne();
                columns.put(
                        column.name(),
                        new ColumnMapping(
                                column.title(),
                                flag
                                        ? Optional.empty()
                                        : Optional.of(column.unit().unit()),
                                column.bit()));
            }
        }
        return new LogSource(
                file,
                columns,
                proposal.dialect().separator(),
                proposal.dialect().decimal());
    }

    private String json() {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode run = mapper.createObjectNode();
        for (String schema : List.of("run.schema.json", "run.json")) {
            if (Files.isRegularFile(to.root().resolve(".schema").resolve(schema))) {
                run.put("$schema", "../../../.schema/" + schema);
            }
        }
        run.put("run", id);
        run.put("method", to.method().id());
        run.put("item", conditions.item());
        conditions.specimen().ifPresent(s -> run.put("specimen", s));
        if (!conditions.settings().isEmpty()) {
            ObjectNode settings = run.putObject("settings");
            conditions.settings().forEach(settings::put);
        }
        started.ifPresent(at -> run.put("started", written(at)));
        List<BigDecimal> seconds = proposal.time().seconds();
        run.put("length", CleanLog.seconds(seconds.get(seconds.size() - 1)) + " s");
        conditions.ambient().ifPresent(a -> run.put("ambient", a));
        if (!conditions.instruments().isEmpty()) {
            ObjectNode instruments = run.putObject("instruments");
            conditions.instruments().forEach(instruments::put);
        }
        log(run);
        run.put("outcome", "completed");
        run.put("notes", notes());
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        try {
            return mapper.writer(printer).writeValueAsString(run) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private void log(ObjectNode run) {
        Path runs = to.of("runs").toAbsolutePath().normalize();
        Path log = proposal.needsCleanLog() ? clean() : kept();
        run.put(
                "log",
                runs.relativize(log.toAbsolutePath().normalize()).toString().replace('\\', '/'));
        if (proposal.needsCleanLog()) {
            return;
        }
        LogSource source = source("");
        if (source.separator() != ',') {
            run.put("separator", source.separator() == '\t' ? "tab" : String.valueOf(source.separator()));
        }
        if (source.decimal() != '.') {
            run.put("decimal", String.valueOf(source.decimal()));
        }
        if (!source.columns().isEmpty()) {
            ObjectNode columns = run.putObject("columns");
            new java.util.TreeMap<>(source.columns()).forEach((name, mapping) -> {
                ObjectNode column = columns.putObject(name);
                column.put("from", mapping.from());
                mapping.unit().ifPresent(u -> column.put("unit", u.symbol()));
                mapping.bit().ifPresent(b -> column.put("bit", b));
            });
        }
    }

    private String notes() {
        String name = original.getFileName().toString();
        if (!proposal.needsCleanLog()) {
            return "Taken in from “" + name + "”.";
        }
        List<String> parts = new ArrayList<>(proposal.changes());
        return "Taken in from “" + name + "”, which is kept as " + kept().getFileName() + ". The clean log differs: "
                + String.join("; ", parts) + ".";
    }

    private static String written(OffsetDateTime at) {
        return at.format(java.time.format.DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }
}
