package org.evenhand.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.knowm.xchart.style.markers.Marker;

/** Shapes of marks; they tell series apart where colour cannot. */
enum Sign {
    DOT,
    RING,
    SQUARE,
    DIAMOND,
    TRIANGLE,
    /** A ring with an arrow to the right: the true value lies there. */
    AT_LEAST,
    /** A ring with an arrow to the left. */
    AT_MOST,
    /** A short upright line. */
    STROKE,
    /** A warning triangle. */
    CAVEAT;

    /** The sign for a series by its index from 0. */
    static Sign series(int index) {
        return new Sign[] {DOT, SQUARE, DIAMOND, TRIANGLE, RING}[index % 5];
    }

    /** Draws the sign in the current colour, centred. */
    void paint(Graphics2D g, double x, double y, double size) {
        double r = size / 2;
        switch (this) {
            case DOT -> g.fill(new Ellipse2D.Double(x - r, y - r, size, size));
            case SQUARE -> g.fill(new Rectangle2D.Double(x - r * 0.88, y - r * 0.88, size * 0.88, size * 0.88));
            case DIAMOND -> g.fill(polygon(x, y - r * 1.2, x + r * 1.2, y, x, y + r * 1.2, x - r * 1.2, y));
            case TRIANGLE -> g.fill(polygon(x, y - r * 1.1, x + r * 1.1, y + r * 0.9, x - r * 1.1, y + r * 0.9));
            case RING -> ring(g, x, y, r);
            case AT_LEAST -> {
                ring(g, x, y, r);
                arrow(g, x, y, r, 1);
            }
            case AT_MOST -> {
                ring(g, x, y, r);
                arrow(g, x, y, r, -1);
            }
            case STROKE -> {
                g.setStroke(Sheet.pen(1.5, null));
                g.draw(new Line2D.Double(x, y - r, x, y + r));
            }
            case CAVEAT -> {
                g.setStroke(Sheet.pen(1.2, null));
                g.draw(polygon(x, y - r, x + r * 1.1, y + r * 0.9, x - r * 1.1, y + r * 0.9));
                g.draw(new Line2D.Double(x, y - r * 0.35, x, y + r * 0.3));
                g.fill(new Ellipse2D.Double(x - 0.7, y + r * 0.6 - 0.9, 1.4, 1.4));
            }
        }
    }

    private static void ring(Graphics2D g, double x, double y, double r) {
        Color ink = g.getColor();
        Shape circle = new Ellipse2D.Double(x - r * 0.85, y - r * 0.85, r * 1.7, r * 1.7);
        g.setColor(Ink.PAPER.color());
        g.fill(circle);
        g.setColor(ink);
        g.setStroke(Sheet.pen(1.4, null));
        g.draw(circle);
    }

    private static void arrow(Graphics2D g, double x, double y, double r, int side) {
        double tip = x + side * r * 3.4;
        g.setStroke(Sheet.pen(1.4, null));
        g.draw(new Line2D.Double(x + side * r * 0.85, y, tip, y));
        Path2D head = new Path2D.Double();
        head.moveTo(tip - side * r * 0.9, y - r * 0.7);
        head.lineTo(tip, y);
        head.lineTo(tip - side * r * 0.9, y + r * 0.7);
        g.draw(head);
    }

    private static Path2D polygon(double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        path.closePath();
        return path;
    }

    /** The sign as a marker of a plotted series. */
    Marker marker(double size) {
        return new Marker() {
            @Override
            public void paint(Graphics2D g, double x, double y, int unused) {
                Sign.this.paint(g, x, y, size);
            }
        };
    }
}
