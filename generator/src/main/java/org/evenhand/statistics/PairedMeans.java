package org.evenhand.statistics;

import java.util.Optional;

/**
 * Two sides measured in pairs: value i of x belongs to value i of y. The test is Student's t on x − ρ·y of each pair, with one
 * degree of freedom less than there are pairs.
 *
 * <p>Source: Student, "The probable error of a mean", Biometrika 6 (1908) 1–25; for the ratio, E. C. Fieller (1954).
 */
public final class PairedMeans implements Contrast {

    private final double[] x;
    private final double[] y;
    private final double typeBOfX;
    private final double typeBOfY;
    private final double typeBCovariance;

    private PairedMeans(double[] x, double[] y, double typeBOfX, double typeBOfY, double typeBCovariance) {
        this.x = x;
        this.y = y;
        this.typeBOfX = typeBOfX;
        this.typeBOfY = typeBOfY;
        this.typeBCovariance = typeBCovariance;
    }

    /**
     * @return empty for a single pair
     * @throws IllegalArgumentException if the sides differ in number
     */
    public static Optional<PairedMeans> of(Sample x, Sample y) {
        Arguments.sameLength(x.values(), y.values());
        return x.size() < 2 ? Optional.empty() : Optional.of(new PairedMeans(x.values(), y.values(), 0, 0, 0));
    }

    /**
     * The same pairs with type B uncertainties of the two means; see {@link IndependentMeans} for the covariance.
     *
     * @param ofX type B standard uncertainty of the mean of x
     * @param ofY type B standard uncertainty of the mean of y
     * @param covariance of the two, at most their product in magnitude
     */
    public PairedMeans withTypeB(double ofX, double ofY, double covariance) {
        Arguments.notNegative(ofX, "type B uncertainty of x");
        Arguments.notNegative(ofY, "type B uncertainty of y");
        TypeB.requireCovariance(covariance, ofX, ofY);
        return new PairedMeans(x, y, ofX, ofY, covariance);
    }

    /** Number of pairs, at least two. */
    public int size() {
        return x.length;
    }

    @Override
    public Estimate at(double rho) {
        Arguments.finite(rho, "rho");
        double[] contrasts = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            contrasts[i] = x[i] - rho * y[i];
        }
        return mean(contrasts, TypeB.ofContrast(typeBOfX, typeBOfY, typeBCovariance, rho));
    }

    @Override
    public Estimate numerator() {
        return mean(x, typeBOfX);
    }

    @Override
    public Estimate denominator() {
        return mean(y, typeBOfY);
    }

    private static Estimate mean(double[] values, double typeB) {
        return Estimate.ofMean(Sample.of(values)).orElseThrow().withTypeB(typeB);
    }
}
