package org.evenhand.chart;

import java.util.Objects;

/**
 * What is said of a chart besides the drawing.
 *
 * @param id begins every id within the drawing; unique on its page; letters, digits and hyphens, a letter first
 * @param title a few words, plain text
 * @param description one or more sentences that state what is drawn, plain text
 */
public record Caption(String id, String title, String description) {

    /** @throws IllegalArgumentException if the id has another form */
    public Caption {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(description, "description");
        if (!id.matches("[A-Za-z][A-Za-z0-9-]*")) {
            throw new IllegalArgumentException(
                    "a chart's id needs letters, digits and hyphens, a letter first, not: " + id);
        }
    }
}
