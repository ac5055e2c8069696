package org.evenhand.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SampleResultsTest {

    private static final Path COMMITTED =
            Path.of(System.getProperty("evenhand.root", "..")).resolve("sample-results");

    @Test
    void theModelGivesTheRunsAndLogsThatTheSampleHolds(@TempDir Path folder) throws IOException {
        SampleResults.write(folder);

        SortedMap<String, String> made = runsAndLogs(folder);
        SortedMap<String, String> committed = runsAndLogs(COMMITTED);
        assertFalse(made.isEmpty());
        assertEquals(committed.keySet(), made.keySet());
        made.forEach((name, text) -> assertEquals(committed.get(name), text, name));
    }

    /** The text of each run and log by its path with forward slashes; compressed logs as their content. */
    private static SortedMap<String, String> runsAndLogs(Path results) throws IOException {
        SortedMap<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(results.resolve("studies"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String kind = file.getParent().getFileName().toString();
                if (kind.equals("runs") || kind.equals("logs")) {
                    texts.put(results.relativize(file).toString().replace('\\', '/'), text(file));
                }
            }
        }
        return texts;
    }

    private static String text(Path file) throws IOException {
        // The compressed bytes may differ between versions of the deflate library; what they say may not.
        if (file.toString().endsWith(".gz")) {
            try (InputStream in = new GZIPInputStream(Files.newInputStream(file))) {
                return new String(in.readAllBytes(), StandardCharsets.UTF_8);
            }
        }
        return Files.readString(file);
    }
}
