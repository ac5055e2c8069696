package org.evenhand.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenhand.model.Finding;

/**
 * A results folder that a rule is tried on: a sound base, and over it the few files that make the difference.
 *
 * <p>{@code rules/RULE/NAME/} holds those files. Beside them may stand {@code base.txt} with the name of a base other than
 * "soak", {@code absent.txt} with files of the base to leave out, one a line, {@code former/} with a former publication, and
 * {@code expected.txt} with the findings, as {@link #line} writes them.
 *
 * @param rule the rule it is for
 * @param name "triggers" or "near-miss", which may be followed by a hyphen and what sets it apart
 * @param overlay the folder of the files that differ
 */
record RuleCase(String rule, String name, Path overlay) {

    private static final Path RULES = Path.of("src/test/resources/rules");
    private static final List<String> OWN_FILES = List.of("base.txt", "absent.txt", "expected.txt");

    /** All cases, sorted. */
    static List<RuleCase> all() {
        return foldersIn(RULES).stream()
                .filter(rule -> !rule.endsWith("bases"))
                .flatMap(rule -> foldersIn(rule).stream()
                        .map(c -> new RuleCase(
                                rule.getFileName().toString(), c.getFileName().toString(), c)))
                .toList();
    }

    boolean triggers() {
        return name.startsWith("triggers");
    }

    /** Puts base and differing files together. */
    Path assembleIn(Path target) {
        String base = read("base.txt").strip();
        copy(RULES.resolve("bases").resolve(base.isEmpty() ? "soak" : base), target);
        for (String absent : read("absent.txt").lines().toList()) {
            delete(target.resolve(absent));
        }
        copy(overlay, target);
        OWN_FILES.forEach(own -> delete(target.resolve(own)));
        return target;
    }

    /** A former publication to hold the folder against, if the case has one. */
    Optional<Path> former() {
        return Optional.of(overlay.resolve("former")).filter(Files::isDirectory);
    }

    /** What {@code expected.txt} says, line by line. */
    List<String> expected() {
        return read("expected.txt").lines().toList();
    }

    /** Place, severity, outcome and rule of a finding. */
    static String line(Finding finding) {
        return finding.place() + " " + finding.severity().word() + " " + finding.rule()
                + (finding.outcome() == org.evenhand.model.Outcome.FOUND
                        ? ""
                        : " (" + finding.outcome().word() + ")");
    }

    void renew(List<String> findings) {
        write(
                overlay.resolve("expected.txt"),
                findings.stream().map(l -> l + "\n").collect(Collectors.joining()));
    }

    private String read(String file) {
        Path path = overlay.resolve(file);
        try {
            return Files.exists(path) ? Files.readString(path) : "";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> foldersIn(Path folder) {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.filter(Files::isDirectory).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile)
                    .filter(f -> !from.relativize(f).startsWith("former"))
                    .toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.write(target, Files.readAllBytes(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return rule + ": " + name;
    }
}
