package org.evenhand.statistics;

import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** Student's t with fractional degrees of freedom; empty degrees of freedom mean infinitely many, that is the normal law. */
final class Student {

    private Student() {}

    /** The factor k with P(−k ≤ T ≤ k) = confidence. */
    static double factor(double confidence, OptionalDouble degreesOfFreedom) {
        Arguments.fraction(confidence, "confidence");
        return upperQuantile(law(degreesOfFreedom), (1 - confidence) / 2);
    }

    /** The value that T exceeds with the given probability. */
    static double upperQuantile(double probability, double degreesOfFreedom) {
        return upperQuantile(TDistribution.of(degreesOfFreedom), probability);
    }

    /** P(T &gt; t). */
    static double upperTail(double t, OptionalDouble degreesOfFreedom) {
        return law(degreesOfFreedom).survivalProbability(t);
    }

    /**
     * The quantile of an upper tail, to the last digits: the library stops at an absolute accuracy of 1e-9, which two steps of
     * Newton's method take to the precision of the distribution function.
     */
    static double upperQuantile(ContinuousDistribution law, double probability) {
        double value = law.inverseSurvivalProbability(probability);
        for (int step = 0; step < 2; step++) {
            double density = law.density(value);
            if (!(density > 0)) {
                return value;
            }
            double next = value + (law.survivalProbability(value) - probability) / density;
            // Near a limit of the support a step may leave it; then the library's value is the better one.
            if (!(next >= law.getSupportLowerBound() && next <= law.getSupportUpperBound())) {
                return value;
            }
            value = next;
        }
        return value;
    }

    private static ContinuousDistribution law(OptionalDouble degreesOfFreedom) {
        return degreesOfFreedom.isPresent()
                ? TDistribution.of(degreesOfFreedom.getAsDouble())
                : NormalDistribution.of(0, 1);
    }
}
