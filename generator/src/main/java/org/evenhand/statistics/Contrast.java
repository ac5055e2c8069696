package org.evenhand.statistics;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Two sides x and y whose means are compared by their difference x − y or by their ratio x / y.
 *
 * <p>Both come from one family of tests, that of mean(x) − ρ·mean(y): the difference is the case ρ = 1, and the interval of the
 * ratio is the set of ρ that the test does not reject. So the ratio's interval holds 1 exactly when the difference's holds 0.
 */
public sealed interface Contrast permits IndependentMeans, PairedMeans {

    /**
     * The estimate of mean(x) − ρ·mean(y).
     *
     * @param rho any finite number
     */
    Estimate at(double rho);

    /** The mean of side x, the numerator. */
    Estimate numerator();

    /** The mean of side y, the denominator. */
    Estimate denominator();

    /**
     * The difference x − y.
     *
     * @return empty where neither side scatters by more than rounding and no type B uncertainty is given: then the repeats say
     *     nothing about how far the difference can be trusted
     */
    default Optional<Estimate> difference() {
        Estimate difference = at(1);
        double size =
                Math.max(Math.abs(numerator().value()), Math.abs(denominator().value()));
        return difference.standardUncertainty() > 4 * Math.ulp(size) ? Optional.of(difference) : Optional.empty();
    }

    /** The ratio of the means x / y; empty where the mean of y is zero or too near to it for a finite ratio. */
    default OptionalDouble ratio() {
        double ratio = numerator().value() / denominator().value();
        return Math.abs(ratio) <= Double.MAX_VALUE ? OptionalDouble.of(ratio) : OptionalDouble.empty();
    }

    /**
     * The set of ratios that are not rejected at this confidence.
     *
     * <p>Source: A. C. Tamhane, B. R. Logan, "Finding the maximum safe dose level for heteroscedastic data", Journal of
     * Biopharmaceutical Statistics 14 (2004) 843–856; E. C. Fieller, Journal of the Royal Statistical Society B 16 (1954) 175.
     *
     * @param confidence strictly between 0 and 1
     * @return empty where the set is unbounded, because the mean of y cannot be told from zero at this confidence, or where
     *     {@link #difference()} is empty
     */
    default Optional<Interval> ratioInterval(double confidence) {
        Arguments.fraction(confidence, "confidence");
        if (difference().isEmpty()
                || ratio().isEmpty()
                || denominator().interval(confidence).contains(0)) {
            return Optional.empty();
        }
        return RatioInversion.interval(this, confidence);
    }

    /**
     * The natural logarithm of the ratio with its standard uncertainty by the delta method.
     *
     * @return empty unless both means have one sign and the difference exists
     */
    default Optional<Estimate> logRatio() {
        OptionalDouble ratio = ratio();
        if (ratio.isEmpty() || !(ratio.getAsDouble() > 0) || difference().isEmpty()) {
            return Optional.empty();
        }
        // u²(ln x/y) = ux²/x² + uy²/y² − 2 cov/(x y) = u²(x − r y)/x², with r = x/y.
        Estimate scaled = at(ratio.getAsDouble()).scaledBy(1 / numerator().value());
        return Optional.of(new Estimate(
                StrictMath.log(ratio.getAsDouble()), scaled.typeA(), scaled.degreesOfFreedom(), scaled.typeB()));
    }
}
