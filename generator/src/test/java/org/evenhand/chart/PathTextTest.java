package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.QuadCurve2D;
import org.junit.jupiter.api.Test;

/** Source: SVG 2, chapter 9, "Paths": a lower-case command counts from the current point. */
class PathTextTest {

    @Test
    void numbers_have_two_decimals_at_most_and_no_needless_zeros() {
        assertEquals("0", PathText.number(-0.001));
        assertEquals("-.5", PathText.number(-0.5));
        assertEquals(".07", PathText.number(0.07));
        assertEquals("12", PathText.number(12.0));
        assertEquals("1234567.1", PathText.number(1234567.1));
    }

    @Test
    void segments_that_meet_become_one_line() {
        PathText path = new PathText(100);
        path.append(new Line2D.Double(1, 1, 2, 1), null);
        path.append(new Line2D.Double(2, 1, 2, 3.5), null);
        path.append(new Line2D.Double(2, 3.5, 1.25, 3), null);
        path.append(new Line2D.Double(9, 9, 10, 9), null);
        assertEquals("M1 1h1v2.5l-.75-.5m7.75 6h1", path.toString());
    }

    @Test
    void rounding_does_not_add_up() {
        Path2D line = new Path2D.Double();
        line.moveTo(0, 0);
        for (int i = 1; i <= 300; i++) {
            line.lineTo(i / 3.0, 0);
        }
        PathText path = new PathText(100);
        path.append(line, null);
        double sum = 0;
        for (String step : path.toString().substring("M0 0h".length()).split("h")) {
            sum += Double.parseDouble(step);
        }
        assertEquals(100, sum, 1e-9);
    }

    @Test
    void curves_and_closed_shapes_are_written() {
        PathText path = new PathText(1);
        path.append(new QuadCurve2D.Double(0, 0, 5, -3, 10, 0), null);
        assertEquals("M0 0q5-3 10 0", path.toString());
        Path2D triangle = new Path2D.Double();
        triangle.moveTo(1, 1);
        triangle.lineTo(4, 1);
        triangle.lineTo(4, 5);
        triangle.closePath();
        PathText closed = new PathText(1);
        closed.append(triangle, null);
        assertEquals("M1 1h3v4z", closed.toString());
    }
}
