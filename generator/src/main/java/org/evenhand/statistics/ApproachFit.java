package org.evenhand.statistics;

import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;

/**
 * Least squares fit of an exponential approach, y = a + b(1 − e^(−t/τ)), with a free or fixed at zero.
 *
 * <p>The uncertainties come from s²(JᵀJ)⁻¹ and hold for independent residuals of one variance. Residuals of a time series are
 * correlated, so that they are lower bounds. Source: D. M. Bates, D. G. Watts, Nonlinear Regression Analysis and Its
 * Applications (1988), 2.2 and A1.3; G. H. Golub, V. Pereyra, SIAM Journal on Numerical Analysis 10 (1973) 413–432 (projection
 * of the linear parameters).
 *
 * @param size number of points
 * @param start a, the height at t = 0; its uncertainty is zero where it is fixed
 * @param rise b, the whole change
 * @param timeConstant τ, positive, in the unit of t
 * @param finalValue a + b, with the covariance of both
 * @param residualSquares sum of squared residuals
 * @param residualDeviation residual standard deviation, divisor n less the number of parameters
 * @param recordLength the largest t
 */
public record ApproachFit(
        int size,
        Estimate start,
        Estimate rise,
        Estimate timeConstant,
        Estimate finalValue,
        double residualSquares,
        double residualDeviation,
        double recordLength) {

    /**
     * Fits a, b and τ.
     *
     * @param t times since the start of the approach, not negative
     * @param y one value for each time
     * @return empty for fewer than four points, where y does not change, or where the record shows no bend, so that no time
     *     constant fits better than a straight line or a step
     * @throws IllegalArgumentException if the lengths differ, or a value is NaN, infinite or out of range
     */
    public static Optional<ApproachFit> of(double[] t, double[] y) {
        return fit(t, y, true);
    }

    /** Fits b and τ of y = b(1 − e^(−t/τ)); empty for fewer than three points, otherwise as {@link #of}. */
    public static Optional<ApproachFit> throughZero(double[] t, double[] y) {
        return fit(t, y, false);
    }

    /** How many time constants the record is long; below one the final value should not be trusted. */
    public double timeConstantsSeen() {
        return recordLength / timeConstant.value();
    }

    /** What was still to come at the end of the record, b·e^(−T/τ), in the unit of y. */
    public double remaining() {
        return rise.value() * StrictMath.exp(-timeConstantsSeen());
    }

    private static Optional<ApproachFit> fit(double[] t, double[] y, boolean offset) {
        Arguments.sameLength(t, y);
        int parameters = offset ? 3 : 2;
        if (t.length <= parameters) {
            return Optional.empty();
        }
        double length = 0;
        for (double time : t) {
            length = Math.max(length, Arguments.notNegative(time, "time"));
        }
        if (!(length > 0) || !(Sample.of(y).standardDeviation().orElseThrow() > 0)) {
            return Optional.empty();
        }
        double[] scaled = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            scaled[i] = t[i] / length;
        }
        double recordLength = length;
        return new ApproachSolver(scaled, y, offset).solve().map(solution -> result(solution, recordLength, offset));
    }

    private static ApproachFit result(ApproachSolver.Solution solution, double length, boolean offset) {
        RealMatrix covariance = new Array2DRowRealMatrix(solution.covariance(), false);
        double freedom = solution.size() - (offset ? 3 : 2);
        double rate = solution.rate();
        // dτ/dk = −1/k², in the scaled time.
        double ofTau = Math.sqrt(covariance.getEntry(2, 2)) / (rate * rate) * length;
        double ofFinal = Math.sqrt(
                Math.max(0, covariance.getEntry(0, 0) + 2 * covariance.getEntry(0, 1) + covariance.getEntry(1, 1)));
        return new ApproachFit(
                solution.size(),
                new Estimate(solution.start(), Math.sqrt(covariance.getEntry(0, 0)), freedom, 0),
                new Estimate(solution.rise(), Math.sqrt(covariance.getEntry(1, 1)), freedom, 0),
                new Estimate(length / rate, ofTau, freedom, 0),
                new Estimate(solution.start() + solution.rise(), ofFinal, freedom, 0),
                solution.residualSquares(),
                Math.sqrt(solution.residualSquares() / freedom),
                length);
    }
}
