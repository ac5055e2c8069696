package org.evenhand.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenhand.model.Finding;
import org.evenhand.model.Limits;
import org.junit.jupiter.api.Test;

/**
 * The published schemas say what reading says.
 *
 * <p>{@code -Devenhand.renew=true} writes docs/schema anew; read the difference before committing it.
 */
class SchemasTest {

    private static final Path ROOT = Path.of(System.getProperty("evenhand.root", ".."));
    private static final Path PUBLISHED = ROOT.resolve("docs/schema");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema META =
            REGISTRY.getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));

    /** The table of units has no place in a schema; all else must be found by both. */
    private static final Set<String> BEYOND_SCHEMAS = Set.of(Rules.UNIT_UNKNOWN, Rules.UNIT_DIMENSION);

    /** What reading makes of a document. */
    private record Kind(Shape shape, Document.TogetherCheck together) {}

    private static final Map<String, Kind> KINDS = Map.of(
            "publication", new Kind(PublicationFile.SHAPE, (f, x) -> {}),
            "item", new Kind(ItemFile.SHAPE, (f, x) -> {}),
            "instrument", new Kind(InstrumentFile.SHAPE, (f, x) -> {}),
            "method", new Kind(MethodFile.SHAPE, (f, x) -> {}),
            "study", new Kind(StudyFile.SHAPE, StudyFile::checkTogether),
            "run", new Kind(RunFile.SHAPE, RunFile::checkTogether));

    @Test
    void theSchemasInTheDocumentsAreThoseOfTheReader() throws IOException {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter()
                .withSeparators(
                        Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER))
                .withObjectIndenter(new DefaultIndenter("  ", "\n"));
        for (Map.Entry<String, ?> schema : Schemas.all().entrySet()) {
            Path file = PUBLISHED.resolve(schema.getKey() + ".json");
            String text = JSON.writer(printer).writeValueAsString(schema.getValue()) + "\n";
            if (Boolean.getBoolean("evenhand.renew")) {
                Files.createDirectories(PUBLISHED);
                Files.writeString(file, text);
            }
            assertEquals(Files.readString(file), text, file.toString());
        }
        assertEquals(6, Schemas.all().size());
    }

    @Test
    void theSchemasArePackedWithTheProgram() throws IOException {
        for (String name : Schemas.all().keySet()) {
            try (InputStream in = Schemas.class.getResourceAsStream("/org/evenhand/schema/" + name + ".json")) {
                assertNotNull(in, name);
                assertEquals(JSON.readTree(Schemas.all().get(name).toString()), JSON.readTree(in), name);
            }
        }
    }

    @Test
    void eachSchemaIsOneByTheStandardsOwnSchemaAndDescribesEveryField() {
        Schemas.all().forEach((name, schema) -> {
            assertEquals(List.of(), META.validate(schema), name);
            schema.get("properties")
                    .forEach(property ->
                            assertTrue(property.path("description").asText().length() > 3, name));
        });
    }

    /** Every file of the sample and of the sound bases, and each of them with one thing changed, at every place. */
    @Test
    void theValidatorAndTheReaderAgreeOnSoundAndOnSpoiltDocuments() throws Exception {
        Map<String, Schema> validators = new TreeMap<>();
        Schemas.all().forEach((name, schema) -> validators.put(name, REGISTRY.getSchema(schema)));
        Map<String, int[]> counts = new TreeMap<>();
        List<String> drifts = new ArrayList<>();
        for (Map.Entry<Path, String> document : documents().entrySet()) {
            String name = document.getValue();
            JsonNode sound = tree(document.getKey());
            assertEquals(Set.of(), faults(name, sound), document.getKey().toString());
            assertTrue(
                    validators.get(name).validate(sound).isEmpty(),
                    document.getKey().toString());
            for (Spoilt spoilt : Spoilt.of(sound)) {
                Set<String> faults = faults(name, spoilt.document());
                boolean byReader = faults.isEmpty();
                boolean bySchema =
                        validators.get(name).validate(spoilt.document()).isEmpty();
                counts.computeIfAbsent(name, n -> new int[2])[byReader ? 0 : 1]++;
                if (byReader != bySchema && !(bySchema && BEYOND_SCHEMAS.containsAll(faults))) {
                    drifts.add(
                            document.getKey() + ": " + spoilt.how() + ": reader " + byReader + ", schema " + bySchema);
                }
            }
        }
        assertEquals(List.of(), drifts.stream().limit(20).toList());
        assertEquals(KINDS.keySet(), counts.keySet());
        counts.forEach((name, n) -> assertTrue(n[0] >= 5 && n[1] >= 50, name + " " + n[0] + " " + n[1]));
    }

    /** The rules that reading finds broken. */
    private static Set<String> faults(String name, JsonNode document) throws Exception {
        Faults faults = new Faults();
        try {
            Node tree = JsonTree.read("x.json", document.toString(), Limits.DEFAULT, faults);
            KINDS.get(name).shape().check(tree, faults);
            if (faults.count() == 0) {
                KINDS.get(name).together().check(new Fields((Node.Mapping) tree), faults);
            }
        } catch (UnreadableException e) {
            e.reportTo(faults);
        }
        return faults.findings().stream().map(Finding::rule).collect(Collectors.toCollection(TreeSet::new));
    }

    /** A file as JSON; scalars of YAML as texts. */
    private static JsonNode tree(Path file) throws Exception {
        String text = Files.readString(file);
        if (file.toString().endsWith(".json")) {
            return JSON.readTree(text);
        }
        String front = file.toString().endsWith(".md") ? text.substring(4, text.indexOf("\n---\n", 4) + 1) : text;
        return json(YamlTree.read("x.yaml", front, 0, Limits.DEFAULT, new Faults()));
    }

    private static JsonNode json(Node node) {
        if (node instanceof Node.Mapping mapping) {
            var object = JSON.createObjectNode();
            mapping.entries().forEach((key, entry) -> object.set(key, json(entry.value())));
            return object;
        }
        if (node instanceof Node.Sequence sequence) {
            var array = JSON.createArrayNode();
            sequence.elements().forEach(element -> array.add(json(element)));
            return array;
        }
        return JSON.getNodeFactory().textNode(((Node.Text) node).value());
    }

    /** Kinds of documents by their files; of runs, the first of each study, for the others are alike. */
    private static Map<Path, String> documents() throws IOException {
        Map<Path, String> documents = new TreeMap<>();
        for (Path folder : List.of(
                ROOT.resolve("sample-results"),
                Path.of("src/test/resources/rules/bases/soak"),
                Path.of("src/test/resources/rules/deviation-undeclared/near-miss-setting"),
                Path.of("src/test/resources/rules/run-excluded/triggers"),
                Path.of("src/test/resources/rules/summary-without-runs/near-miss"))) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Collections.reverseOrder()).toList()) {
                    kind(folder.relativize(file).toString().replace('\\', '/')).ifPresent(k -> documents.put(file, k));
                }
            }
        }
        Map<String, Long> runs = new TreeMap<>();
        documents
                .entrySet()
                .removeIf(d -> d.getValue().equals("run")
                        && runs.merge(d.getKey().getParent().toString(), 1L, Long::sum) > 1);
        return documents;
    }

    private static java.util.Optional<String> kind(String file) {
        if (file.matches("studies/[^/]+/runs/.+")) {
            return java.util.Optional.of("run");
        }
        if (file.endsWith("/study.md")) {
            return java.util.Optional.of("study");
        }
        return Stream.of("publication", "item", "instrument", "method")
                .filter(kind -> file.startsWith(kind) && file.matches(".*\\.(yaml|json|md)"))
                .findFirst();
    }
}
