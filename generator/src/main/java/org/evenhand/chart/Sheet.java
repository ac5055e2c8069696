package org.evenhand.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The paper a chart is drawn on, and the few strokes of which all charts are made. */
final class Sheet {

    /** Size of labels in pixels. */
    static final double TEXT = 13;

    /** Size of the numbers at ticks and of side notes in pixels. */
    static final double SMALL = 11.5;

    enum Anchor {
        START,
        MIDDLE,
        END
    }

    private final Graphics2D g;
    private final int width;
    private final int height;
    private final Optional<List<Mark>> marks;

    Sheet(Graphics2D g, int width, int height) {
        this(g, width, height, Optional.empty());
    }

    private Sheet(Graphics2D g, int width, int height, Optional<List<Mark>> marks) {
        this.g = g;
        this.width = width;
        this.height = height;
        this.marks = marks;
    }

    /** A sheet that notes where values come to lie; others, of which there are many more, are spared the trouble. */
    static Sheet marked(Graphics2D g, int width, int height) {
        return new Sheet(g, width, height, Optional.of(new ArrayList<>()));
    }

    /** Paints on the part of this sheet from {@code topPx} down, as on a sheet of that height. */
    void inset(double topPx, int heightPx, Consumer<Sheet> painter) {
        AffineTransform page = g.getTransform();
        g.translate(0, topPx);
        painter.accept(new Sheet(g, width, heightPx, marks));
        g.setTransform(page);
    }

    Graphics2D graphics() {
        return g;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** Notes a mark that lies where the axis has its value. */
    void mark(String scale, String what, double value, Axis axis) {
        mark(scale, what, value, axis, axis.at(value));
    }

    /** Notes a mark by the pixel at which it was drawn. */
    void mark(String scale, String what, double value, Axis axis, double pixel) {
        marks.ifPresent(list -> list.add(new Mark(scale, what, value, axis.logarithmic(), pixel)));
    }

    /** Whether marks are noted at all. */
    boolean isMarked() {
        return marks.isPresent();
    }

    List<Mark> marks() {
        return marks.map(List::copyOf).orElse(List.of());
    }

    void line(Ink ink, double widthPx, double x1, double y1, double x2, double y2) {
        stroke(ink, widthPx, new Line2D.Double(x1, y1, x2, y2));
    }

    void dashes(Ink ink, double widthPx, float[] dash, double x1, double y1, double x2, double y2) {
        g.setColor(ink.color());
        g.setStroke(pen(widthPx, dash));
        g.draw(new Line2D.Double(x1, y1, x2, y2));
    }

    void stroke(Ink ink, double widthPx, Shape shape) {
        g.setColor(ink.color());
        g.setStroke(pen(widthPx, null));
        g.draw(shape);
    }

    void fill(Ink ink, double opacity, Shape shape) {
        g.setColor(ink.tint(opacity));
        g.fill(shape);
    }

    void shade(Ink ink, double opacity, double x1, double y1, double x2, double y2) {
        fill(
                ink,
                opacity,
                new Rectangle2D.Double(Math.min(x1, x2), Math.min(y1, y2), Math.abs(x2 - x1), Math.abs(y2 - y1)));
    }

    /** Writes text; {@code y} is its baseline. */
    void text(Ink ink, double sizePx, Anchor anchor, double x, double y, String text) {
        double length = Lettering.width(text, sizePx);
        double left = switch (anchor) {
            case START -> x;
            case MIDDLE -> x - length / 2;
            case END -> x - length;
        };
        g.setColor(ink.color());
        Lettering.draw(g, text, left, y, sizePx);
    }

    /** A sign as a marker of a series would look. */
    void sign(Sign sign, Ink ink, double x, double y, double sizePx) {
        g.setColor(ink.color());
        sign.paint(g, x, y, sizePx);
    }

    static BasicStroke pen(double widthPx, float[] dash) {
        return new BasicStroke((float) widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0);
    }
}
