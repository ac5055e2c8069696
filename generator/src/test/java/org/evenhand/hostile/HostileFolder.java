package org.evenhand.hostile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/** The sample's folder, copied, with a hostile string in each text that authors are free to choose. */
final class HostileFolder {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path SAMPLE =
            Path.of(System.getProperty("evenhand.root", "..")).resolve("sample-results");

    /** Fields of free text, wherever they stand; the others are names, quantities or choices of a few words. */
    private static final Set<String> FREE = Set.of(
            "title",
            "publisher",
            "contact",
            "about",
            "name",
            "kind",
            "maker",
            "obtained",
            "unidentified",
            "notes",
            "reads",
            "question",
            "short-answer",
            "authors",
            "caveats",
            "what",
            "why",
            "by",
            "shows",
            "licence",
            "probe",
            "orientation",
            "altitude",
            "done-by",
            "firmware",
            "enclosure");

    /** What is added where the sample lacks it. */
    private static final Map<String, List<String>> ADDED = Map.of(
            "items", List.of("maker", "obtained", "notes"),
            "instruments", List.of("name", "notes"),
            "runs", List.of("probe", "orientation", "altitude", "done-by", "notes"));

    private final Path folder;
    private final List<String> strings;
    private int next;
    private final SortedMap<String, Integer> filled = new TreeMap<>();

    private HostileFolder(Path folder, List<String> strings, int first) {
        this.folder = folder;
        this.strings = strings;
        this.next = first;
    }

    /**
     * Writes a folder.
     *
     * @param first index of the string that comes first; each field takes the next
     * @return how often each field was filled, by kind of file and field
     */
    static SortedMap<String, Integer> write(Path folder, List<String> strings, int first) throws IOException {
        HostileFolder hostile = new HostileFolder(folder, strings, first);
        try (Stream<Path> files = Files.walk(SAMPLE)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                hostile.copy(file);
            }
        }
        return hostile.filled;
    }

    private void copy(Path file) throws IOException {
        Path relative = SAMPLE.relativize(file);
        Path target = folder.resolve(relative.toString());
        Files.createDirectories(target.getParent());
        String name = relative.toString();
        String kind = name.contains("/runs/") ? "runs" : name.replaceFirst("[/.].*", "");
        if (name.endsWith(".json")) {
            JsonNode tree = JSON.readTree(file.toFile());
            Files.writeString(target, JSON.writeValueAsString(run((ObjectNode) tree, target)));
        } else if (name.endsWith(".yaml")) {
            Files.writeString(target, yaml().dump(JSON.convertValue(filled(yaml().load(text(file)), kind), Map.class)));
        } else if (name.endsWith(".md")) {
            String text = text(file);
            int end = text.indexOf("\n---\n", 3);
            Object front = JSON.convertValue(filled(yaml().load(text.substring(4, end + 1)), kind), Map.class);
            StringBuilder body = new StringBuilder();
            for (int i = 0; i < 12; i++) {
                body.append("## ").append(oneLine(taken(kind + "/heading"))).append("\n\n");
                body.append(taken(kind + "/body"))
                        .append("\n\n- ")
                        .append(oneLine(taken(kind + "/list")))
                        .append("\n\n");
            }
            Files.writeString(target, "---\n" + yaml().dump(front) + "---\n" + body);
        } else {
            Files.copy(file, target);
        }
    }

    private static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    /** Names of logs are free too, as far as a file system holds them. */
    private JsonNode run(ObjectNode run, Path file) throws IOException {
        JsonNode log = run.get("log");
        JsonNode hostile = filled(JSON.convertValue(run, Object.class), "runs");
        if (log != null
                && log.isTextual()
                && log.asText().endsWith(".csv")
                && filled.getOrDefault("runs/log", 0) < 60) {
            Path old = file.resolveSibling(log.asText()).normalize();
            String bare = oneLine(taken("runs/log")).replaceAll("[/\\\\:\u0000-\u001f]", "_");
            byte[] bytes = bare.getBytes(StandardCharsets.UTF_8);
            String name = bytes.length > 150 ? bare.substring(0, 30) : bare;
            String numbered = filled.get("runs/log") + name + ".csv";
            Path source = SAMPLE.resolve(folder.relativize(old).toString());
            Files.createDirectories(old.getParent());
            Files.copy(source, old.resolveSibling(numbered));
            ((ObjectNode) hostile).put("log", "../logs/" + numbered);
        }
        return hostile;
    }

    private JsonNode filled(Object tree, String kind) {
        JsonNode node = JSON.valueToTree(tree);
        ADDED.getOrDefault(kind, List.of())
                .forEach(field -> ((ObjectNode) node)
                        .putIfAbsent(field, JSON.getNodeFactory().textNode("")));
        fill(node, kind);
        return node;
    }

    private void fill(JsonNode node, String kind) {
        if (node instanceof ObjectNode object) {
            List<String> names = new ArrayList<>();
            for (Iterator<String> i = object.fieldNames(); i.hasNext(); ) {
                names.add(i.next());
            }
            for (String name : names) {
                JsonNode value = object.get(name);
                boolean isFree = FREE.contains(name) && !isReserved(kind, name, value);
                if (isFree && value.isTextual()) {
                    object.put(name, taken(kind + "/" + name));
                } else if (isFree
                        && value instanceof ArrayNode list
                        && list.size() > 0
                        && list.get(0).isTextual()) {
                    list.removeAll();
                    for (int i = 0; i < 6; i++) {
                        list.add(taken(kind + "/" + name));
                    }
                } else {
                    fill(value, kind);
                }
            }
        } else if (node instanceof ArrayNode list) {
            list.forEach(each -> fill(each, kind));
        }
    }

    /** Where a word of that name is a reference or a choice. */
    private static boolean isReserved(String kind, String name, JsonNode value) {
        return name.equals("kind") && !kind.equals("items")
                || name.equals("by") && value.asText().matches("[a-z0-9-]+")
                || Set.of("enclosure", "supply", "firmware").contains(name)
                        && value.asText().length() < 5;
    }

    private String taken(String field) {
        filled.merge(field, 1, Integer::sum);
        return strings.get(next++ % strings.size());
    }

    private static String oneLine(String text) {
        return text.replaceAll("[\r\n\u2028\u2029]+", " ");
    }

    /** Every scalar is text, as the program reads it. */
    private static Yaml yaml() {
        LoaderOptions loading = new LoaderOptions();
        DumperOptions dumping = new DumperOptions();
        dumping.setDefaultScalarStyle(DumperOptions.ScalarStyle.DOUBLE_QUOTED);
        dumping.setSplitLines(false);
        return new Yaml(new SafeConstructor(loading), new Representer(dumping), dumping, loading, new Resolver() {
            @Override
            protected void addImplicitResolvers() {
                // none
            }
        });
    }
}
