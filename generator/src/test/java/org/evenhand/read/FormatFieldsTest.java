package org.evenhand.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.evenhand.docs.Guide;
import org.evenhand.docs.Guide.Table;
import org.evenhand.model.Finding;
import org.evenhand.model.Limits;
import org.junit.jupiter.api.Test;

/** The tables of the page on the format name every field that is declared, and no other, each with an example that is read. */
class FormatFieldsTest {

    private static final Guide GUIDE = Guide.read("docs/file-format.md");
    private static final String MEASURANDS = "method/measurands";

    private static final Map<String, Shape> KINDS = new LinkedHashMap<>();

    static {
        KINDS.put("publication", PublicationFile.SHAPE);
        KINDS.put("item", ItemFile.SHAPE);
        KINDS.put("instrument", InstrumentFile.SHAPE);
        KINDS.put("method", MethodFile.SHAPE);
        KINDS.put("study", StudyFile.SHAPE);
        KINDS.put("run", RunFile.SHAPE);
    }

    /**
     * Fields that stand together.
     *
     * @param properties their schemas, by name
     * @param required the names of those that must be there
     * @param wrapped puts a field where it belongs in the file, as YAML in one line
     */
    private record Group(Map<String, JsonNode> properties, Set<String> required, UnaryOperator<String> wrapped) {}

    private static Map<String, Group> declared() {
        Map<String, Group> groups = new TreeMap<>();
        KINDS.forEach((kind, shape) -> collect(kind, shape.schema(), UnaryOperator.identity(), groups));
        return groups;
    }

    private static void collect(
            String path, JsonNode schema, UnaryOperator<String> wrapped, Map<String, Group> groups) {
        if (schema.has("properties")) {
            Map<String, JsonNode> properties = new TreeMap<>();
            schema.get("properties").properties().forEach(p -> properties.put(p.getKey(), p.getValue()));
            groups.put(path, new Group(properties, texts(schema.get("required")), wrapped));
            properties.forEach((name, property) ->
                    collect(path + "/" + name, property, f -> wrapped.apply(name + ": " + f), groups));
        }
        if (schema.has("items")) {
            collect(path, schema.get("items"), f -> wrapped.apply("[" + grouped(f) + "]"), groups);
        }
        if (schema.path("additionalProperties").isObject()) {
            collect(path, schema.get("additionalProperties"), f -> wrapped.apply("{ x: " + grouped(f) + " }"), groups);
        }
        schema.path("anyOf").forEach(any -> collect(path, any, f -> wrapped.apply(grouped(f)), groups));
        if (schema.has("oneOf")) {
            alternatives(path, schema.get("oneOf"), f -> wrapped.apply(grouped(f)), groups);
        }
    }

    /** The shapes of measurands: one group of all their fields, required where every one requires it. */
    private static void alternatives(
            String path, JsonNode any, UnaryOperator<String> wrapped, Map<String, Group> groups) {
        Map<String, JsonNode> properties = new TreeMap<>();
        Set<String> required = new TreeSet<>(texts(any.get(0).get("required")));
        for (JsonNode one : any) {
            required.retainAll(texts(one.get("required")));
            collect(path, one, wrapped, groups);
            properties.putAll(groups.remove(path).properties);
        }
        groups.put(path, new Group(properties, required, wrapped));
    }

    private static String grouped(String field) {
        return field.startsWith("{") || field.startsWith("[") ? field : "{ " + field + " }";
    }

    private static Set<String> texts(JsonNode array) {
        Set<String> texts = new TreeSet<>();
        if (array != null) {
            array.forEach(n -> texts.add(n.asText()));
        }
        return texts;
    }

    private static Map<String, Table> tables() {
        Map<String, Table> tables = new TreeMap<>();
        for (Table table : GUIDE.tables()) {
            if (table.kind().equals("fields")) {
                for (String path : table.of().split(" ")) {
                    assertTrue(tables.put(path, table) == null, () -> "one table of " + path);
                }
            }
        }
        return tables;
    }

    private static String name(List<String> row) {
        return Guide.codes(row.get(0)).get(0);
    }

    @Test
    void thereIsATableForEveryGroupOfFields() {
        assertEquals(declared().keySet(), tables().keySet());
    }

    @Test
    void aTableNamesTheFieldsThatAreDeclaredAndWhichAreNeeded() {
        assertTrue(GUIDE.text().contains("`$schema`"));
        Map<String, Table> tables = tables();
        declared().forEach((path, group) -> {
            Set<String> names = new TreeSet<>();
            Set<String> needed = new TreeSet<>();
            for (List<String> row : tables.get(path).rows()) {
                assertTrue(names.add(name(row)), () -> path + ": " + name(row) + " is there twice");
                if (row.get(1).equals("yes")) {
                    needed.add(name(row));
                }
                assertTrue(row.get(1).matches("yes|no") && !row.get(2).isEmpty(), () -> path + ": " + row);
            }
            Set<String> wanted = new TreeSet<>(group.properties.keySet());
            wanted.remove("$schema");
            assertEquals(wanted, names, path);
            assertEquals(group.required, needed, path);
        });
    }

    @Test
    void aTableNamesEveryWordThatAFieldMayHold() {
        Map<String, Table> tables = tables();
        List<String> missing = new ArrayList<>();
        declared()
                .forEach((path, group) -> tables.get(path).rows().forEach(row -> {
                    List<String> codes = Guide.codes(row.get(2) + row.get(3));
                    JsonNode property = group.properties.get(name(row));
                    for (JsonNode holder : List.of(property, property.path("items"))) {
                        texts(holder.get("enum")).stream()
                                .filter(word -> !codes.contains(word))
                                .forEach(word -> missing.add(path + "/" + name(row) + ": " + word));
                    }
                }));
        assertEquals(List.of(), missing);
    }

    @Test
    void everyExampleIsRead() {
        Map<String, Table> tables = tables();
        List<String> faults = new ArrayList<>();
        declared()
                .forEach((path, group) -> tables.get(path).rows().forEach(row -> {
                    List<String> examples = Guide.codes(row.get(3));
                    assertFalse(examples.isEmpty(), () -> path + ": " + row);
                    for (String example : examples) {
                        String field = name(row) + ": " + example;
                        if (path.equals(MEASURANDS)) {
                            field = name(row).equals("reduce")
                                    ? field
                                    : "reduce: " + reductionWith(name(row)) + ", " + field;
                        }
                        faults(path.split("/")[0], group.wrapped.apply(field)).forEach(f -> faults.add(path + "/" + f));
                    }
                }));
        assertEquals(List.of(), faults);
    }

    /** What is wrong with a file in one line, apart from the fields that an example leaves out. */
    private static List<String> faults(String kind, String yaml) {
        Faults faults = new Faults();
        try {
            Node tree = YamlTree.read("example", yaml, 0, Limits.DEFAULT, faults);
            KINDS.get(kind).check(tree, faults);
        } catch (UnreadableException e) {
            e.reportTo(faults);
        }
        return faults.findings().stream()
                .filter(f ->
                        !f.rule().equals(Rules.FIELD_MISSING) && !f.message().contains("needs one of"))
                .map(Finding::message)
                .map(m -> yaml + ": " + m)
                .toList();
    }

    private static List<List<String>> reductions() {
        return GUIDE.tables().stream()
                .filter(t -> t.kind().equals("reductions"))
                .findFirst()
                .orElseThrow()
                .rows();
    }

    /** A reduction whose measurands have the field. */
    private static String reductionWith(String field) {
        return reductions().stream()
                .filter(row -> Guide.codes(row.get(2) + " " + row.get(3)).contains(field))
                .map(FormatFieldsTest::name)
                .findFirst()
                .orElse("reading");
    }

    @Test
    void theTableOfReductionsSaysWhichFieldsEachHas() {
        Map<String, List<Set<String>>> written = new TreeMap<>();
        for (List<String> row : reductions()) {
            written.put(
                    name(row), List.of(new TreeSet<>(Guide.codes(row.get(2))), new TreeSet<>(Guide.codes(row.get(3)))));
        }
        Map<String, List<Set<String>>> wanted = new TreeMap<>();
        for (JsonNode one : new MeasurandType().schema().get("oneOf")) {
            Set<String> common = Set.of("title", "reduce", "unit", "better", "also");
            Set<String> needed = texts(one.get("required"));
            Set<String> possible = new TreeSet<>();
            one.get("properties").fieldNames().forEachRemaining(possible::add);
            possible.removeAll(needed);
            possible.removeAll(common);
            needed.removeAll(common);
            wanted.put(one.at("/properties/reduce/const").asText(), List.of(needed, possible));
        }
        assertEquals(wanted, written);
    }
}
