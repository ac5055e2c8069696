package org.evenhand.statistics;

import java.util.OptionalInt;
import java.util.function.IntPredicate;
import org.apache.commons.numbers.rootfinder.BrentSolver;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How many repeats it takes to show that two levels are the same within a margin, by two one-sided t tests of one standard
 * deviation. Numbers are rounded up.
 *
 * <p>The chance of success is the integral, over the law of the observed standard deviation s, of the normal probability that the
 * observed difference lies within margin − t·s·√(v/n) of zero. Source: K. F. Phillips, Journal of Pharmacokinetics and
 * Biopharmaceutics 18 (1990) 137–144; D. J. Schuirmann, the same 15 (1987) 657–680.
 */
public final class EquivalenceSize {

    /** Beyond this no number is given. */
    private static final int MOST = 100_000;

    /** Panels of Simpson's rule: with 2000 the sixth digit stands still when their number is doubled. */
    private static final int PANELS = 2000;

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private EquivalenceSize() {}

    /**
     * The chance of showing equivalence with n values at each of two levels.
     *
     * @param n at least 2
     * @param margin positive, in the unit of the values
     * @param difference the true one, smaller than the margin
     * @param deviation standard deviation of single values at a level, positive
     * @param alpha probability of error of each one-sided test, below one half
     */
    public static double powerForTwoMeans(int n, double margin, double difference, double deviation, double alpha) {
        return power(2.0 / atLeastTwo(n), 2.0 * (n - 1), margin, difference, deviation, alpha);
    }

    /**
     * The same with n pairs.
     *
     * @param deviationOfDifferences standard deviation of the differences within the pairs, positive
     */
    public static double powerForPairs(
            int n, double margin, double difference, double deviationOfDifferences, double alpha) {
        return power(1.0 / atLeastTwo(n), n - 1.0, margin, difference, deviationOfDifferences, alpha);
    }

    /** Values needed at each of two levels; empty beyond a hundred thousand. Arguments as for the power. */
    public static OptionalInt forTwoMeans(
            double margin, double difference, double deviation, double alpha, double power) {
        Arguments.fraction(power, "power");
        return smallest(n -> powerForTwoMeans(n, margin, difference, deviation, alpha) >= power);
    }

    /** Pairs needed; empty beyond a hundred thousand. */
    public static OptionalInt forPairs(
            double margin, double difference, double deviationOfDifferences, double alpha, double power) {
        Arguments.fraction(power, "power");
        return smallest(n -> powerForPairs(n, margin, difference, deviationOfDifferences, alpha) >= power);
    }

    /**
     * The smallest margin within which n values at each level can show that there is no difference, with the power asked for.
     *
     * @param pairs whether the n are pairs, and the deviation that of their differences
     */
    public static double marginFor(int n, boolean pairs, double deviation, double alpha, double power) {
        Arguments.fraction(power, "power");
        BrentSolver solver = new BrentSolver(1e-10, 1e-10, 1e-12);
        double high = deviation;
        while (powerAt(n, pairs, high, deviation, alpha) < power) {
            high *= 2;
        }
        double low = high;
        while (powerAt(n, pairs, low, deviation, alpha) >= power) {
            low /= 2;
        }
        return solver.findRoot(m -> powerAt(n, pairs, m, deviation, alpha) - power, low, high);
    }

    private static double powerAt(int n, boolean pairs, double margin, double deviation, double alpha) {
        return pairs ? powerForPairs(n, margin, 0, deviation, alpha) : powerForTwoMeans(n, margin, 0, deviation, alpha);
    }

    private static double power(
            double perVariance, double freedom, double margin, double difference, double deviation, double alpha) {
        Arguments.positive(margin, "margin");
        Arguments.finite(difference, "difference");
        Arguments.positive(deviation, "standard deviation");
        if (!(alpha > 0 && alpha < 0.5)) {
            throw new IllegalArgumentException("alpha must lie strictly between 0 and 0.5, not " + alpha);
        }
        double error = deviation * Math.sqrt(perVariance);
        double t = Student.upperQuantile(alpha, freedom);
        // In units of the true standard error; u = s/σ, at most where the interval is as wide as the margins.
        double most = margin / error / t;
        ChiSquaredDistribution law = ChiSquaredDistribution.of(freedom);
        double upper = Math.min(most, Math.sqrt(law.inverseSurvivalProbability(1e-14) / freedom));
        double step = upper / PANELS;
        double sum = 0;
        for (int i = 0; i <= PANELS; i++) {
            double u = i * step;
            double density = u == 0 ? 0 : 2 * freedom * u * law.density(freedom * u * u);
            double reach = t * u;
            double inside = NORMAL.cumulativeProbability((margin - difference) / error - reach)
                    - NORMAL.cumulativeProbability((-margin - difference) / error + reach);
            double weight = i == 0 || i == PANELS ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * density * Math.max(0, inside);
        }
        return Math.min(1, sum * step / 3);
    }

    private static int atLeastTwo(int n) {
        if (n >= 2) {
            return n;
        }
        throw new IllegalArgumentException("a test needs at least 2 values a level, not " + n);
    }

    /** The chance grows with n from where it is more than little, so that halving finds the smallest. */
    private static OptionalInt smallest(IntPredicate enough) {
        int tooFew = 1;
        int n = 2;
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
