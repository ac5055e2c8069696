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
        boolean[] keep = new boolean[n];
        keep[0] = true;
        keep[n - 1] = true;
        List<int[]> open = new ArrayList<>();
        open.add(new int[] {0, n - 1});
        while (!open.isEmpty()) {
            int[] part = open.remove(open.size() - 1);
            int farthest = -1;
            double distance = TOLERANCE_PX;
            for (int i = part[0] + 1; i < part[1]; i++) {
                double d = distance(points.get(i), points.get(part[0]), points.get(part[1]));
                if (d > distance) {
                    distance = d;
                    farthest = i;
                }
            }
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

    /** Distance of a point from a stretch of line. */
    private static double distance(double[] p, double[] a, double[] b) {
        double dx = b[0] - a[0];
        double dy = b[1] - a[1];
        double square = dx * dx + dy * dy;
        double share = square == 0 ? 0 : ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / square;
        share = Math.max(0, Math.min(1, share));
        double ex = p[0] - a[0] - share * dx;
        double ey = p[1] - a[1] - share * dy;
        return Math.sqrt(ex * ex + ey * ey);
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
