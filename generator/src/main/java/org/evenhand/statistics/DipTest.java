package org.evenhand.statistics;

import java.util.Arrays;
import java.util.Random;

/**
 * Hartigans' dip: how far a sample is from every distribution that has a single mode.
 *
 * <p>The dip is the least possible greatest distance between the empirical distribution function and one that is convex up
 * to some point and concave beyond it; at that point it may jump. It lies between 1/(2n) and 1/4. The p value is that of a
 * uniform distribution, from {@value #SIMULATIONS} samples drawn by a generator of fixed seed, so that it is the same each time.
 *
 * <p>Source: J. A. Hartigan, P. M. Hartigan, "The Dip Test of Unimodality", Annals of Statistics 13 (1985) 70–84.
 *
 * @param size number of values n
 * @param dip the statistic
 * @param p share of uniform samples of this size with a dip at least as large, between 1/(N + 1) and 1
 */
public record DipTest(int size, double dip, double p) {

    static final int SIMULATIONS = 1999;

    private static final long SEED = 1985;

    /** Room for rounding when two distances are equal in theory. */
    private static final double ROUNDING = 1e-12;

    /** @param sample of any size; fewer than four values never look like two modes */
    public static DipTest of(Sample sample) {
        double dip = dip(sample.values());
        int n = sample.size();
        Random random = new Random(SEED);
        int asLarge = 1;
        double[] uniform = new double[n];
        for (int i = 0; i < SIMULATIONS; i++) {
            for (int j = 0; j < n; j++) {
                uniform[j] = random.nextDouble();
            }
            if (dip(uniform) >= dip - ROUNDING) {
                asLarge++;
            }
        }
        return new DipTest(n, dip, asLarge / (SIMULATIONS + 1.0));
    }

    /** The statistic of values in any order. */
    static double dip(double[] values) {
        Steps steps = Steps.of(values);
        int low = 0;
        int high = steps.size() - 1;
        double twice = 1.0 / values.length;
        while (true) {
            // The modal interval is narrowed to where convex minorant and concave majorant are farthest apart.
            int[] convex = steps.convexMinorant(low, high);
            int[] concave = steps.concaveMajorant(low, high);
            double farthest = -1;
            int from = low;
            int to = high;
            for (int i : convex) {
                double apart = interpolated(steps.x, steps.above, concave, i) - steps.below[i];
                if (apart > farthest) {
                    farthest = apart;
                    from = i;
                    to = nextAtOrAfter(concave, i);
                }
            }
            for (int i : concave) {
                double apart = steps.above[i] - interpolated(steps.x, steps.below, convex, i);
                if (apart > farthest) {
                    farthest = apart;
                    from = lastAtOrBefore(convex, i);
                    to = i;
                }
            }
            if (!(farthest > twice)) {
                return twice / 2;
            }
            // What lies outside must be bridged by the convex and the concave part.
            for (int i = low; i < from; i++) {
                twice = Math.max(twice, steps.above[i] - interpolated(steps.x, steps.below, convex, i));
            }
            for (int i = to + 1; i <= high; i++) {
                twice = Math.max(twice, interpolated(steps.x, steps.above, concave, i) - steps.below[i]);
            }
            if (from == low && to == high) {
                return twice / 2;
            }
            low = from;
            high = to;
        }
    }

    /** A polygon through some of the points, at the place of any point between its ends. */
    private static double interpolated(double[] x, double[] y, int[] vertices, int at) {
        int right = Arrays.binarySearch(vertices, at);
        if (right >= 0) {
            return y[at];
        }
        int b = vertices[-right - 1];
        int a = vertices[-right - 2];
        return y[a] + (y[b] - y[a]) * ((x[at] - x[a]) / (x[b] - x[a]));
    }

    private static int nextAtOrAfter(int[] vertices, int at) {
        int found = Arrays.binarySearch(vertices, at);
        return vertices[found >= 0 ? found : -found - 1];
    }

    private static int lastAtOrBefore(int[] vertices, int at) {
        int found = Arrays.binarySearch(vertices, at);
        return vertices[found >= 0 ? found : -found - 2];
    }

    /**
     * The empirical distribution function.
     *
     * @param x distinct values, rising
     * @param below the share of values smaller than each
     * @param above the share of values not larger
     */
    private record Steps(double[] x, double[] below, double[] above) {

        static Steps of(double[] values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            int n = sorted.length;
            double[] x = new double[n];
            double[] above = new double[n];
            int distinct = 0;
            for (int i = 0; i < n; i++) {
                if (i == 0 || sorted[i] > sorted[i - 1]) {
                    x[distinct++] = sorted[i];
                }
                above[distinct - 1] = (i + 1.0) / n;
            }
            double[] below = new double[distinct];
            System.arraycopy(above, 0, below, 1, distinct - 1);
            return new Steps(Arrays.copyOf(x, distinct), below, Arrays.copyOf(above, distinct));
        }

        int size() {
            return x.length;
        }

        /** Vertices of the greatest convex function below the steps' lower ends. */
        int[] convexMinorant(int low, int high) {
            return hull(below, 1, low, high);
        }

        /** Vertices of the least concave function above the steps' upper ends. */
        int[] concaveMajorant(int low, int high) {
            return hull(above, -1, low, high);
        }

        private int[] hull(double[] y, int sign, int low, int high) {
            int[] hull = new int[high - low + 1];
            int size = 0;
            for (int i = low; i <= high; i++) {
                while (size > 1 && sign * turn(y, hull[size - 2], hull[size - 1], i) <= 0) {
                    size--;
                }
                hull[size++] = i;
            }
            return Arrays.copyOf(hull, size);
        }

        /** Positive if the slope rises at the middle one of three points. */
        private double turn(double[] y, int a, int b, int c) {
            return (y[c] - y[a]) * (x[b] - x[a]) - (y[b] - y[a]) * (x[c] - x[a]);
        }
    }
}
