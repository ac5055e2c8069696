package org.evenhand.statistics;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A value with its standard uncertainty, evaluated in two ways that stay visible: type A from the scatter of repeats, type B
 * from other knowledge such as the limits of error of an instrument. Both are independent; the type B part counts as having
 * infinitely many degrees of freedom.
 *
 * <p>Source: JCGM 100:2008, 5.1.2 (combination), G.4 (Welch–Satterthwaite, here not truncated to an integer), G.3 (expansion
 * with t).
 *
 * @param value the estimate, in the unit of the data (a logarithm or a slope has its own)
 * @param typeA type A standard uncertainty, in the unit of {@code value}, zero where the repeats agree exactly
 * @param degreesOfFreedom of the type A part, positive, may be fractional; without meaning where {@code typeA} is zero
 * @param typeB type B standard uncertainty, in the unit of {@code value}
 */
public record Estimate(double value, double typeA, double degreesOfFreedom, double typeB) {

    /** Beyond this Student's t is the normal law to all digits. */
    private static final double MANY = 1e12;

    /**
     * @throws IllegalArgumentException if a component is NaN or infinite, an uncertainty negative, or the degrees of freedom
     *     not positive
     */
    public Estimate {
        Arguments.finite(value, "value");
        Arguments.notNegative(typeA, "type A uncertainty");
        Arguments.positive(degreesOfFreedom, "degrees of freedom");
        Arguments.notNegative(typeB, "type B uncertainty");
    }

    /**
     * The mean of a sample with s/√n and n − 1 degrees of freedom, no type B part.
     *
     * @return empty for a single value: it has no interval from repeats
     */
    public static Optional<Estimate> ofMean(Sample sample) {
        OptionalDouble error = sample.standardError();
        return error.isPresent()
                ? Optional.of(new Estimate(sample.mean(), error.getAsDouble(), sample.size() - 1, 0))
                : Optional.empty();
    }

    /**
     * The same estimate with another type B part.
     *
     * @param uncertainty type B standard uncertainty in the unit of the value, finite, not negative
     */
    public Estimate withTypeB(double uncertainty) {
        return new Estimate(value, typeA, degreesOfFreedom, uncertainty);
    }

    /** Combined standard uncertainty, √(uA² + uB²). */
    public double standardUncertainty() {
        return rootSumOfSquares(typeA, typeB);
    }

    /** Effective degrees of freedom, ν u⁴/uA⁴; empty where they are infinite, as without a type A part. */
    public OptionalDouble effectiveDegreesOfFreedom() {
        if (typeA == 0) {
            return OptionalDouble.empty();
        }
        double ratio = standardUncertainty() / typeA;
        double effective = degreesOfFreedom * ratio * ratio * ratio * ratio;
        return effective < MANY ? OptionalDouble.of(effective) : OptionalDouble.empty();
    }

    /**
     * Expanded uncertainty U = k·u with k from Student's t, two-sided. For a difference this is also the smallest difference
     * that the same scatter could have shown at this confidence.
     *
     * @param confidence strictly between 0 and 1
     */
    public double expandedUncertainty(double confidence) {
        double factor = Student.factor(confidence, effectiveDegreesOfFreedom());
        return factor * standardUncertainty();
    }

    /**
     * The symmetric interval value ± U; of zero width where there is no uncertainty at all.
     *
     * @param confidence strictly between 0 and 1
     */
    public Interval interval(double confidence) {
        double expanded = expandedUncertainty(confidence);
        return new Interval(value - expanded, value + expanded);
    }

    /** (value − supposed)/u; empty where there is no uncertainty. */
    public OptionalDouble tStatistic(double supposed) {
        double uncertainty = standardUncertainty();
        double t = (value - supposed) / uncertainty;
        return uncertainty > 0 && Math.abs(t) <= Double.MAX_VALUE ? OptionalDouble.of(t) : OptionalDouble.empty();
    }

    /** Two-sided p value of the supposed value; empty where there is no uncertainty. */
    public OptionalDouble pTwoSided(double supposed) {
        OptionalDouble t = tStatistic(supposed);
        return t.isPresent()
                ? OptionalDouble.of(
                        Math.min(1, 2 * Student.upperTail(Math.abs(t.getAsDouble()), effectiveDegreesOfFreedom())))
                : OptionalDouble.empty();
    }

    /** One-sided p value against "at most the supposed value"; empty where there is no uncertainty. */
    public OptionalDouble pAbove(double supposed) {
        OptionalDouble t = tStatistic(supposed);
        return t.isPresent()
                ? OptionalDouble.of(Student.upperTail(t.getAsDouble(), effectiveDegreesOfFreedom()))
                : OptionalDouble.empty();
    }

    /** One-sided p value against "at least the supposed value"; empty where there is no uncertainty. */
    public OptionalDouble pBelow(double supposed) {
        return scaledBy(-1).pAbove(-supposed);
    }

    /** The estimate of a multiple of the quantity; the factor is exactly known and finite. */
    public Estimate scaledBy(double factor) {
        double size = Math.abs(factor);
        return new Estimate(value * factor, typeA * size, degreesOfFreedom, typeB * size);
    }

    /** √(a² + b²) of values that are not negative, without overflow or underflow on the way. */
    static double rootSumOfSquares(double a, double b) {
        double larger = Math.max(a, b);
        if (larger == 0) {
            return 0;
        }
        double share = Math.min(a, b) / larger;
        return larger * Math.sqrt(1 + share * share);
    }
}
