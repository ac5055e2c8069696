package org.evenhand.command.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What became of each figure between two publications: their evidence.json, field by field. */
public final class FigureChanges {

    private static final String EVIDENCE = "evidence.json";
    private static final ObjectMapper JSON = new ObjectMapper();

    private FigureChanges() {}

    /**
     * Compares the figures of two sites.
     *
     * @return by figure, {@code answers/cable/evidence.json: comparison cable-speed, estimate: 0.99, before 0.98}
     * @throws IOException if a file cannot be read or is no JSON
     */
    public static SortedSet<Difference> between(Path now, Path before) throws IOException {
        SortedMap<String, SortedMap<String, String>> current = figures(now);
        SortedMap<String, SortedMap<String, String>> old = figures(before);
        SortedSet<Difference> changes = new TreeSet<>();
        for (String file : union(current, old)) {
            if (!old.containsKey(file)) {
                changes.add(new Difference(file, "has figures, and had none before"));
            } else if (!current.containsKey(file)) {
                changes.add(new Difference(file, "had figures before, and has none"));
            } else {
                compare(file, current.get(file), old.get(file), changes);
            }
        }
        return changes;
    }

    private static void compare(
            String file, Map<String, String> now, Map<String, String> before, SortedSet<Difference> changes) {
        for (String figure : union(now, before)) {
            String is = now.getOrDefault(figure, "absent");
            String was = before.getOrDefault(figure, "absent");
            if (!is.equals(was)) {
                changes.add(new Difference(file, figure + ": " + is + ", before " + was));
            }
        }
    }

    private static SortedSet<String> union(Map<String, ?> one, Map<String, ?> other) {
        SortedSet<String> union = new TreeSet<>(one.keySet());
        union.addAll(other.keySet());
        return union;
    }

    private static SortedMap<String, SortedMap<String, String>> figures(Path site) throws IOException {
        SortedMap<String, SortedMap<String, String>> figures = new TreeMap<>();
        Path answers = site.resolve("answers");
        if (!Files.isDirectory(answers)) {
            return figures;
        }
        try (Stream<Path> folders = Files.list(answers)) {
            for (Path folder : folders.sorted().toList()) {
                Path file = folder.resolve(EVIDENCE);
                if (Files.isRegularFile(file)) {
                    figures.put("answers/" + folder.getFileName() + "/" + EVIDENCE, ofFile(file));
                }
            }
        }
        return figures;
    }

    private static SortedMap<String, String> ofFile(Path file) throws IOException {
        SortedMap<String, String> figures = new TreeMap<>();
        JsonNode root = JSON.readTree(file.toFile());
        for (JsonNode entry : root.path("summaries")) {
            String level = entry.path("level").asText() + ", "
                    + entry.path("measurand").asText();
            put("summary " + level, entry, figures);
        }
        for (JsonNode entry : root.path("comparisons")) {
            put("comparison " + entry.path("id").asText(), entry, figures);
        }
        for (JsonNode entry : root.path("runs")) {
            put("run " + entry.path("run").asText(), entry, figures);
        }
        return figures;
    }

    private static void put(String name, JsonNode node, SortedMap<String, String> figures) {
        if (node.isObject()) {
            node.properties().forEach(field -> put(name + ", " + field.getKey(), field.getValue(), figures));
        } else {
            figures.put(name, node.toString());
        }
    }
}
