package org.evenhand.chart;

import java.util.List;
import java.util.Optional;
import org.evenhand.words.Words;

/**
 * A chart that stands alone, away from its page, with the words that it must not be shown without.
 *
 * @param figure the chart; none where words are all there is
 * @param above from top to bottom
 * @param below from top to bottom
 */
public record Plate(Optional<Figure> figure, List<Line> above, List<Line> below) implements Figure {

    public Plate {
        above = List.copyOf(above);
        below = List.copyOf(below);
    }

    /** How a line is set. */
    public enum Style {
        TITLE(18, Ink.INK),
        FIGURE(16, Ink.ACCENT),
        TEXT(Sheet.TEXT, Ink.INK),
        CAVEAT(Sheet.TEXT, Ink.ACCENT),
        SOURCE(Sheet.SMALL, Ink.MUTED);

        private final double sizePx;
        private final Ink ink;

        Style(double sizePx, Ink ink) {
            this.sizePx = sizePx;
            this.ink = ink;
        }

        double sizePx() {
            return sizePx;
        }

        Ink ink() {
            return ink;
        }
    }

    /** Words of one style, broken into as many lines as they need; nothing of them is left out. */
    public record Line(Style style, String text) {}

    @Override
    public Layout layout(Words words) {
        return new PlateLayout(figure.map(f -> f.layout(words)), above, below);
    }
}
