package org.evenhand.statistics;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.numbers.rootfinder.BrentSolver;

/**
 * Finds the ratios ρ at which the test of x − ρ·y is just not rejected, one on each side of the estimate.
 *
 * <p>With ρ = s·tan φ, s = u(x)/u(y), the statistic is a sinusoid of φ and the degrees of freedom depend on the shares cos²φ and
 * sin²φ only, so that φ is the scale on which to search. The degrees of freedom change with ρ; with few and very unequal numbers
 * of values the set can therefore fall into pieces. The piece that holds the estimate is given, stretched to 1 where 1 is not
 * rejected.
 */
final class RatioInversion {

    private static final double LONGEST_STEP = Math.PI / 64;
    private static final double ALMOST_INFINITE = Math.PI / 2 - 1e-9;

    private final Contrast contrast;
    private final double alpha;
    private final double estimate;
    private final double scale;
    private final double firstStep;

    private RatioInversion(Contrast contrast, double confidence) {
        this.contrast = contrast;
        this.alpha = 1 - confidence;
        this.estimate = contrast.ratio().orElseThrow();
        double uncertaintyOfX = contrast.numerator().standardUncertainty();
        double uncertaintyOfY = contrast.denominator().standardUncertainty();
        // At the estimate itself the uncertainty of x − r·y, divided by y, is that of the ratio.
        double ofRatio = contrast.at(estimate).standardUncertainty()
                / Math.abs(contrast.denominator().value());
        this.scale = uncertaintyOfX > 0 && uncertaintyOfY > 0
                ? uncertaintyOfX / uncertaintyOfY
                : Math.max(Math.abs(estimate), ofRatio);
        double relative = estimate / scale;
        this.firstStep = Math.min(LONGEST_STEP, ofRatio / scale / (1 + relative * relative));
    }

    static Optional<Interval> interval(Contrast contrast, double confidence) {
        RatioInversion inversion = new RatioInversion(contrast, confidence);
        OptionalDouble low = inversion.limit(-1);
        OptionalDouble high = inversion.limit(1);
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        boolean equalMeansRejected =
                !contrast.difference().orElseThrow().interval(confidence).contains(0);
        return Optional.of(
                agreeAboutOne(low.getAsDouble(), high.getAsDouble(), inversion.estimate, equalMeansRejected));
    }

    private OptionalDouble limit(int direction) {
        if (!(firstStep > 0)) {
            return OptionalDouble.of(estimate);
        }
        double accepted = estimate;
        double angle = StrictMath.atan(estimate / scale);
        double step = firstStep;
        while (Math.abs(angle) < ALMOST_INFINITE) {
            angle = Math.max(-ALMOST_INFINITE, Math.min(ALMOST_INFINITE, angle + direction * step));
            double next = scale * StrictMath.tan(angle);
            if (excess(next) < 0) {
                BrentSolver solver = new BrentSolver(1e-15, scale * 1e-18, 1e-16);
                return OptionalDouble.of(
                        solver.findRoot(this::excess, Math.min(accepted, next), Math.max(accepted, next)));
            }
            accepted = next;
            step = Math.min(LONGEST_STEP, 2 * step);
        }
        return OptionalDouble.empty();
    }

    /** The p value above the permitted error: negative where ρ is rejected. */
    private double excess(double rho) {
        Estimate tested = contrast.at(rho);
        double p = tested.pTwoSided(0).orElse(tested.value() == 0 ? 1 : 0);
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
