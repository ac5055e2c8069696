package org.evenhand.read;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A document with one thing changed.
 *
 * @param how what was changed, and where
 * @param document the whole
 */
record Spoilt(String how, JsonNode document) {

    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    /** What a scalar, or anything else, is replaced by; some are right in some places. */
    private static final List<JsonNode> OTHERS = List.of(
            MAKE.textNode(""),
            MAKE.textNode(" "),
            MAKE.textNode("no such word"),
            MAKE.textNode("-"),
            MAKE.textNode("Ä"),
            MAKE.textNode("2026-13-01"),
            MAKE.textNode("2026-3-1"),
            MAKE.textNode("45"),
            MAKE.numberNode(7),
            MAKE.booleanNode(true),
            MAKE.nullNode(),
            MAKE.arrayNode(),
            MAKE.objectNode());

    /** Every change at every place of a sound document. */
    static List<Spoilt> of(JsonNode sound) {
        List<Spoilt> all = new ArrayList<>();
        at(sound, sound, "", all);
        return all;
    }

    private static void at(JsonNode whole, JsonNode node, String pointer, List<Spoilt> all) {
        if (node instanceof ObjectNode object) {
            change(whole, pointer, "a field more", copy -> ((ObjectNode) copy).put("no-such-field", "x"), all);
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            for (String name : names) {
                String at = pointer + "/" + name.replace("~", "~0").replace("/", "~1");
                change(whole, pointer, "without " + name, copy -> ((ObjectNode) copy).remove(name), all);
                for (JsonNode other : OTHERS) {
                    change(whole, pointer, name + " = " + other, copy -> ((ObjectNode) copy).set(name, other), all);
                }
                at(whole, object.get(name), at, all);
            }
        } else if (node instanceof ArrayNode array) {
            change(whole, pointer, "an element more", copy -> ((ArrayNode) copy).add(MAKE.objectNode()), all);
            for (int i = 0; i < array.size(); i++) {
                at(whole, array.get(i), pointer + "/" + i, all);
            }
        }
    }

    private static void change(
            JsonNode whole, String pointer, String how, Consumer<JsonNode> action, List<Spoilt> all) {
        JsonNode copy = whole.deepCopy();
        action.accept(pointer.isEmpty() ? copy : copy.at(pointer));
        all.add(new Spoilt(pointer + ": " + how, copy));
    }
}
