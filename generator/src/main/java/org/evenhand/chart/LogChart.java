package org.evenhand.chart;

import java.util.List;
import org.evenhand.words.Words;

/**
 * Columns of logs over time, a panel each, above one time axis.
 *
 * <p>Lines with one label have one look in all panels. For runs as small multiples give each run a panel, all with one
 * {@code scale}.
 *
 * @param timeTitle what time is counted from, such as "time from start"; its unit is added
 * @param fromS begin of the time axis in seconds
 * @param toS end of the time axis in seconds, later than {@code fromS}
 * @param panels from top to bottom, at least one
 * @param spans stretches of time that are shaded in all panels
 * @param spanMeans words for the key, such as "throttled"; empty if there are no spans
 */
public record LogChart(
        String timeTitle, double fromS, double toS, List<Panel> panels, List<Span> spans, String spanMeans)
        implements Figure {

    /** @throws IllegalArgumentException if there is no panel, or time does not run forwards */
    public LogChart {
        panels = List.copyOf(panels);
        spans = List.copyOf(spans);
        if (panels.isEmpty() || !(fromS < toS)) {
            throw new IllegalArgumentException("a log chart needs a panel and a stretch of time");
        }
    }

    /**
     * One panel.
     *
     * @param title the quantity with its unit, or the run
     * @param scale panels of one scale have one value axis
     * @param lines in the order of their importance
     * @param limits lines across
     * @param leastSpan how much of the quantity the panel shows at least, so that mere noise is not blown up to fill it;
     *     zero for no such least
     */
    public record Panel(String title, String scale, List<Line> lines, List<Limit> limits, double leastSpan) {

        /** A panel as large as its values ask for. */
        public Panel(String title, String scale, List<Line> lines, List<Limit> limits) {
            this(title, scale, lines, limits, 0);
        }

        public Panel {
            lines = List.copyOf(lines);
            limits = List.copyOf(limits);
        }
    }

    /**
     * A line.
     *
     * @param label stands at its end; empty for none
     * @param trace the values
     * @param surroundings whether it is of the surroundings, such as the ambient temperature, and stays in the back
     */
    public record Line(String label, Trace trace, boolean surroundings) {}

    /** A limit: its value in the unit of the panel, and its name. */
    public record Limit(double value, String label) {

        /** @throws IllegalArgumentException if the value is not finite */
        public Limit {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a limit has a finite value, not " + value);
            }
        }
    }

    /** A stretch of time, in seconds. */
    public record Span(double fromS, double toS) {}

    /**
     * Where the panels lie in a drawing of a width: time runs from the left to the right, the panels from the top to the
     * bottom, all in pixels.
     */
    public record Place(double leftPx, double rightPx, double topPx, double bottomPx) {}

    /** Where the panels lie in a drawing of a width. */
    public Place place(int width, Words words) {
        return new LogLayout(this, words).place(width);
    }

    @Override
    public Layout layout(Words words) {
        return new LogLayout(this, words);
    }
}
