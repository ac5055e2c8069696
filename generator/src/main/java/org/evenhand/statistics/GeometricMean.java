package org.evenhand.statistics;

import java.util.Arrays;
import java.util.List;

/**
 * Geometric means, by way of logarithms so that no product can overflow.
 *
 * <p>Source: P. J. Fleming, J. J. Wallace, "How not to lie with statistics: the correct way to summarize benchmark results",
 * Communications of the ACM 29 (1986) 218–221; uncertainty by the delta method, JCGM 100:2008, 5.1.6 and G.4.
 */
public final class GeometricMean {

    private GeometricMean() {}

    /**
     * @param values at least one, each positive and finite
     * @throws IllegalArgumentException if there is none, or one is zero, negative, NaN or infinite
     */
    public static double of(double... values) {
        double[] weights = new double[values.length];
        Arrays.fill(weights, 1);
        return weighted(values, weights);
    }

    /**
     * @param values at least one, each positive and finite
     * @param weights one for each value, not negative, not all zero; only their proportions count
     * @throws IllegalArgumentException if a value or weight is outside its range, or the lengths differ
     */
    public static double weighted(double[] values, double[] weights) {
        Arguments.sameLength(values, weights);
        double sum = 0;
        double total = 0;
        for (int i = 0; i < values.length; i++) {
            double weight = Arguments.notNegative(weights[i], "weight");
            sum += weight * StrictMath.log(Arguments.positive(values[i], "value"));
            total += weight;
        }
        return StrictMath.exp(sum / Arguments.positive(total, "sum of the weights"));
    }

    /**
     * The mean of independent logarithms of ratios, such as {@link Contrast#logRatio()}; its exponential is the geometric mean,
     * and the exponentials of its limits are an interval for these workloads only, not for workloads of this kind.
     *
     * @param logRatios at least one
     * @return the mean logarithm, with Welch–Satterthwaite degrees of freedom
     */
    public static Estimate ofLogRatios(List<Estimate> logRatios) {
        if (logRatios.isEmpty()) {
            throw new IllegalArgumentException("a mean needs at least one ratio");
        }
        int n = logRatios.size();
        double value = 0;
        double typeA = 0;
        double typeB = 0;
        for (Estimate ratio : logRatios) {
            value += ratio.value() / n;
            typeA = Estimate.rootSumOfSquares(typeA, ratio.typeA() / n);
            typeB = Estimate.rootSumOfSquares(typeB, ratio.typeB() / n);
        }
        return new Estimate(value, typeA, degreesOfFreedom(logRatios, typeA * n), typeB);
    }

    private static double degreesOfFreedom(List<Estimate> parts, double typeA) {
        if (typeA == 0) {
            return parts.get(0).degreesOfFreedom();
        }
        double sum = 0;
        for (Estimate part : parts) {
            double share = part.typeA() / typeA;
            sum += share * share * share * share / part.degreesOfFreedom();
        }
        return 1 / sum;
    }
}
