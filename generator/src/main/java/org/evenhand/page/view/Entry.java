package org.evenhand.page.view;

import java.util.List;

/**
 * A label with what belongs to it: a cell of the head block, a condition, a property.
 *
 * @param label a noun, without colon
 * @param values one or more; each on its own
 * @param note small print under the values; empty for none
 */
public record Entry(String label, List<Link> values, String note) {
    public Entry {
        values = List.copyOf(values);
    }
    /** One plain value. */
    public static Entry of(String label, String value) {
        return new Entry(label, List.of(Link.plain(value)), "");
    }
    /** One value that leads somewhere. */
    public static Entry of(String label, Link value) {
        return new Entry(label, List.of(value), "");
    }
}
