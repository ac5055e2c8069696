package org.evenhand.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.evenhand.model.ResultsFolder;
import org.evenhand.read.Sha256;

/** Whether files are still what they were when they were read; logs are watched while they are copied. */
final class Unchanged {

    private Unchanged() {}

    /** @throws IOException if a structured file has changed or gone */
    static void check(ResultsFolder folder, Path root) throws IOException {
        List<String> changed = folder.digests().entrySet().parallelStream()
                .filter(e -> !digest(root.resolve(e.getKey())).equals(e.getValue()))
                .map(e -> e.getKey())
                .toList();
        if (!changed.isEmpty()) {
            throw new IOException(String.join(", ", changed.subList(0, Math.min(5, changed.size())))
                    + " changed meanwhile; try again when nobody writes to the folder");
        }
    }

    private static String digest(Path file) {
        try {
            return Sha256.of(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
