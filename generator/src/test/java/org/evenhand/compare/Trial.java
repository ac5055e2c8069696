package org.evenhand.compare;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.evenhand.measure.Measurements;
import org.evenhand.model.ResultsFolder;
import org.evenhand.read.FolderReader;

/**
 * A small study at two levels, written to files and read back, so that what is tried goes the whole way from the file to the
 * figure: energies with the errors of a meter, and times that may be cut off.
 *
 * @param runs of both levels
 * @param unit in which the energies are written
 * @param methodUnit in which the method gives them
 * @param accuracy of the meter
 */
record Trial(List<Row> runs, String unit, String methodUnit, String accuracy) {

    /** Joules in a unit; SP 811: 1 W h = 3600 J. */
    static double joules(String unit) {
        return switch (unit) {
            case "J" -> 1;
            case "kJ" -> 1000;
            case "mWh" -> 3.6;
            case "Wh" -> 3600;
            default -> throw new IllegalArgumentException(unit);
        };
    }

    /**
     * A run.
     *
     * @param id which also says in which order it is taken
     * @param level "a" or "b"
     * @param specimen on which it was made
     * @param joules of energy
     * @param timeS until something happened, or for which nothing did
     * @param censored whether nothing did
     */
    record Row(String id, String level, String specimen, double joules, double timeS, boolean censored) {

        Row withId(String other) {
            return new Row(other, level, specimen, joules, timeS, censored);
        }

        Row withTime(double otherS) {
            return new Row(id, level, specimen, joules, otherS, censored);
        }

        Row onTheOtherSide() {
            return new Row(id, level.equals("a") ? "b" : "a", specimen, joules, timeS, censored);
        }
    }

    /** Two to six runs a level on one to three specimens; now and then with equal values, or a tiny base. */
    static Trial drawn(Random random) {
        List<Row> rows = new ArrayList<>();
        int specimens = 1 + random.nextInt(3);
        double effect = random.nextInt(3) == 0 ? 0 : random.nextGaussian() * 20;
        double scale = random.nextInt(5) == 0 ? 1 : 200;
        double spread = random.nextInt(8) == 0 ? 0 : 1 + 10 * random.nextDouble();
        for (String level : List.of("a", "b")) {
            int n = 2 + random.nextInt(5);
            for (int i = 0; i < n; i++) {
                double joules = scale + (level.equals("b") ? effect : 0) + spread * random.nextGaussian();
                rows.add(new Row(
                        level + "-" + i,
                        level,
                        "S" + (1 + i % specimens),
                        joules,
                        Math.rint(10 + 90 * random.nextDouble()),
                        random.nextInt(3) == 0));
            }
        }
        return new Trial(rows, "J", "J", random.nextBoolean() ? "0.5 % of reading + 0.2 J" : "0.001 J");
    }

    Trial with(List<Row> others) {
        return new Trial(others, unit, methodUnit, accuracy);
    }

    Trial in(String writtenIn, String givenIn) {
        return new Trial(runs, writtenIn, givenIn, accuracy);
    }

    Trial shuffled(Random random) {
        List<Row> others = new ArrayList<>(runs);
        Collections.shuffle(others, random);
        return with(others);
    }

    /** What comes of it. */
    StudyEvidence evidence(Path folder) throws IOException {
        clear(folder);
        write(
                folder,
                "publication.yaml",
                "title: Trial\npublisher: A test\nbase-url: https://results.example.org/\nlicence: CC-BY-4.0\n");
        write(folder, "items/box.yaml", "item: box\nname: Box\nkind: box\nspecimens: [S1, S2, S3]\n");
        write(folder, "instruments/meter.yaml", "instrument: meter\nreads: energy\naccuracy: " + accuracy + "\n");
        write(
                folder,
                "methods/task.md",
                String.join(
                        "\n",
                        "---",
                        "method: task",
                        "version: 1",
                        "title: A task",
                        "ambient: not-needed",
                        "measurands:",
                        "  energy: { title: Energy, reduce: reading, unit: " + methodUnit + ", better: lower }",
                        "  time: { title: Time, reduce: reading, unit: s, better: higher }",
                        "---",
                        "Do it.",
                        ""));
        write(
                folder,
                "studies/one/study.md",
                String.join(
                        "\n",
                        "---",
                        "study: one",
                        "question: Is b other than a?",
                        "method: task",
                        "factor: setting",
                        "levels: [a, b]",
                        "measurands: [energy, time]",
                        "comparisons:",
                        "  difference: { as: difference, measurand: energy, level: b, against: a }",
                        "  ratio: { as: ratio, measurand: energy, level: b, against: a }",
                        "  lasting: { as: time-until, measurand: time, level: b, against: a }",
                        "status: draft",
                        "authors: [A. Tester]",
                        "---",
                        "",
                        ""));
        for (Row run : runs) {
            write(
                    folder,
                    "studies/one/runs/" + run.id() + ".json",
                    String.format(
                            Locale.ROOT,
                            "{\"run\": \"%s\", \"method\": \"task\", \"item\": \"box\", \"specimen\": \"%s\","
                                    + " \"settings\": {\"setting\": \"%s\"}, \"instruments\": {\"energy\": \"meter\"},"
                                    + " \"readings\": {\"energy\": \"%s %s\", \"time\": \"%s%s s\"},"
                                    + " \"outcome\": \"completed\"}%n",
                            run.id(),
                            run.specimen(),
                            run.level(),
                            new java.math.BigDecimal(run.joules() / joules(unit)).toPlainString(),
                            unit,
                            run.censored() ? "> " : "",
                            new java.math.BigDecimal(run.timeS()).toPlainString()));
        }
        ResultsFolder read = FolderReader.read(folder);
        StudyEvidence evidence =
                Comparer.compare(read, Measurements.measure(read, folder)).get("one");
        if (evidence == null || evidence.runs().size() != runs.size()) {
            throw new AssertionError(read.findings().get(0).toString());
        }
        return evidence;
    }

    private static void clear(Path folder) throws IOException {
        if (Files.isDirectory(folder.resolve("studies/one/runs"))) {
            try (var files = Files.list(folder.resolve("studies/one/runs"))) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private static void write(Path folder, String file, String text) throws IOException {
        Files.createDirectories(folder.resolve(file).getParent());
        Files.writeString(folder.resolve(file), text);
    }
}
