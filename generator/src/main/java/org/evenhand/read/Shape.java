package org.evenhand.read;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The fields of a mapping: their names, types, meaning, and which must be there.
 *
 * <p>The one declaration from which both the checking of a file and its published JSON Schema come, so that neither can
 * drift from the other.
 */
final class Shape implements FieldType {

    private record Field(FieldType type, boolean required, String meaning) {}

    private final String what;
    private final Map<String, Field> fields = new LinkedHashMap<>();
    private final List<ObjectNode> conditions = new ArrayList<>();

    private Shape(String what) {
        this.what = what;
    }

    /** @param what the mapping stands for, in the words of a message: "an item" */
    static Shape of(String what) {
        return new Shape(what);
    }

    Shape required(String name, FieldType type, String meaning) {
        fields.put(name, new Field(type, true, meaning));
        return this;
    }

    Shape optional(String name, FieldType type, String meaning) {
        fields.put(name, new Field(type, false, meaning));
        return this;
    }

    /**
     * Tells the schema that a value of one field asks for another field. The checks of fields together, which have
     * messages of their own, do the same while reading.
     */
    Shape asking(String field, String value, String... needed) {
        ObjectNode condition = JsonNodeFactory.instance.objectNode();
        ObjectNode given = condition.putObject("if");
        given.putObject("properties").putObject(field).put("const", value);
        given.putArray("required").add(field);
        ArrayNode required = condition.putObject("then").putArray("required");
        List.of(needed).forEach(required::add);
        conditions.add(condition);
        return this;
    }

    /** Tells the schema that just one of two fields is there; see {@link #asking}. */
    Shape either(String one, String other) {
        ObjectNode condition = JsonNodeFactory.instance.objectNode();
        ArrayNode choices = condition.putArray("oneOf");
        choices.addObject().putArray("required").add(one);
        choices.addObject().putArray("required").add(other);
        conditions.add(condition);
        return this;
    }

    String what() {
        return what;
    }

    @Override
    public void check(Node node, Faults faults) {
        if (!(node instanceof Node.Mapping mapping)) {
            faults.add(
                    Rules.FIELD_MALFORMED,
                    node.place(),
                    what + " is written as fields with values, not as " + node.kind(),
                    "write it as name: value, one below the other");
            return;
        }
        List<String> unknown = new ArrayList<>();
        mapping.entries().forEach((name, entry) -> {
            Field field = fields.get(name);
            if (field == null) {
                unknown.add(name);
                faults.add(
                        Rules.FIELD_UNKNOWN,
                        entry.key(),
                        what + " has no field “" + name + "”",
                        NearMiss.suggestion(name, fields.keySet()));
            } else {
                field.type.check(entry.value(), faults);
            }
        });
        fields.forEach((name, field) -> {
            boolean misspelt = unknown.stream()
                    .anyMatch(u -> NearMiss.among(u, fields.keySet())
                            .filter(name::equals)
                            .isPresent());
            if (field.required && !mapping.entries().containsKey(name) && !misspelt) {
                faults.add(
                        Rules.FIELD_MISSING,
                        mapping.place(),
                        what + " lacks the field “" + name + "”",
                        "add it: " + field.meaning);
            }
        });
    }

    @Override
    public ObjectNode schema() {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.put("type", "object");
        schema.put("additionalProperties", false);
        ObjectNode properties = schema.putObject("properties");
        ArrayNode required = JsonNodeFactory.instance.arrayNode();
        fields.forEach((name, field) -> {
            ObjectNode property = JsonNodeFactory.instance.objectNode();
            property.put("description", field.meaning);
            property.setAll(field.type.schema());
            properties.set(name, property);
            if (field.required) {
                required.add(name);
            }
        });
        if (!required.isEmpty()) {
            schema.set("required", required);
        }
        if (!conditions.isEmpty()) {
            schema.putArray("allOf").addAll(conditions);
        }
        return schema;
    }

    /** A list of which each element has one type. */
    static FieldType listOf(FieldType element) {
        return new ListType(element, 0);
    }

    /** A list whose length the schema tells; a check of its own tells it while reading. */
    static FieldType listOf(FieldType element, int length) {
        return new ListType(element, length);
    }

    /** A mapping with names of the user's own. */
    static FieldType mapOf(FieldType key, FieldType value) {
        return new MapType(key, value);
    }

    /** A single value of one type, or something made of parts of another. */
    static FieldType either(FieldType single, FieldType composed) {
        return new EitherType(single, composed);
    }

    private record ListType(FieldType element, int length) implements FieldType {

        @Override
        public void check(Node node, Faults faults) {
            if (!(node instanceof Node.Sequence sequence)) {
                faults.add(
                        Rules.FIELD_MALFORMED,
                        node.place(),
                        "a list is wanted here, not " + node.kind(),
                        "write it in brackets, even if there is one: [one]");
                return;
            }
            sequence.elements().forEach(e -> element.check(e, faults));
        }

        @Override
        public ObjectNode schema() {
            ObjectNode schema = JsonNodeFactory.instance.objectNode();
            schema.put("type", "array");
            schema.set("items", element.schema());
            if (length > 0) {
                schema.put("minItems", length).put("maxItems", length);
            }
            return schema;
        }
    }

    private record MapType(FieldType key, FieldType value) implements FieldType {

        @Override
        public void check(Node node, Faults faults) {
            if (!(node instanceof Node.Mapping mapping)) {
                faults.add(
                        Rules.FIELD_MALFORMED,
                        node.place(),
                        "names with values are wanted here, not " + node.kind(),
                        "write { name: value }");
                return;
            }
            mapping.entries().forEach((name, entry) -> {
                key.check(new Node.Text(name, entry.key(), true), faults);
                value.check(entry.value(), faults);
            });
        }

        @Override
        public ObjectNode schema() {
            ObjectNode schema = JsonNodeFactory.instance.objectNode();
            schema.put("type", "object");
            if (key.schema().has("pattern")) {
                schema.putObject("propertyNames")
                        .put("pattern", key.schema().get("pattern").asText());
            }
            schema.set("additionalProperties", value.schema());
            return schema;
        }
    }

    private record EitherType(FieldType single, FieldType composed) implements FieldType {

        @Override
        public void check(Node node, Faults faults) {
            (node instanceof Node.Text ? single : composed).check(node, faults);
        }

        @Override
        public ObjectNode schema() {
            ObjectNode schema = JsonNodeFactory.instance.objectNode();
            schema.putArray("anyOf").add(single.schema()).add(composed.schema());
            return schema;
        }
    }
}
