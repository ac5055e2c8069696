package org.evenhand.statistics;

import java.util.Optional;

/**
 * How far neighbouring values of an evenly sampled series resemble each other, and how many independent values they are worth.
 *
 * <p>r₁ = Σ(yᵢ − m)(yᵢ₊₁ − m)/Σ(yᵢ − m)² with one overall mean; n_eff = n(1 − r₁)/(1 + r₁), for a series whose correlation dies
 * out geometrically. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.12; N. F. Zhang, Metrologia 43 (2006)
 * S276–S281.
 *
 * @param size number of values n, at least 2
 * @param lag1 r₁, between −1 and 1
 */
public record Autocorrelation(int size, double lag1) {

    /**
     * @param values in the order of time, evenly spaced
     * @return empty for fewer than two values or where all are equal
     */
    public static Optional<Autocorrelation> of(Sample values) {
        double[] y = values.values();
        double mean = values.mean();
        double squares = 0;
        double products = 0;
        for (int i = 0; i < y.length; i++) {
            squares += (y[i] - mean) * (y[i] - mean);
            products += i > 0 ? (y[i] - mean) * (y[i - 1] - mean) : 0;
        }
        return y.length >= 2 && squares > 0
                ? Optional.of(new Autocorrelation(y.length, products / squares))
                : Optional.empty();
    }

    /** Number of independent values with the same uncertainty of the mean; never above n, also for a negative r₁. */
    public double effectiveSize() {
        return Math.min(size, uncappedSize());
    }

    double uncappedSize() {
        return size * (1 - lag1) / (1 + lag1);
    }
}
