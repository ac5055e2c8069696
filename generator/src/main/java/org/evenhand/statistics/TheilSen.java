package org.evenhand.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The median of the slopes of all pairs of points: a trend that one wild value cannot turn.
 *
 * <p>Source: P. K. Sen, "Estimates of the regression coefficient based on Kendall's tau", Journal of the American Statistical
 * Association 63 (1968) 1379–1389; the interval by the ranks (N − C)/2 and (N + C)/2 + 1 with C = z·√var(S), rounded to the
 * nearest whole number.
 */
public final class TheilSen {

    /** More points are refused, because the slopes of all pairs are kept: about two million of them. */
    public static final int MOST_POINTS = 2000;

    private final double[] slopes;
    private final double slope;
    private final double medianX;
    private final double medianY;
    private final double varianceOfS;

    private TheilSen(double[] slopes, double[] x, double[] y) {
        this.slopes = slopes;
        this.slope = Selection.median(slopes);
        this.medianX = Sample.median(x);
        this.medianY = Sample.median(y);
        this.varianceOfS = MannKendall.variance(y);
    }

    /**
     * @param x finite; pairs of equal x have no slope and are left out
     * @param y one finite value for each x
     * @return empty where no two x differ
     * @throws IllegalArgumentException if the lengths differ, a value is not finite, or there are more than {@link #MOST_POINTS}
     */
    public static Optional<TheilSen> of(double[] x, double[] y) {
        Arguments.sameLength(x, y);
        Arguments.allFinite(x, "x");
        Arguments.allFinite(y, "y");
        if (!(x.length <= MOST_POINTS)) {
            throw new IllegalArgumentException("at most " + MOST_POINTS + " points, not " + x.length);
        }
        double[] slopes = new double[x.length * Math.max(0, x.length - 1) / 2];
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                if (x[j] != x[i]) {
                    slopes[count++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        if (count == 0) {
            return Optional.empty();
        }
        return Optional.of(new TheilSen(Arrays.copyOf(slopes, count), x, y));
    }

    /** In units of y per unit of x. */
    public double slope() {
        return slope;
    }

    /** Median of y less slope × median of x, in the unit of y. */
    public double intercept() {
        return medianY - slope * medianX;
    }

    /** Interval of the slope; empty where there are too few points for the confidence. */
    public Optional<Interval> interval(double confidence) {
        double c = Student.factor(confidence, OptionalDouble.empty()) * Math.sqrt(varianceOfS);
        int low = (int) Math.rint((slopes.length - c) / 2);
        int high = (int) Math.rint((slopes.length + c) / 2 + 1);
        if (!(low >= 1 && high <= slopes.length)) {
            return Optional.empty();
        }
        double[] sorted = slopes.clone();
        Arrays.sort(sorted);
        return Optional.of(new Interval(sorted[low - 1], sorted[high - 1]));
    }
}
