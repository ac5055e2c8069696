package org.evenhand.statistics;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * A number of successes among independent trials, with the exact interval of Clopper and Pearson.
 *
 * <p>Source: C. J. Clopper, E. S. Pearson, Biometrika 26 (1934) 404–413; beta form: N. L. Johnson, A. W. Kemp, S. Kotz, Univariate
 * Discrete Distributions, 3rd edition (2005), 3.8.3.
 *
 * @param successes 0 to {@code trials}
 * @param trials at least 1
 */
public record Proportion(int successes, int trials) {

    /**
     * @throws IllegalArgumentException if there is no trial, or the successes do not lie among them
     */
    public Proportion {
        if (!(trials >= 1 && successes >= 0 && successes <= trials)) {
            throw new IllegalArgumentException(
                    successes + " of " + trials + ": trials must be at least 1 and hold the successes");
        }
    }

    /** The share of successes, 0 to 1. */
    public double share() {
        return (double) successes / trials;
    }

    /** Two-sided interval with half of the error in each tail, also at none and at all. */
    public Interval interval(double confidence) {
        Arguments.fraction(confidence, "confidence");
        double tail = (1 - confidence) / 2;
        return new Interval(low(tail), high(tail));
    }

    /** One-sided lower bound, the whole error in one tail. */
    public double lowerBound(double confidence) {
        return low(1 - Arguments.fraction(confidence, "confidence"));
    }

    /** One-sided upper bound, the whole error in one tail. */
    public double upperBound(double confidence) {
        return high(1 - Arguments.fraction(confidence, "confidence"));
    }

    private double low(double tail) {
        if (successes == 0) {
            return 0;
        }
        return 1 - Student.upperQuantile(BetaDistribution.of(trials - successes + 1.0, successes), tail);
    }

    private double high(double tail) {
        if (successes == trials) {
            return 1;
        }
        return Student.upperQuantile(BetaDistribution.of(successes + 1.0, trials - successes), tail);
    }
}
