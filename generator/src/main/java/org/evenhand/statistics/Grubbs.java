package org.evenhand.statistics;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Grubbs' test, two-sided, of the value farthest from the mean. What it flags is to be reported, not removed.
 *
 * <p>Assumes that all other values are normal. Source: F. E. Grubbs, Technometrics 11 (1969) 1–21; NIST/SEMATECH e-Handbook of
 * Statistical Methods, 1.3.5.17.1.
 *
 * @param index place of the suspect in the sample, counted from 0; the first of equals
 * @param value the suspect
 * @param statistic G = |value − mean|/s
 * @param critical value of G at the level asked for
 * @param p Bonferroni bound of the two-sided p value, exact for a large G
 * @param outlier whether G exceeds the critical value
 */
public record Grubbs(int index, double value, double statistic, double critical, double p, boolean outlier) {

    /**
     * @param alpha level of the test
     * @return empty for fewer than three values or where all are equal
     */
    public static Optional<Grubbs> of(Sample sample, double alpha) {
        Arguments.fraction(alpha, "alpha");
        double deviation = sample.standardDeviation().orElse(0);
        int n = sample.size();
        if (n < 3 || !(deviation > 0)) {
            return Optional.empty();
        }
        double[] values = sample.values();
        int suspect = 0;
        for (int i = 1; i < n; i++) {
            if (Math.abs(values[i] - sample.mean()) > Math.abs(values[suspect] - sample.mean())) {
                suspect = i;
            }
        }
        double statistic = Math.abs(values[suspect] - sample.mean()) / deviation;
        double critical = critical(n, alpha / 2);
        double p = Math.min(1, 2 * tail(n, statistic));
        return Optional.of(new Grubbs(suspect, values[suspect], statistic, critical, p, statistic > critical));
    }

    /** Critical value of G where one end has the probability of error {@code alphaOfEnd}. */
    static double critical(int n, double alphaOfEnd) {
        double t = Student.upperQuantile(alphaOfEnd / n, n - 2);
        return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }

    /** Bonferroni bound of P(G as large) at one end. */
    static double tail(int n, double statistic) {
        double g2 = statistic * statistic;
        double rest = (n - 1.0) * (n - 1.0) - n * g2;
        if (!(rest > 0)) {
            return 0;
        }
        double t = Math.sqrt(n * (n - 2.0) * g2 / rest);
        return Math.min(1, n * Student.upperTail(t, OptionalDouble.of(n - 2)));
    }
}
