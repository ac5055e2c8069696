package org.evenhand.sample;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The fields of a run file in the order put, written as JSON or as YAML. Values are strings, counts, lists of fields, or fields. */
final class Fields {

    private final Map<String, Object> values = new LinkedHashMap<>();

    /** @param pairs names and values in turn */
    static Fields of(String... pairs) {
        Fields fields = new Fields();
        for (int i = 0; i < pairs.length; i += 2) {
            fields.put(pairs[i], pairs[i + 1]);
        }
        return fields;
    }

    Fields put(String name, String value) {
        values.put(name, value);
        return this;
    }

    Fields put(String name, int count) {
        values.put(name, count);
        return this;
    }

    Fields put(String name, Fields value) {
        values.put(name, value);
        return this;
    }

    Fields put(String name, List<Fields> value) {
        values.put(name, List.copyOf(value));
        return this;
    }

    String json() {
        StringBuilder out = new StringBuilder("{\n");
        List<String> lines = new ArrayList<>();
        values.forEach((name, value) -> lines.add("  " + quoted(name) + ": " + flow(value)));
        return out.append(String.join(",\n", lines)).append("\n}\n").toString();
    }

    String yaml() {
        StringBuilder out = new StringBuilder();
        values.forEach((name, value) -> {
            out.append(name).append(':');
            if (value instanceof Fields inner) {
                out.append('\n');
                inner.values.forEach((key, part) -> out.append("  ")
                        .append(key)
                        .append(": ")
                        .append(flow(part))
                        .append('\n'));
            } else {
                out.append(' ').append(flow(value)).append('\n');
            }
        });
        return out.toString();
    }

    private static String flow(Object value) {
        List<String> parts = new ArrayList<>();
        if (value instanceof Fields inner) {
            inner.values.forEach((name, part) -> parts.add(quoted(name) + ": " + flow(part)));
            return "{ " + String.join(", ", parts) + " }";
        }
        if (value instanceof List<?> list) {
            list.forEach(part -> parts.add(flow(part)));
            return "[" + String.join(", ", parts) + "]";
        }
        return value instanceof Integer ? value.toString() : quoted((String) value);
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
