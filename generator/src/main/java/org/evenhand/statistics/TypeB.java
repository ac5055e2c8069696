package org.evenhand.statistics;

/**
 * Standard uncertainties from knowledge other than repeats, in the unit of what is given.
 *
 * <p>Source: JCGM 100:2008, 4.3.7 (rectangular), 4.3.9 (triangular), H.1.3.4 (arcsine), F.2.2.1 (resolution), G.4.2, equation
 * (G.3).
 */
public final class TypeB {

    /** Of two variances: what is left of their difference below this is what their own rounding leaves. */
    private static final double ROUNDING = 1e-13;

    private TypeB() {}

    /** Limits of error ±a, nothing known of the inside: a/√3. */
    public static double rectangular(double halfWidth) {
        return Arguments.notNegative(halfWidth, "half-width") / Math.sqrt(3);
    }

    /** Limits of error ±a, values near the centre likelier: a/√6. */
    public static double triangular(double halfWidth) {
        return Arguments.notNegative(halfWidth, "half-width") / Math.sqrt(6);
    }

    /** A sinusoidal variation of amplitude a: a/√2. */
    public static double arcsine(double halfWidth) {
        return Arguments.notNegative(halfWidth, "half-width") / Math.sqrt(2);
    }

    /** An indication rounded to steps of d: d/√12. */
    public static double resolution(double step) {
        return rectangular(Arguments.notNegative(step, "resolution") / 2);
    }

    /**
     * Degrees of freedom of an uncertainty that is itself known to within a fraction: ½(Δu/u)⁻².
     *
     * @param relativeUncertainty Δu/u, positive
     */
    public static double degreesOfFreedom(double relativeUncertainty) {
        Arguments.positive(relativeUncertainty, "relative uncertainty");
        return Arguments.finite(1 / (2 * relativeUncertainty * relativeUncertainty), "degrees of freedom");
    }

    /** Type B uncertainty of x − ρ·y, by the law of propagation; zero where the two cancel but for rounding. */
    static double ofContrast(double ofX, double ofY, double covariance, double rho) {
        double apart = ofX * ofX + rho * ofY * (rho * ofY);
        double variance = apart - 2 * rho * covariance;
        return variance > ROUNDING * apart ? Math.sqrt(variance) : 0;
    }

    static void requireCovariance(double covariance, double ofX, double ofY) {
        // A correlation of exactly one, computed as a product of two roots, may exceed the bound by rounding.
        if (Math.abs(covariance) <= ofX * ofY * (1 + 1e-12)) {
            return;
        }
        throw new IllegalArgumentException("the covariance " + covariance
                + " exceeds the product of the type B uncertainties " + ofX + " and " + ofY);
    }
}
