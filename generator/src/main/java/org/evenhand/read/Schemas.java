package org.evenhand.read;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The JSON Schemas (2020-12) of the files that people write, for editors and other programs.
 *
 * <p>They come from the shapes that reading itself holds files against. Units, dates that do not exist, and what a name
 * leads to are beyond them: a file that its schema accepts may still have findings, never the other way round.
 */
public final class Schemas {

    /** Under which the schemas name themselves; the same files are packed with the program. */
    public static final String ADDRESS = "https://evenhand.example/schema/";

    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

    private Schemas() {}

    /** Each schema by its name, "run", in the order in which a folder is read. */
    public static Map<String, ObjectNode> all() {
        Map<String, ObjectNode> schemas = new LinkedHashMap<>();
        add(schemas, "publication", PublicationFile.SHAPE, "publication.yaml: who publishes, and under which terms");
        add(schemas, "item", ItemFile.SHAPE, "items/ID.yaml: a kind of thing tested");
        add(schemas, "instrument", InstrumentFile.SHAPE, "instruments/ID.yaml: what readings and columns come from");
        add(schemas, "method", MethodFile.SHAPE, "front matter of methods/ID.md: how a test is done");
        add(schemas, "study", StudyFile.SHAPE, "front matter of studies/ID/study.md: one question and its comparisons");
        add(schemas, "run", RunFile.SHAPE, "studies/STUDY/runs/ID.json or .yaml: one execution of a method");
        return schemas;
    }

    private static void add(Map<String, ObjectNode> schemas, String name, Shape shape, String description) {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.put("$schema", DIALECT);
        schema.put("$id", ADDRESS + name + ".json");
        schema.put("title", "Evenhand: " + shape.what());
        schema.put("description", description);
        schema.setAll(shape.schema());
        schemas.put(name, schema);
    }
}
