package org.evenhand.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Points of a line in pixels.
 *
 * @param xs one for each point
 * @param ys one for each point; NaN for a gap
 */
record Polyline(double[] xs, double[] ys) {

    /** No point that is left out lies farther than this from the line that is drawn. */
    private static final double TOLERANCE_PX = 0.2;

    /** A line of pieces with gaps between them, each without the points that nobody could see. */
    static Polyline of(List<List<double[]>> pieces) {
        List<double[]> points = new ArrayList<>();
        for (List<double[]> piece : pieces) {
            if (!points.isEmpty()) {
                points.add(new double[] {points.get(points.size() - 1)[0], Double.NaN});
            }
            points.addAll(simplified(piece));
        }
        return new Polyline(
                points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray());
    }

    /**
     * Leaves out points close to the line between those kept.
     *
     * @see "D. Douglas, T. Peucker, Algorithms for the reduction of the number of points required to represent a
     *     digitized line or its caricature, Cartographica 10 (1973)"
     */
    static List<double[]> simplified(List<double[]> points) {
        int n = points.size();
        if (n < 3) {
            return List.copyOf(points);
        }
        double[] xs = points.stream().mapToDouble(p -> p[0]).toArray();
        double[] ys = points.stream().mapToDouble(p -> p[1]).toArray();
        boolean[] keep = new boolean[n];
        keep[0] = true;
        keep[n - 1] = true;
        List<int[]> open = new ArrayList<>();
        open.add(new int[] {0, n - 1});
        while (!open.isEmpty()) {
            int[] part = open.remove(open.size() - 1);
            int farthest = farthest(xs, ys, part[0], part[1]);
            if (farthest >= 0) {
                keep[farthest] = true;
                open.add(new int[] {part[0], farthest});
                open.add(new int[] {farthest, part[1]});
            }
        }
        List<double[]> kept = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (keep[i]) {
                kept.add(points.get(i));
            }
        }
        return kept;
    }

    /** The point between two others that lies farthest from the stretch between them; -1 if none lies outside the tolerance. */
    private static int farthest(double[] xs, double[] ys, int from, int to) {
        double dx = xs[to] - xs[from];
        double dy = ys[to] - ys[from];
        double square = dx * dx + dy * dy;
        int farthest = -1;
        double most = TOLERANCE_PX * TOLERANCE_PX;
        for (int i = from + 1; i < to; i++) {
            double share = square == 0 ? 0 : ((xs[i] - xs[from]) * dx + (ys[i] - ys[from]) * dy) / square;
            share = Math.max(0, Math.min(1, share));
            double ex = xs[i] - xs[from] - share * dx;
            double ey = ys[i] - ys[from] - share * dy;
            double distance = ex * ex + ey * ey;
            if (distance > most) {
                most = distance;
                farthest = i;
            }
        }
        return farthest;
    }

    /** Points that stand alone between gaps: a line would not show them. */
    Polyline singles() {
        List<double[]> alone = new ArrayList<>();
        for (int i = 0; i < xs.length; i++) {
            boolean startsHere = i == 0 || Double.isNaN(ys[i - 1]);
            boolean endsHere = i == xs.length - 1 || Double.isNaN(ys[i + 1]);
            if (startsHere && endsHere && !Double.isNaN(ys[i])) {
                alone.add(new double[] {xs[i], ys[i]});
            }
        }
        return new Polyline(
                alone.stream().mapToDouble(p -> p[0]).toArray(),
                alone.stream().mapToDouble(p -> p[1]).toArray());
    }
}
