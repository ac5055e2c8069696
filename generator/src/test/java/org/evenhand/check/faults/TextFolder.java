package org.evenhand.check.faults;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A results folder as texts by path, to be changed before it is written. */
final class TextFolder {

    private final Map<String, String> files = new TreeMap<>();

    /** The files of a sound base. */
    static TextFolder ofBase(String base) {
        Path root = Path.of("src/test/resources/rules/bases", base);
        TextFolder folder = new TextFolder();
        try (Stream<Path> found = Files.walk(root)) {
            for (Path file : found.filter(Files::isRegularFile).toList()) {
                folder.files.put(root.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return folder;
    }

    String get(String file) {
        return files.get(file);
    }

    void put(String file, String text) {
        files.put(file, text);
    }

    void remove(String file) {
        files.remove(file);
    }

    List<String> matching(String pattern) {
        return files.keySet().stream().filter(f -> f.matches(pattern)).toList();
    }

    /** Replaces what a pattern finds; it must find something. */
    TextFolder edit(String file, String pattern, String by) {
        Matcher matcher = Pattern.compile(pattern, Pattern.MULTILINE).matcher(files.get(file));
        assertTrue(matcher.find(), () -> file + " has no " + pattern);
        files.put(file, matcher.replaceAll(by));
        return this;
    }

    TextFolder editAll(String filesPattern, String pattern, String by) {
        matching(filesPattern).forEach(f -> edit(f, pattern, by));
        return this;
    }

    /** Changes each row of a log behind its header; a row that becomes null is left out. */
    TextFolder rows(String file, UnaryOperator<String[]> change) {
        List<String> lines = new ArrayList<>();
        for (String line : files.get(file).lines().toList()) {
            String[] row = lines.isEmpty() ? line.split(",") : change.apply(line.split(","));
            if (row != null) {
                lines.add(String.join(",", row));
            }
        }
        files.put(file, String.join("\n", lines) + "\n");
        return this;
    }

    Path writeTo(Path root) {
        try {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path target = root.resolve(file.getKey());
                Files.createDirectories(target.getParent());
                Files.writeString(target, file.getValue());
            }
            return root;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The files of a study under another name, for a folder that holds many. */
    void moveStudyInto(String study, String name, Map<String, String> target) {
        files.forEach((file, text) -> {
            String moved = file.replace("studies/" + study + "/", "studies/" + name + "/");
            boolean isStudy = moved.equals("studies/" + name + "/study.md");
            target.put(moved, isStudy ? text.replace("study: " + study, "study: " + name) : text);
        });
    }
}
