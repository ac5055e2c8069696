package org.evenhand.statistics;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.numbers.rootfinder.BrentSolver;

/**
 * Finds the ratios ρ at which the test of x − ρ·y is just not rejected, one on each side of the estimate.
 *
 * <p>The degrees of freedom depend on ρ, so that with few and very unequal numbers of values the set can fall into pieces. The
 * piece that holds the estimate is given, stretched to 1 where 1 is not rejected.
 */
final class RatioInversion {

    private static final int MOST_DOUBLINGS = 60;

    private RatioInversion() {}

    static Optional<Interval> interval(Contrast contrast, double confidence) {
        double estimate = contrast.ratio().orElseThrow();
        double alpha = 1 - confidence;
        // At the estimate itself the uncertainty of x − r·y, divided by y, is that of the ratio.
        double step = contrast.at(estimate).standardUncertainty()
                / Math.abs(contrast.denominator().value());
        OptionalDouble low = limit(contrast, alpha, estimate, -step);
        OptionalDouble high = limit(contrast, alpha, estimate, step);
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        boolean equalMeansRejected =
                !contrast.difference().orElseThrow().interval(confidence).contains(0);
        return Optional.of(agreeAboutOne(low.getAsDouble(), high.getAsDouble(), estimate, equalMeansRejected));
    }

    private static OptionalDouble limit(Contrast contrast, double alpha, double estimate, double firstStep) {
        if (firstStep == 0) {
            return OptionalDouble.of(estimate);
        }
        double accepted = estimate;
        double step = firstStep;
        for (int doubling = 0; doubling < MOST_DOUBLINGS; doubling++) {
            double next = accepted + step;
            if (excess(contrast, alpha, next) < 0) {
                BrentSolver solver = new BrentSolver(1e-15, Math.abs(step) * 1e-14, 1e-16);
                double from = Math.min(accepted, next);
                double to = Math.max(accepted, next);
                return OptionalDouble.of(solver.findRoot(rho -> excess(contrast, alpha, rho), from, to));
            }
            accepted = next;
            step *= 2;
        }
        return OptionalDouble.empty();
    }

    /** The p value above the permitted error: negative where ρ is rejected. */
    private static double excess(Contrast contrast, double alpha, double rho) {
        Estimate estimate = contrast.at(rho);
        double p = estimate.pTwoSided(0).orElse(estimate.value() == 0 ? 1 : 0);
        return p - alpha;
    }

    /** Rounding of a root must not decide whether the interval holds 1: the test of the difference does. */
    private static Interval agreeAboutOne(double low, double high, double estimate, boolean rejected) {
        if (!rejected) {
            return new Interval(Math.min(low, 1), Math.max(high, 1));
        }
        if (estimate > 1) {
            return new Interval(Math.max(low, Math.nextUp(1.0)), high);
        }
        return new Interval(low, Math.min(high, Math.nextDown(1.0)));
    }
}
