package org.evenhand.read;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Consumer;
import org.evenhand.quantity.MisreadException;

/**
 * A field with a single value, which is read as text.
 *
 * @param what it is, in the words of a message: "a date such as 2026-03-20"
 * @param reading throws or returns null if the text is wrong; the result is not used here
 * @param schemaOf adds to the schema what JSON Schema can say
 */
record ScalarType(String what, Reading reading, Consumer<ObjectNode> schemaOf) implements FieldType {

    /** Tries to read a text. */
    @FunctionalInterface
    interface Reading {

        /** @return null if the text is right; otherwise what to do about it */
        String fault(String text) throws MisreadException;
    }

    @Override
    public void check(Node node, Faults faults) {
        if (!(node instanceof Node.Text text)) {
            faults.add(
                    Rules.FIELD_MALFORMED, node.place(), what + " is wanted here, not " + node.kind(), "write " + what);
            return;
        }
        if (text.value().isBlank()) {
            faults.add(
                    Rules.FIELD_MISSING,
                    text.place(),
                    "no value stands here",
                    "write " + what + ", or delete the field");
            return;
        }
        try {
            String remedy = reading.fault(text.value());
            if (remedy != null && looksRight(text.value())) {
                int at = LookAlike.in(text.value()).orElseThrow();
                faults.add(
                        Rules.TEXT_DECEPTIVE,
                        text.part(at, 1),
                        "“" + shown(text.value()) + "” looks like “" + LookAlike.seen(text.value())
                                + "”, but holds the character "
                                + LookAlike.named(text.value().charAt(at)),
                        "write “" + LookAlike.seen(text.value()) + "” by keyboard");
            } else if (remedy != null) {
                faults.add(Rules.FIELD_MALFORMED, text.place(), "“" + shown(text.value()) + "” is not " + what, remedy);
            }
        } catch (MisreadException e) {
            faults.add(text, e);
        }
    }

    /** Whether it only looks like a text that would be right. */
    private boolean looksRight(String value) {
        try {
            return LookAlike.in(value).isPresent() && reading.fault(LookAlike.seen(value)) == null;
        } catch (MisreadException e) {
            return false;
        }
    }

    private static String shown(String value) {
        String line = value.lines().findFirst().orElse("");
        return line.length() > 60 ? line.substring(0, 60) + "…" : line;
    }

    @Override
    public ObjectNode schema() {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schemaOf.accept(schema);
        return schema;
    }
}
