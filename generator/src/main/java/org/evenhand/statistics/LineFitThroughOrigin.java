package org.evenhand.statistics;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Least squares line y = slope·x, for what must vanish together.
 *
 * <p>Source: N. R. Draper, H. Smith, Applied Regression Analysis, 3rd edition (1998), 9.1 for the missing intercept; the
 * uncentred R² as certified in the NIST Statistical Reference Datasets, NoInt1.
 *
 * @param size number of points, at least 2
 * @param slope in units of y per unit of x, with n − 1 degrees of freedom
 * @param residualDeviation residual standard deviation, divisor n − 1, in the unit of y
 * @param rSquaredUncentred 1 − RSS/Σy²; not comparable with R² of a line with intercept; empty where all y are zero
 */
public record LineFitThroughOrigin(
        int size, Estimate slope, double residualDeviation, OptionalDouble rSquaredUncentred) {

    /**
     * @return empty for fewer than two points or where all x are zero
     * @throws IllegalArgumentException if the lengths differ, or a value is NaN, infinite or too large
     */
    public static Optional<LineFitThroughOrigin> of(double[] x, double[] y) {
        Arguments.sameLength(x, y);
        int n = x.length;
        if (n < 2) {
            return Optional.empty();
        }
        // Building the samples checks the values.
        Sample.of(x);
        Sample.of(y);
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int i = 0; i < n; i++) {
            xx += x[i] * x[i];
            xy += x[i] * y[i];
            yy += y[i] * y[i];
        }
        if (!(xx > 0)) {
            return Optional.empty();
        }
        double slope = xy / xx;
        double rss = 0;
        for (int i = 0; i < n; i++) {
            double residual = y[i] - slope * x[i];
            rss += residual * residual;
        }
        double deviation = Math.sqrt(rss / (n - 1));
        return Optional.of(new LineFitThroughOrigin(
                n,
                new Estimate(slope, deviation / Math.sqrt(xx), n - 1, 0),
                deviation,
                yy > 0 ? OptionalDouble.of(1 - rss / yy) : OptionalDouble.empty()));
    }
}
