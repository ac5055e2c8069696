package org.evenhand.statistics;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * The Mann–Kendall test for a monotone trend in a series, with the variance corrected for ties and z for continuity.
 *
 * <p>Assumes values that are independent but for the trend; not valid for autocorrelated samples. Source: H. B. Mann,
 * Econometrica 13 (1945) 245–259; M. G. Kendall, Rank Correlation Methods, 4th edition (1970).
 *
 * @param size number of values, at least 2
 * @param s number of rising pairs less number of falling pairs
 * @param variance of {@code s} without trend; 0 where all values are equal
 * @param tauB Kendall's τ_b of the values against their order; empty where all are equal
 */
public record MannKendall(int size, long s, double variance, OptionalDouble tauB) {

    /**
     * @param values in the order of time; the work grows with the square of their number
     * @throws IllegalArgumentException for fewer than two values
     */
    public static MannKendall of(Sample values) {
        double[] y = values.values();
        int n = y.length;
        if (n < 2) {
            throw new IllegalArgumentException("a trend needs at least two values");
        }
        long s = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                s += (y[j] > y[i] ? 1 : 0) - (y[j] < y[i] ? 1 : 0);
            }
        }
        double pairs = n * (n - 1.0) / 2;
        double untied = pairs - tiedPairs(y);
        OptionalDouble tau =
                untied > 0 ? OptionalDouble.of(s / (Math.sqrt(pairs) * Math.sqrt(untied))) : OptionalDouble.empty();
        return new MannKendall(n, s, variance(y), tau);
    }

    /** z = (S ∓ 1)/√var; 0 where S is 0; empty where all values are equal. */
    public OptionalDouble z() {
        if (!(variance > 0)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of((s - Long.signum(s)) / Math.sqrt(variance));
    }

    /** Two-sided p value of no trend, from the normal law; empty where all values are equal. */
    public OptionalDouble pTwoSided() {
        OptionalDouble z = z();
        return z.isPresent()
                ? OptionalDouble.of(
                        Math.min(1, 2 * Student.upperTail(Math.abs(z.getAsDouble()), OptionalDouble.empty())))
                : OptionalDouble.empty();
    }

    /** [n(n−1)(2n+5) − Σ t(t−1)(2t+5)]/18 over the groups of t equal values. */
    static double variance(double[] y) {
        double n = y.length;
        double sum = n * (n - 1) * (2 * n + 5);
        for (int tied : tieSizes(y)) {
            double t = tied;
            sum -= t * (t - 1) * (2 * t + 5);
        }
        return sum / 18;
    }

    private static double tiedPairs(double[] y) {
        double pairs = 0;
        for (int tied : tieSizes(y)) {
            pairs += tied * (tied - 1.0) / 2;
        }
        return pairs;
    }

    private static int[] tieSizes(double[] y) {
        double[] sorted = y.clone();
        Arrays.sort(sorted);
        int[] sizes = new int[sorted.length];
        int group = 0;
        for (int i = 0; i < sorted.length; i++) {
            group += i > 0 && sorted[i] != sorted[i - 1] ? 1 : 0;
            sizes[group]++;
        }
        return Arrays.copyOf(sizes, group + 1);
    }
}
