package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A results folder to do something to: one sound study of six runs. */
record Given(Path root) {

    private static final Path SOUND = Path.of("src/test/resources/rules/bases/soak");

    /** A copy of the sound folder. */
    static Given soundFolderIn(Path root) {
        copy(SOUND, root);
        return new Given(root);
    }

    /** A copy of any folder. */
    static Given copyOf(Path from, Path root) {
        copy(from, root);
        return new Given(root);
    }

    /** The folder with a second sound study, "copy", whose clocks read a little differently. */
    Given withASecondStudy() {
        copy(root.resolve("studies/plate"), root.resolve("studies/copy"));
        for (String level : List.of("none", "plate")) {
            for (int run = 1; run <= 3; run++) {
                replacing("studies/copy/logs/" + level + "-" + run + ".csv", ",1799,", ",1801,");
            }
        }
        return replacing("studies/copy/study.md", "study: plate", "study: copy");
    }

    Given writing(String file, String text) {
        try {
            Files.createDirectories(root.resolve(file).getParent());
            Files.writeString(root.resolve(file), text);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Given writing(String file, byte[] bytes) {
        try {
            Files.write(root.resolve(file), bytes);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Given replacing(String file, String what, String by) {
        String before = text(file);
        assertTrue(before.contains(what), () -> file + " contains " + what);
        return writing(file, before.replace(what, by));
    }

    String text(String file) {
        try {
            return Files.readString(root.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
