package org.evenhand.chart;

import java.util.ArrayList;
import java.util.List;

/** Draws axes: a thin line, ticks outwards, labels that never touch each other. */
final class Frame {

    private static final double TICK = 5;

    private Frame() {}

    /** The horizontal axis at a height; returns the ticks that got a label. */
    static void below(Sheet sheet, Axis x, double yPx, Ticks ticks) {
        sheet.line(Ink.INK, 1, x.startPx(), yPx, x.endPx(), yPx);
        List<double[]> taken = new ArrayList<>();
        // 0 and 1 are what readers look for first; the others take the room that is left.
        for (boolean first : new boolean[] {true, false}) {
            for (Ticks.Tick tick : ticks.ticks()) {
                boolean anchor = tick.label().equals(x.logarithmic() ? "1" : "0");
                double at = x.at(tick.value());
                if (anchor == first) {
                    sheet.line(Ink.INK, 1, at, yPx, at, yPx + TICK);
                    label(sheet, tick, at, yPx, taken);
                }
            }
        }
    }

    private static void label(Sheet sheet, Ticks.Tick tick, double at, double yPx, List<double[]> taken) {
        double half = Lettering.width(tick.label(), Sheet.SMALL) / 2;
        boolean free = at - half >= 0 && at + half <= sheet.width();
        for (double[] other : taken) {
            free &= at + half + 6 <= other[0] || at - half - 6 >= other[1];
        }
        if (free) {
            taken.add(new double[] {at - half, at + half});
            sheet.text(Ink.INK, Sheet.SMALL, Sheet.Anchor.MIDDLE, at, yPx + 18, tick.label());
        }
    }

    /** The vertical axis at the left of a plot. */
    static void left(Sheet sheet, Axis y, double xPx, Ticks ticks) {
        sheet.line(Ink.INK, 1, xPx, y.startPx(), xPx, y.endPx());
        for (Ticks.Tick tick : ticks.ticks()) {
            double at = y.at(tick.value());
            sheet.line(Ink.INK, 1, xPx - TICK, at, xPx, at);
            sheet.text(Ink.INK, Sheet.SMALL, Sheet.Anchor.END, xPx - TICK - 4, at + 4, tick.label());
        }
    }

    /** Room the labels of a vertical axis need at its left. */
    static double room(Ticks ticks) {
        double widest = 0;
        for (Ticks.Tick tick : ticks.ticks()) {
            widest = Math.max(widest, Lettering.width(tick.label(), Sheet.SMALL));
        }
        return Math.ceil(widest + TICK + 6);
    }
}
