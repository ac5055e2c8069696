package org.evenhand.chart;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;

/**
 * SVG path data, written short: relative commands between points that are first rounded to the grid, so that rounding
 * never adds up.
 *
 * <p>Source: SVG 2, chapter 9, "Paths".
 */
final class PathText {

    private final StringBuilder text = new StringBuilder();
    private final int perUnit;
    private long x;
    private long y;
    private long startX;
    private long startY;
    private boolean open;

    /** @param perUnit steps of the grid in one unit: 100 for two decimals, 1 for whole numbers */
    PathText(int perUnit) {
        this.perUnit = perUnit;
    }

    boolean isEmpty() {
        return text.length() == 0;
    }

    void append(Shape shape, AffineTransform transform) {
        double[] c = new double[6];
        for (PathIterator i = shape.getPathIterator(transform); !i.isDone(); i.next()) {
            switch (i.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> moveTo(grid(c[0]), grid(c[1]));
                case PathIterator.SEG_LINETO -> lineTo(grid(c[0]), grid(c[1]));
                case PathIterator.SEG_QUADTO -> curveTo('q', c, 2);
                case PathIterator.SEG_CUBICTO -> curveTo('c', c, 3);
                case PathIterator.SEG_CLOSE -> close();
                default -> throw new IllegalStateException("unknown segment of a path");
            }
        }
    }

    private long grid(double coordinate) {
        return StrictMath.round(coordinate * perUnit);
    }

    private void moveTo(long toX, long toY) {
        // A segment that begins where the last one ended goes on with the same line.
        if (open && toX == x && toY == y) {
            return;
        }
        text.append(isEmpty() ? 'M' : 'm');
        pair(toX - x, toY - y);
        x = toX;
        y = toY;
        startX = toX;
        startY = toY;
        open = true;
    }

    private void lineTo(long toX, long toY) {
        long dx = toX - x;
        long dy = toY - y;
        if (dx == 0 && dy == 0) {
            return;
        }
        if (dy == 0) {
            text.append('h').append(number(dx, perUnit));
        } else if (dx == 0) {
            text.append('v').append(number(dy, perUnit));
        } else {
            text.append('l');
            pair(dx, dy);
        }
        x = toX;
        y = toY;
    }

    private void curveTo(char command, double[] c, int points) {
        text.append(command);
        long toX = x;
        long toY = y;
        for (int p = 0; p < points; p++) {
            toX = grid(c[2 * p]);
            toY = grid(c[2 * p + 1]);
            if (p > 0 && toX >= x) {
                text.append(' ');
            }
            pair(toX - x, toY - y);
        }
        x = toX;
        y = toY;
    }

    private void close() {
        text.append('z');
        x = startX;
        y = startY;
        open = false;
    }

    private void pair(long dx, long dy) {
        text.append(number(dx, perUnit));
        if (dy >= 0) {
            text.append(' ');
        }
        text.append(number(dy, perUnit));
    }

    /** A count of grid steps as a decimal number without needless zeros. */
    static String number(long steps, int perUnit) {
        long whole = Math.abs(steps) / perUnit;
        long rest = Math.abs(steps) % perUnit;
        StringBuilder number = new StringBuilder();
        if (steps < 0) {
            number.append('-');
        }
        if (whole != 0 || rest == 0) {
            number.append(whole);
        }
        if (rest != 0) {
            String digits = Long.toString(perUnit + rest).substring(1);
            int end = digits.length();
            while (digits.charAt(end - 1) == '0') {
                end--;
            }
            number.append('.').append(digits, 0, end);
        }
        return number.toString();
    }

    /** A coordinate or length with two decimals at most. */
    static String number(double value) {
        return number(StrictMath.round(value * 100), 100);
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
