package org.evenhand.page;

import org.evenhand.chart.Caption;
import org.evenhand.chart.Charts;
import org.evenhand.chart.Figure;
import org.evenhand.page.view.Markup;

/** Charts as pages carry them: drawn twice, so that a phone need not scroll; the style sheet shows the one that fits. */
public final class Drawings {

    /** Width in CSS pixels that a phone shows without scrolling. */
    public static final int NARROW = 320;

    private Drawings() {}

    /**
     * Draws a figure.
     *
     * @param id begins the ids within the drawing; unique on its page; letters, digits and hyphens, a letter first
     * @param title a few words, plain text
     * @param description the text alternative, plain text
     */
    public static Markup of(Figure figure, String id, String title, String description) {
        String wide = Charts.svg(figure, new Caption(id, title, description), Charts.COLUMN)
                .svg();
        String narrow = Charts.svg(figure, new Caption(id + "-narrow", title, description), NARROW)
                .svg();
        return new Markup("<div class=\"wide-only\">" + wide + "</div><div class=\"narrow-only\">" + narrow + "</div>");
    }
}
