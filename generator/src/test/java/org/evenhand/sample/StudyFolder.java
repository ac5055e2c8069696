package org.evenhand.sample;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPOutputStream;

/** The two folders of a study that the model fills: {@code runs} and {@code logs}. */
record StudyFolder(Path folder) {

    static StudyFolder in(Path results, String study) {
        return new StudyFolder(results.resolve("studies").resolve(study));
    }

    void writeJson(String run, Fields fields) throws IOException {
        write("runs", run + ".json", fields.json().getBytes(StandardCharsets.UTF_8));
    }

    void writeYaml(String run, Fields fields) throws IOException {
        write("runs", run + ".yaml", fields.yaml().getBytes(StandardCharsets.UTF_8));
    }

    void writeCsv(String run, Log log) throws IOException {
        write("logs", run + ".csv", log.text().getBytes(StandardCharsets.UTF_8));
    }

    void writeCompressed(String run, Log log) throws IOException {
        Path file = prepared("logs", run + ".csv.gz");
        try (GZIPOutputStream out = new GZIPOutputStream(Files.newOutputStream(file))) {
            out.write(log.text().getBytes(StandardCharsets.UTF_8));
        }
    }

    private void write(String kind, String name, byte[] bytes) throws IOException {
        Files.write(prepared(kind, name), bytes);
    }

    private Path prepared(String kind, String name) throws IOException {
        return Files.createDirectories(folder.resolve(kind)).resolve(name);
    }
}
