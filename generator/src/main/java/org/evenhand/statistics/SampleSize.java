package org.evenhand.statistics;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.numbers.rootfinder.BrentSolver;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * How many repeats a study needs, for a two-sided t test of means or for an interval of a given width. Numbers are rounded up.
 *
 * <p>Assumes independent normal values of a known standard deviation. Source: J. Cohen, Statistical Power Analysis for the
 * Behavioral Sciences, 2nd edition (1988), 2.3; power from the noncentral t law, counting rejections on the right side only.
 */
public final class SampleSize {

    /** Beyond this no number is given. */
    private static final int MOST = 1_000_000;

    private enum Design {
        TWO_MEANS(2, 2),
        PAIRS(1, 1);

        private final double variances;
        private final int samples;

        Design(double variances, int samples) {
            this.variances = variances;
            this.samples = samples;
        }

        double power(double n, double delta, double deviation, double alpha) {
            double freedom = samples * (n - 1);
            double critical = Student.upperQuantile(alpha / 2, freedom);
            double noncentrality = delta / deviation * Math.sqrt(n / variances);
            return 1 - NoncentralT.cumulative(critical, freedom, noncentrality);
        }
    }

    private SampleSize() {}

    /**
     * Values needed at each of two levels so that the test of their difference has the power asked for.
     *
     * @param difference to be found, not zero; only its size counts
     * @param deviation standard deviation of single values at a level, positive, in the unit of the difference
     * @param alpha two-sided level of the test
     * @param power chance of finding the difference
     * @return at least 2; empty beyond a million
     */
    public static OptionalInt forTwoMeans(double difference, double deviation, double alpha, double power) {
        return roundedUp(exact(Design.TWO_MEANS, difference, deviation, alpha, power));
    }

    /**
     * Pairs needed.
     *
     * @param difference to be found, not zero; only its size counts
     * @param deviationOfDifferences standard deviation of the differences within the pairs, positive
     * @param alpha two-sided level of the test
     * @param power chance of finding the difference
     * @return at least 2; empty beyond a million
     */
    public static OptionalInt forPairs(double difference, double deviationOfDifferences, double alpha, double power) {
        return roundedUp(exact(Design.PAIRS, difference, deviationOfDifferences, alpha, power));
    }

    /**
     * Values needed so that the interval of their mean is no wider than ± the half-width.
     *
     * @param deviation standard deviation of single values, positive
     * @param halfWidth positive, in the same unit
     * @return at least 2; empty beyond a million
     */
    public static OptionalInt forHalfWidth(double deviation, double halfWidth, double confidence) {
        Arguments.positive(deviation, "standard deviation");
        Arguments.positive(halfWidth, "half-width");
        int tooFew = 1;
        int enough = 2;
        while (halfWidth(deviation, enough, confidence) > halfWidth) {
            tooFew = enough;
            enough *= 2;
            if (tooFew > MOST) {
                return OptionalInt.empty();
            }
        }
        while (enough - tooFew > 1) {
            int middle = (tooFew + enough) / 2;
            if (halfWidth(deviation, middle, confidence) > halfWidth) {
                tooFew = middle;
            } else {
                enough = middle;
            }
        }
        return OptionalInt.of(enough);
    }

    /** The half-width of the interval of the mean of n values, n at least 2. */
    public static double halfWidth(double deviation, int n, double confidence) {
        return Student.factor(confidence, OptionalDouble.of(n - 1)) * deviation / Math.sqrt(n);
    }

    /** Power of the test of two means with n values at each level, n at least 2. */
    public static double powerForTwoMeans(int n, double difference, double deviation, double alpha) {
        return power(Design.TWO_MEANS, n, difference, deviation, alpha);
    }

    /** Power of the test of n pairs, n at least 2. */
    public static double powerForPairs(int n, double difference, double deviationOfDifferences, double alpha) {
        return power(Design.PAIRS, n, difference, deviationOfDifferences, alpha);
    }

    /**
     * The difference that n values at each of two levels find with the power asked for.
     *
     * @param deviation standard deviation of single values, positive; the result is in its unit
     */
    public static double differenceForTwoMeans(int n, double deviation, double alpha, double power) {
        return difference(Design.TWO_MEANS, n, deviation, alpha, power);
    }

    /** The difference that n pairs find with the power asked for. */
    public static double differenceForPairs(int n, double deviationOfDifferences, double alpha, double power) {
        return difference(Design.PAIRS, n, deviationOfDifferences, alpha, power);
    }

    private static double difference(Design design, int n, double deviation, double alpha, double power) {
        Arguments.fraction(power, "power");
        if (!(power > alpha)) {
            throw new IllegalArgumentException("a power of " + power + " is reached without any difference");
        }
        // In standard deviations, so that the accuracy does not depend on the unit.
        double high = 1;
        while (power(design, n, high, 1, alpha) < power) {
            high *= 2;
        }
        double low = high / 2;
        while (power(design, n, low, 1, alpha) >= power) {
            low /= 2;
        }
        BrentSolver solver = new BrentSolver(1e-12, 1e-12, 1e-16);
        double ratio = solver.findRoot(d -> power(design, n, d, 1, alpha) - power, low, high);
        return ratio * Arguments.positive(deviation, "standard deviation");
    }

    /**
     * The one-sided upper confidence limit of a standard deviation: s·√(ν/χ²), where χ² is exceeded with the confidence. A plan
     * that rests on it holds although the spread was itself only estimated.
     *
     * <p>Source: M. Kieser, G. Wassmer, Biometrical Journal 38 (1996) 941–949.
     */
    public static double upperDeviation(double deviation, double degreesOfFreedom, double confidence) {
        Arguments.positive(deviation, "standard deviation");
        Arguments.positive(degreesOfFreedom, "degrees of freedom");
        double quantile = Student.upperQuantile(
                ChiSquaredDistribution.of(degreesOfFreedom), Arguments.fraction(confidence, "confidence"));
        return deviation * Math.sqrt(degreesOfFreedom / quantile);
    }

    /** The fractional number at which the power is reached exactly, not below 2. */
    static OptionalDouble exactForTwoMeans(double difference, double deviation, double alpha, double power) {
        return exact(Design.TWO_MEANS, difference, deviation, alpha, power);
    }

    static OptionalDouble exactForPairs(double difference, double deviation, double alpha, double power) {
        return exact(Design.PAIRS, difference, deviation, alpha, power);
    }

    private static double power(Design design, double n, double difference, double deviation, double alpha) {
        if (!(n >= 2)) {
            throw new IllegalArgumentException("a test needs at least 2 values a level, not " + n);
        }
        double delta = Arguments.positive(Math.abs(difference), "size of the difference");
        Arguments.positive(deviation, "standard deviation");
        return design.power(n, delta, deviation, Arguments.fraction(alpha, "alpha"));
    }

    private static OptionalDouble exact(
            Design design, double difference, double deviation, double alpha, double power) {
        Arguments.fraction(power, "power");
        double tooFew = 2;
        if (power(design, tooFew, difference, deviation, alpha) >= power) {
            return OptionalDouble.of(2);
        }
        double enough = 4;
        while (power(design, enough, difference, deviation, alpha) < power) {
            tooFew = enough;
            enough *= 2;
            if (tooFew > MOST) {
                return OptionalDouble.empty();
            }
        }
        BrentSolver solver = new BrentSolver(1e-13, 1e-12, 1e-16);
        return OptionalDouble.of(
                solver.findRoot(n -> power(design, n, difference, deviation, alpha) - power, tooFew, enough));
    }

    private static OptionalInt roundedUp(OptionalDouble exact) {
        // The root is known to about 1e-9: what exceeds a whole number by less is that number.
        return exact.isPresent() ? OptionalInt.of((int) Math.ceil(exact.getAsDouble() - 1e-9)) : OptionalInt.empty();
    }
}
