package org.evenhand.statistics;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Holm's adjustment for several tests of one study: keeps the chance of any false alarm among them at the level of one test,
 * whatever their dependence.
 *
 * <p>Source: S. Holm, "A simple sequentially rejective multiple test procedure", Scandinavian Journal of Statistics 6 (1979)
 * 65–70.
 */
public final class Holm {

    private Holm() {}

    /**
     * The smallest level at which each test is still rejected.
     *
     * @param p values, each from 0 to 1; may be empty
     * @return adjusted values in the order given, from 0 to 1, none below its own p
     * @throws IllegalArgumentException if a value is not a probability
     */
    public static double[] adjust(double... p) {
        Integer[] order = new Integer[p.length];
        for (int i = 0; i < p.length; i++) {
            if (!(p[i] >= 0 && p[i] <= 1)) {
                throw new IllegalArgumentException("a p value must lie from 0 to 1, not " + p[i]);
            }
            order[i] = i;
        }
        Arrays.sort(order, Comparator.comparingDouble(i -> p[i]));
        double[] adjusted = new double[p.length];
        double largest = 0;
        for (int rank = 0; rank < p.length; rank++) {
            largest = Math.max(largest, Math.min(1, (p.length - rank) * p[order[rank]]));
            adjusted[order[rank]] = largest;
        }
        return adjusted;
    }

    /**
     * The confidence at which each interval must exclude no effect so that it agrees with the adjusted test: 1 − α·p/p'.
     *
     * @param p the value of one test
     * @param adjusted its adjusted value
     * @param alpha the level of the whole study
     * @return a confidence, at least 1 − α; the interval at it excludes no effect exactly when the adjusted value is below α
     */
    public static double confidence(double p, double adjusted, double alpha) {
        Arguments.fraction(alpha, "alpha");
        if (!(p >= 0 && p <= adjusted && adjusted <= 1)) {
            throw new IllegalArgumentException(
                    "the adjusted value " + adjusted + " must lie from the p value " + p + " to 1");
        }
        return p > 0 ? 1 - alpha * (p / adjusted) : 1 - alpha;
    }
}
