package org.evenhand.statistics;

import org.apache.commons.numbers.gamma.LogGamma;
import org.apache.commons.numbers.gamma.RegularizedBeta;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The distribution function of the noncentral t law, as a Poisson mixture of incomplete beta functions.
 *
 * <p>Source: R. V. Lenth, "Algorithm AS 243: Cumulative distribution function of the non-central t distribution", Applied
 * Statistics 38 (1989) 185–189. The weights are computed from their logarithms, so that they do not underflow together.
 */
final class NoncentralT {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private NoncentralT() {}

    /** P(T ≤ t) with absolute error of about 1e-13. */
    static double cumulative(double t, double degreesOfFreedom, double noncentrality) {
        if (t < 0) {
            return 1 - cumulative(-t, degreesOfFreedom, -noncentrality);
        }
        double below = NORMAL.survivalProbability(noncentrality);
        double x = t * t / (degreesOfFreedom + t * t);
        if (x == 0) {
            return below;
        }
        double lambda = noncentrality * noncentrality / 2;
        double sum = 0;
        for (int j = 0; ; j++) {
            double even = weight(lambda, j) * RegularizedBeta.value(x, j + 0.5, degreesOfFreedom / 2);
            // The weight of the odd term is that of a Poisson law at j + ½, with the sign of the noncentrality.
            double odd = Math.signum(noncentrality)
                    * weight(lambda, j + 0.5)
                    * RegularizedBeta.value(x, j + 1.0, degreesOfFreedom / 2);
            sum += even + odd;
            if (j > lambda && weight(lambda, j) < 1e-17) {
                return Math.min(1, Math.max(0, below + sum / 2));
            }
        }
    }

    private static double weight(double lambda, double j) {
        if (lambda == 0) {
            return j == 0 ? 1 : 0;
        }
        return StrictMath.exp(j * StrictMath.log(lambda) - lambda - LogGamma.value(j + 1));
    }
}
