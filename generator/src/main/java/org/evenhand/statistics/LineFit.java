package org.evenhand.statistics;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Least squares line y = intercept + slope·x. Both columns are centred first, so that a large offset, such as of times since
 * 1970, costs no digits.
 *
 * <p>Assumes x without error and residuals that are independent and of one variance. Source: N. R. Draper, H. Smith, Applied
 * Regression Analysis, 3rd edition (1998), chapter 1.
 *
 * @param size number of points, at least 3
 * @param slope in units of y per unit of x, with n − 2 degrees of freedom
 * @param centre mean of x
 * @param atCentre estimate of y at the centre, independent of the slope
 * @param residualDeviation residual standard deviation, divisor n − 2, in the unit of y
 * @param rSquared 1 − RSS/TSS about the mean of y; empty where all y are equal
 */
public record LineFit(
        int size, Estimate slope, double centre, Estimate atCentre, double residualDeviation, OptionalDouble rSquared) {

    /**
     * @param x values without error, finite
     * @param y one value for each x, finite
     * @return empty for fewer than three points or where all x are equal
     * @throws IllegalArgumentException if the lengths differ, or a value is NaN, infinite or too large
     */
    public static Optional<LineFit> of(double[] x, double[] y) {
        Arguments.sameLength(x, y);
        int n = x.length;
        if (n < 3) {
            return Optional.empty();
        }
        double meanX = Sample.of(x).mean();
        double meanY = Sample.of(y).mean();
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        for (int i = 0; i < n; i++) {
            double dx = x[i] - meanX;
            double dy = y[i] - meanY;
            sxx += dx * dx;
            sxy += dx * dy;
            syy += dy * dy;
        }
        if (!(sxx > 0)) {
            return Optional.empty();
        }
        double slope = sxy / sxx;
        double rss = 0;
        for (int i = 0; i < n; i++) {
            double residual = (y[i] - meanY) - slope * (x[i] - meanX);
            rss += residual * residual;
        }
        double deviation = Math.sqrt(rss / (n - 2));
        return Optional.of(new LineFit(
                n,
                new Estimate(slope, deviation / Math.sqrt(sxx), n - 2, 0),
                meanX,
                new Estimate(meanY, deviation / Math.sqrt(n), n - 2, 0),
                deviation,
                syy > 0 ? OptionalDouble.of(1 - rss / syy) : OptionalDouble.empty()));
    }

    /**
     * The line of ln y against ln x. Its slope is the exponent b of y = a·x^b; 1 is proportionality.
     *
     * @return empty where {@link #of} is, or where a value is not positive
     */
    public static Optional<LineFit> ofLogarithms(double[] x, double[] y) {
        Arguments.sameLength(x, y);
        double[] logX = new double[x.length];
        double[] logY = new double[y.length];
        for (int i = 0; i < x.length; i++) {
            Arguments.finite(x[i], "x");
            Arguments.finite(y[i], "y");
            if (!(x[i] > 0 && y[i] > 0)) {
                return Optional.empty();
            }
            logX[i] = StrictMath.log(x[i]);
            logY[i] = StrictMath.log(y[i]);
        }
        return of(logX, logY);
    }

    /**
     * The height of the line at x, with the uncertainty of the line (not of a further value).
     *
     * @param x in the unit of the fitted x; far from the centre the uncertainty grows
     */
    public Estimate at(double x) {
        double distance = Arguments.finite(x, "x") - centre;
        double uncertainty = Estimate.rootSumOfSquares(atCentre.typeA(), Math.abs(distance) * slope.typeA());
        return new Estimate(atCentre.value() + slope.value() * distance, uncertainty, size - 2, 0);
    }

    /** The height of the line at x = 0. */
    public Estimate intercept() {
        return at(0);
    }
}
