package org.evenhand.statistics;

import java.util.OptionalInt;
import java.util.function.IntPredicate;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * How many trials, or how much time, it takes to show that failures are rare. Numbers are rounded up.
 *
 * <p>Source: exact bounds of the binomial and the Poisson law, see {@link Proportion} and {@link PoissonRate}; for times also
 * NIST/SEMATECH e-Handbook of Statistical Methods, 8.3.1.4, "Test Length Guide Table".
 */
public final class SuccessSize {

    /** Beyond this no number is given. */
    private static final int MOST = 1_000_000;

    private SuccessSize() {}

    /**
     * Trials needed so that the one-sided lower bound of the share of successes is at least the share asked for.
     *
     * @param share to be shown, strictly between 0 and 1
     * @param failures that happen among them, not negative
     * @return empty beyond a million
     */
    public static OptionalInt forShare(double share, int failures, double confidence) {
        Arguments.fraction(share, "share");
        Arguments.notNegative(failures, "number of failures");
        Arguments.fraction(confidence, "confidence");
        return smallest(failures + 1, n -> new Proportion(n - failures, n).lowerBound(confidence) >= share);
    }

    /** The same for the lower end of the two-sided interval. */
    public static OptionalInt forShareTwoSided(double share, int failures, double confidence) {
        return forShare(share, failures, 1 - (1 - Arguments.fraction(confidence, "confidence")) / 2);
    }

    /**
     * Trials needed so that the two-sided interval is no wider than ± the half-width, whatever the share turns out to be: it is
     * widest where half of the trials succeed.
     *
     * @param halfWidth strictly between 0 and 0.5
     * @return empty beyond a million
     */
    public static OptionalInt forHalfWidth(double halfWidth, double confidence) {
        if (!(halfWidth > 0 && halfWidth < 0.5)) {
            throw new IllegalArgumentException("half-width must lie strictly between 0 and 0.5, not " + halfWidth);
        }
        return smallest(1, n -> {
            Interval interval = new Proportion(n / 2, n).interval(confidence);
            return (interval.high() - interval.low()) / 2 <= halfWidth;
        });
    }

    /**
     * The time needed so that the one-sided upper bound of the rate of failures is at most the rate asked for.
     *
     * @param rate positive, per unit of the time that is returned
     * @param failures that happen in it, not negative; with none it is −ln(1 − confidence)/rate
     */
    public static double timeForRate(double rate, int failures, double confidence) {
        Arguments.positive(rate, "rate");
        Arguments.notNegative(failures, "number of failures");
        double tail = 1 - Arguments.fraction(confidence, "confidence");
        return failures == 0
                ? -StrictMath.log(tail) / rate
                : Student.upperQuantile(ChiSquaredDistribution.of(2.0 * failures + 2), tail) / (2 * rate);
    }

    private static OptionalInt smallest(int first, IntPredicate enough) {
        int tooFew = first - 1;
        int n = first;
        while (!enough.test(n)) {
            tooFew = n;
            n *= 2;
            if (tooFew > MOST) {
                return OptionalInt.empty();
            }
        }
        while (n - tooFew > 1) {
            int middle = (tooFew + n) / 2;
            if (enough.test(middle)) {
                n = middle;
            } else {
                tooFew = middle;
            }
        }
        return OptionalInt.of(n);
    }
}
