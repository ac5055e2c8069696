package org.evenhand.check;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.evenhand.check.rule.ProseRules;
import org.evenhand.compare.Comparer;
import org.evenhand.measure.Measurements;
import org.evenhand.model.ResultsFolder;
import org.evenhand.prose.Names;
import org.evenhand.prose.StudyResolver;
import org.evenhand.read.FolderReader;

/**
 * How long the rules on prose take for many long answers, on one core. To be run by hand; see docs/benchmarks/prose.md.
 *
 * <p>The texts are those of a results folder, each repeated until it has the number of words asked for, so that links,
 * numbers and names are as dense as in answers that somebody wrote.
 */
final class ProseBenchmark {

    private static final int WORDS = 1_500;
    private static final int ROUNDS = 3;

    private ProseBenchmark() {}

    /**
     * Arguments: a results folder, how many answers, and, to make a results folder of so many long answers instead of timing
     * them, where to put it.
     */
    public static void main(String[] arguments) throws IOException {
        Path from = Path.of(arguments[0]);
        int answers = Integer.parseInt(arguments[1]);
        if (arguments.length > 2) {
            multiply(from, answers, Path.of(arguments[2]));
        } else {
            time(from, answers);
        }
    }

    /** Copies of the studies under further names, until there are as many as asked for. */
    private static void multiply(Path from, int answers, Path to) throws IOException {
        copy(from, to);
        for (Path study : studies(to)) {
            lengthen(study);
        }
        List<Path> studies = studies(to);
        for (int i = studies.size(); i < answers; i++) {
            Path study = studies.get(i % studies.size()).getParent();
            String name = study.getFileName() + "-" + i / studies.size();
            Path copied = study.resolveSibling(name);
            copy(study, copied);
            Path text = copied.resolve("study.md");
            Files.writeString(text, Files.readString(text).replaceFirst("(?m)^study: .*$", "study: " + name));
        }
    }

    private static List<Path> studies(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(f -> f.endsWith("study.md")).sorted().toList();
        }
    }

    private static void time(Path from, int answers) throws IOException {
        Path root = Files.createTempDirectory("answers");
        copy(from, root);
        int links = 0;
        for (Path study : studies(root)) {
            links += lengthen(study);
        }
        ResultsFolder folder = FolderReader.read(root);
        Measurements measured = Measurements.measure(folder, root);
        Names names = StudyResolver.names(folder);
        List<StudyView> views = new ArrayList<>();
        Comparer.compare(folder, measured)
                .values()
                .forEach(e -> views.add(new StudyView(folder, e, measured, Optional.empty(), null, r -> r.verdict())));
        System.out.printf(
                Locale.ROOT,
                "%d texts of %d words, %d links in each on average%n",
                views.size(),
                WORDS,
                links / views.size());
        for (int round = 1; round <= ROUNDS; round++) {
            long start = cpuTimeNs();
            int findings = 0;
            for (int i = 0; i < answers; i++) {
                findings += findings(views.get(i % views.size()), names);
            }
            System.out.printf(
                    Locale.ROOT,
                    "round %d: %d answers in %.2f s of one core, %d findings%n",
                    round,
                    answers,
                    (cpuTimeNs() - start) / 1e9,
                    findings);
        }
    }

    private static int findings(StudyView shared, Names names) {
        // A view of its own for each answer, as in a publication, so that nothing read for one serves another.
        StudyView view = new StudyView(
                shared.folder(),
                shared.evidence(),
                shared.measured(),
                shared.former(),
                new StudyTexts(shared.folder(), shared.study(), names),
                shared.verdict());
        int findings = ProseChecks.faults(view).size();
        for (Rule rule : ProseRules.ALL) {
            Report report = new Report(rule.facts(), view.folder().publication());
            rule.check(view, report);
            findings += report.findings().size();
        }
        return findings;
    }

    private static long cpuTimeNs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** Repeats the paragraphs of an answer; returns how many links it then has. */
    private static int lengthen(Path file) throws IOException {
        String text = Files.readString(file);
        int body = text.indexOf("\n---\n", 4) + 5;
        String[] paragraphs = text.substring(body).strip().split("\n\n");
        StringBuilder answer = new StringBuilder();
        int words = 0;
        for (int i = 0; words < WORDS; i++) {
            String paragraph = paragraphs[i % paragraphs.length];
            answer.append(paragraph).append("\n\n");
            words += paragraph.split("\\s+").length;
        }
        Files.writeString(file, text.substring(0, body) + "\n" + answer);
        return answer.toString().split("\\]\\((?:evidence|given):").length - 1;
    }

    private static void copy(Path from, Path to) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(from)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        for (Path file : files) {
            Path target = to.resolve(from.relativize(file).toString());
            Files.createDirectories(target.getParent());
            Files.copy(file, target);
        }
    }
}
