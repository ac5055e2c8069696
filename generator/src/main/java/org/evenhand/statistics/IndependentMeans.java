package org.evenhand.statistics;

import java.util.Optional;

/**
 * The means of two independent samples with unequal variances.
 *
 * <p>Errors that both sides share enter through the covariance of the type B parts. One instrument on both sides with an offset
 * error of standard uncertainty o and a relative gain error g has the parts √(o² + g²x²) and √(o² + g²y²) and the covariance
 * o² + g²xy: of the difference the offset cancels and the gain error scales with it. Two different instruments have no
 * covariance, and nothing cancels.
 *
 * <p>Source: B. L. Welch, "The generalization of 'Student's' problem when several different population variances are involved",
 * Biometrika 34 (1947) 28–35; F. E. Satterthwaite, Biometrics Bulletin 2 (1946) 110–114; JCGM 100:2008, 5.2.2.
 *
 * @param numerator mean of side x
 * @param denominator mean of side y, in the same unit
 * @param typeBCovariance covariance of the two type B parts, in the square of the unit; at most the product of the two in
 *     magnitude
 */
public record IndependentMeans(Estimate numerator, Estimate denominator, double typeBCovariance) implements Contrast {

    /**
     * @throws IllegalArgumentException if the covariance is not finite or exceeds the product of the type B uncertainties
     */
    public IndependentMeans {
        TypeB.requireCovariance(typeBCovariance, numerator.typeB(), denominator.typeB());
    }

    /** Two means without common errors. */
    public static IndependentMeans of(Estimate x, Estimate y) {
        return new IndependentMeans(x, y, 0);
    }

    /**
     * Two samples without type B uncertainty.
     *
     * @return empty if a side has a single value
     */
    public static Optional<IndependentMeans> of(Sample x, Sample y) {
        return Estimate.ofMean(x).flatMap(left -> Estimate.ofMean(y).map(right -> of(left, right)));
    }

    @Override
    public Estimate at(double rho) {
        Arguments.finite(rho, "rho");
        Estimate y = denominator.scaledBy(rho);
        double typeA = Estimate.rootSumOfSquares(numerator.typeA(), y.typeA());
        double typeB = TypeB.ofContrast(numerator.typeB(), denominator.typeB(), typeBCovariance, rho);
        return new Estimate(numerator.value() - y.value(), typeA, degreesOfFreedom(y, typeA), typeB);
    }

    /** Welch–Satterthwaite: 1/ν = w²/νx + (1 − w)²/νy with w the share of side x in the variance. */
    private double degreesOfFreedom(Estimate y, double typeA) {
        if (typeA == 0) {
            return Math.min(numerator.degreesOfFreedom(), y.degreesOfFreedom());
        }
        double left = numerator.typeA() / typeA;
        double right = y.typeA() / typeA;
        return 1
                / (left * left * left * left / numerator.degreesOfFreedom()
                        + right * right * right * right / y.degreesOfFreedom());
    }
}
