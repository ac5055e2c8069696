package org.evenhand.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Dots of one row, set in lanes so that none hides another.
 *
 * @param dots in rising order of value
 * @param lanes the lane of each dot: 0 in the middle, then alternately above and below
 * @param sizePx diameter of a dot
 */
record Swarm(List<Dot> dots, List<Integer> lanes, double sizePx) {

    private static final int MOST_LANES = 13;
    private static final double GAP = 0.6;

    /** Dots get smaller when there are many. */
    static Swarm of(List<Dot> unsorted, Axis axis) {
        double size = unsorted.size() <= 40 ? 7 : 4.5;
        List<Dot> dots = new ArrayList<>(unsorted);
        dots.sort(Comparator.comparingDouble(Dot::value).thenComparing(Dot::bound));
        List<Integer> lanes = new ArrayList<>();
        double[] ends = new double[MOST_LANES];
        Arrays.fill(ends, Double.NEGATIVE_INFINITY);
        for (Dot dot : dots) {
            double arrow = 1.8 * size;
            double left = axis.at(dot.value()) - size / 2 - (dot.bound() == Dot.Bound.AT_MOST ? arrow : 0);
            double right = axis.at(dot.value()) + size / 2 + (dot.bound() == Dot.Bound.AT_LEAST ? arrow : 0);
            int lane = 0;
            while (lane < MOST_LANES - 1 && !(left >= ends[lane])) {
                lane++;
            }
            lane = left >= ends[lane] ? lane : 0;
            ends[lane] = right + GAP;
            lanes.add(lane);
        }
        return new Swarm(List.copyOf(dots), List.copyOf(lanes), size);
    }

    private double pitch() {
        return sizePx + GAP;
    }

    /** Height of all lanes in use. */
    double height() {
        int used = lanes.stream().mapToInt(Integer::intValue).max().orElse(-1) + 1;
        return used * pitch();
    }

    /** Draws the swarm between {@code top} and its height below it; returns the right end of the last mark. */
    double paint(Sheet sheet, Plot plot, String scale, Axis axis, double top) {
        int used = (int) StrictMath.round(height() / pitch());
        double middle = top + (used / 2 + 0.5) * pitch();
        double right = axis.startPx();
        for (int i = 0; i < dots.size(); i++) {
            Dot dot = dots.get(i);
            int lane = lanes.get(i);
            // 0, -1, 1, -2, 2 and so on
            double offset = (lane % 2 == 0 ? lane / 2 : -(lane + 1) / 2) * pitch();
            double x = axis.at(dot.value());
            plot.sign(dot.sign(), Ink.SERIES_1, sizePx, x, middle + offset);
            sheet.mark(scale, "run", dot.value(), axis);
            right = Math.max(right, dot.bound() == Dot.Bound.AT_LEAST ? x + sizePx * 1.7 : x + sizePx / 2);
        }
        return right;
    }
}
