package org.evenhand.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.evenhand.model.Places;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same words in YAML and in JSON are the same record, whatever YAML 1.1 would make of them. */
class YamlAndJsonTest {

    private static final Path BASE = Path.of("src/test/resources/rules/bases/record");

    private static final String JSON_RUN = """
            {
              "run": "slow-1", "method": "encode", "item": "quillet-3", "specimen": "1e3",
              "settings": { "preset": "slow", "load": "full", "firmware": "2026-02-11", "door": "no", "place": "012", "lamp": "off", "clock": "12:30:45" },
              "started": "2026-03-02T09:14:00Z", "length": "62 s",
              "instruments": { "encode-time": "workload-clock" },
              "readings": { "encode-time": "61.204 ± 0.002 s" },
              "outcome": "stopped", "why": "The door opened: \\"by itself\\".",
              "deviations": [{ "from": "load", "why": "none" }],
              "waivers": [{ "rule": "single-run", "why": "true", "by": "R. Ambrose", "on": "2026-03-20" }]
            }
            """;

    private static final String YAML_RUN = """
            run: slow-1
            method: encode
            item: quillet-3
            specimen: 1e3
            settings: { preset: slow, load: full, firmware: 2026-02-11, door: no, place: 012, lamp: off, clock: 12:30:45 }
            started: 2026-03-02T09:14:00Z
            length: 62 s
            instruments:
              encode-time: workload-clock
            readings: { encode-time: 61.204 ± 0.002 s }
            outcome: stopped
            why: >-
              The door opened:
              "by itself".
            deviations:
              - from: load
                why: none
            waivers: [{ rule: single-run, why: true, by: R. Ambrose, on: 2026-03-20 }]
            """;

    @Test
    void aRunIsTheSameInBoth(@TempDir Path json, @TempDir Path yaml) throws IOException {
        Run first = run(json, "slow-1.json", JSON_RUN);
        Run second = run(yaml, "slow-1.yaml", YAML_RUN);

        assertEquals(values(first), values(second));
        assertEquals("no", second.settings().get("door"));
        assertEquals("012", second.settings().get("place"));
        assertNotEquals(first.places(), second.places());
    }

    @Test
    void whatIsWrongIsWrongInBothForTheSameReasons(@TempDir Path json, @TempDir Path yaml) throws IOException {
        List<String> inJson =
                faults(json, "slow-1.json", JSON_RUN.replace("62 s", "62 sec").replace("slow-1\", ", "Slow\", "));
        List<String> inYaml =
                faults(yaml, "slow-1.yaml", YAML_RUN.replace("62 s", "62 sec").replace("run: slow-1", "run: Slow"));

        assertEquals(List.of("field-malformed", "unit-unknown"), inJson);
        assertEquals(inJson, inYaml);
    }

    private static Run run(Path folder, String name, String text) throws IOException {
        ResultsFolder read = read(folder, name, text);
        assertEquals(List.of(), read.findings());
        return read.studies().get("preset").runs().stream()
                .filter(r -> r.id().equals("slow-1"))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> faults(Path folder, String name, String text) throws IOException {
        return read(folder, name, text).findings().stream()
                .map(f -> f.rule())
                .sorted()
                .toList();
    }

    private static ResultsFolder read(Path folder, String name, String text) throws IOException {
        try (Stream<Path> files = Files.walk(BASE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target = folder.resolve(BASE.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
        Files.delete(folder.resolve("studies/preset/runs/slow-1.json"));
        Files.writeString(folder.resolve("studies/preset/runs").resolve(name), text);
        Path item = folder.resolve("items/quillet-3.yaml");
        Files.writeString(item, Files.readString(item).replace("[A1,", "[1e3, A1,"));
        return FolderReader.read(folder);
    }

    /** All that a run says, its places left out. */
    private static Map<String, Object> values(Run run) {
        Map<String, Object> values = new TreeMap<>();
        List<RecordComponent> components = new ArrayList<>(List.of(Run.class.getRecordComponents()));
        components.removeIf(c -> c.getType() == Places.class);
        for (RecordComponent component : components) {
            try {
                values.put(component.getName(), component.getAccessor().invoke(run));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
        return values;
    }
}
