package org.evenhand.statistics;

import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Solves the approach fit in time scaled to a record of length 1: for each rate the best a and b are linear least squares, so
 * that the rate alone is searched, on a grid and then by golden section; Gauss–Newton steps polish all three.
 */
final class ApproachSolver {

    /** Per record length: a slower approach is straight to all that can be seen. */
    private static final double SMALLEST_RATE = 1e-3;

    /** Per smallest positive time: a faster approach is over at the first point, a step. */
    private static final double LARGEST_RATE = 5;

    private static final int GRID = 121;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final double[] t;
    private final double[] y;
    private final boolean offset;

    /** The parameters, their covariance in the order a, b, rate, and the residual sum of squares. */
    record Solution(int size, double start, double rise, double rate, double[][] covariance, double residualSquares) {}

    private record Line(double start, double rise, double residualSquares) {}

    ApproachSolver(double[] t, double[] y, boolean offset) {
        this.t = t;
        this.y = y;
        this.offset = offset;
    }

    /** Empty where the best rate lies at an end of the range searched. */
    Optional<Solution> solve() {
        double step = StrictMath.log(largestRate() / SMALLEST_RATE) / (GRID - 1);
        double origin = StrictMath.log(SMALLEST_RATE);
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < GRID; i++) {
            double squares = line(StrictMath.exp(origin + i * step)).residualSquares();
            if (squares < least) {
                least = squares;
                best = i;
            }
        }
        if (best == 0 || best == GRID - 1) {
            return Optional.empty();
        }
        double rate = goldenSection(origin + (best - 1) * step, origin + (best + 1) * step);
        try {
            return Optional.of(polish(rate));
        } catch (MathRuntimeException singular) {
            // The three columns cannot be told apart: no bend in the record.
            return Optional.empty();
        }
    }

    private double largestRate() {
        double first = 1;
        for (double time : t) {
            first = time > 0 ? Math.min(first, time) : first;
        }
        return LARGEST_RATE / first;
    }

    private double goldenSection(double logFrom, double logTo) {
        double from = logFrom;
        double to = logTo;
        while (to - from > 1e-7) {
            double left = to - GOLDEN * (to - from);
            double right = from + GOLDEN * (to - from);
            if (line(StrictMath.exp(left)).residualSquares()
                    <= line(StrictMath.exp(right)).residualSquares()) {
                to = right;
            } else {
                from = left;
            }
        }
        return StrictMath.exp((from + to) / 2);
    }

    /** The best a and b for a rate. */
    private Line line(double rate) {
        double[] growth = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            growth[i] = -StrictMath.expm1(-rate * t[i]);
        }
        double meanGrowth = offset ? Sample.mean(growth) : 0;
        double meanY = offset ? Sample.mean(y) : 0;
        double gg = 0;
        double gy = 0;
        for (int i = 0; i < t.length; i++) {
            gg += (growth[i] - meanGrowth) * (growth[i] - meanGrowth);
            gy += (growth[i] - meanGrowth) * (y[i] - meanY);
        }
        double rise = gg > 0 ? gy / gg : 0;
        double squares = 0;
        for (int i = 0; i < t.length; i++) {
            double residual = (y[i] - meanY) - rise * (growth[i] - meanGrowth);
            squares += residual * residual;
        }
        return new Line(meanY - rise * meanGrowth, rise, squares);
    }

    private Solution polish(double firstRate) {
        double rate = firstRate;
        Line line = line(rate);
        double lastStep = Double.POSITIVE_INFINITY;
        for (int iteration = 0; iteration < 100; iteration++) {
            double step = gaussNewton(line, rate).getEntry(offset ? 2 : 1);
            // Once the steps no longer shrink, only rounding is left of them.
            if (!(Math.abs(step) < lastStep) || !(rate + step > 0)) {
                break;
            }
            lastStep = Math.abs(step);
            rate += step;
            line = line(rate);
        }
        int parameters = offset ? 3 : 2;
        double variance = line.residualSquares() / (t.length - parameters);
        RealMatrix jacobian = jacobian(line, rate);
        RealMatrix inverseR = new QRDecomposition(
                        new QRDecomposition(jacobian).getR().getSubMatrix(0, parameters - 1, 0, parameters - 1))
                .getSolver()
                .getInverse();
        RealMatrix covariance = inverseR.multiplyTransposed(inverseR).scalarMultiply(variance);
        return new Solution(t.length, line.start(), line.rise(), rate, withStart(covariance), line.residualSquares());
    }

    private RealVector gaussNewton(Line line, double rate) {
        double[] residuals = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            residuals[i] = y[i] - line.start() + line.rise() * StrictMath.expm1(-rate * t[i]);
        }
        return new QRDecomposition(jacobian(line, rate)).getSolver().solve(new ArrayRealVector(residuals, false));
    }

    private RealMatrix jacobian(Line line, double rate) {
        double[][] rows = new double[t.length][];
        for (int i = 0; i < t.length; i++) {
            double growth = -StrictMath.expm1(-rate * t[i]);
            double byRate = line.rise() * t[i] * StrictMath.exp(-rate * t[i]);
            rows[i] = offset ? new double[] {1, growth, byRate} : new double[] {growth, byRate};
        }
        return new Array2DRowRealMatrix(rows, false);
    }

    /** A fixed start has neither variance nor covariance. */
    private double[][] withStart(RealMatrix covariance) {
        if (offset) {
            return covariance.getData();
        }
        double[][] full = new double[3][3];
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                full[i + 1][j + 1] = covariance.getEntry(i, j);
            }
        }
        return full;
    }
}
