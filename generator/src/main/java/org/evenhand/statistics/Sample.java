package org.evenhand.statistics;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * The values that n counts, in the order taken, all in one unit.
 *
 * <p>Sums run in the order of the values. The mean is taken about the first value and corrected once, so that equal values have
 * exactly their value as mean and exactly zero as standard deviation; the standard deviation has the divisor n − 1 and is
 * computed in two passes with the correction for the rounding of the mean.
 *
 * <p>Source: T. F. Chan, G. H. Golub, R. J. LeVeque, "Algorithms for computing the sample variance", The American Statistician
 * 37 (1983) 242–247, equation 1.7; JCGM 100:2008, 4.2.
 */
public final class Sample {

    /** Squares of larger values would overflow. */
    private static final double LARGEST = 1e150;

    private final double[] values;
    private final double mean;

    private Sample(double[] values) {
        this.values = values;
        this.mean = mean(values);
    }

    /**
     * @param values at least one value, each finite and at most 1e150 in magnitude; copied
     * @throws IllegalArgumentException if there is no value, or one is NaN, infinite or too large
     */
    public static Sample of(double... values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("a sample needs at least one value");
        }
        for (double value : values) {
            if (!(Math.abs(value) <= LARGEST)) {
                throw new IllegalArgumentException(
                        "a value must be finite and at most 1e150 in magnitude, not " + value);
            }
        }
        return new Sample(values.clone());
    }

    /** Number of values, at least 1. */
    public int size() {
        return values.length;
    }

    /** The values in the order given; a copy. */
    public double[] values() {
        return values.clone();
    }

    /** Arithmetic mean, in the unit of the values. */
    public double mean() {
        return mean;
    }

    /** Experimental standard deviation, divisor n − 1; empty for a single value. */
    public OptionalDouble standardDeviation() {
        if (values.length < 2) {
            return OptionalDouble.empty();
        }
        double squares = 0;
        double rest = 0;
        for (double value : values) {
            double deviation = value - mean;
            squares += deviation * deviation;
            rest += deviation;
        }
        double sum = squares - rest * rest / values.length;
        return OptionalDouble.of(Math.sqrt(Math.max(0, sum) / (values.length - 1)));
    }

    /** Experimental standard deviation of the mean, s/√n; empty for a single value. */
    public OptionalDouble standardError() {
        OptionalDouble deviation = standardDeviation();
        return deviation.isPresent()
                ? OptionalDouble.of(deviation.getAsDouble() / Math.sqrt(values.length))
                : OptionalDouble.empty();
    }

    /** Median; of an even number of values the mean of the middle two. */
    public double median() {
        return median(values);
    }

    /** The values in ascending order; a copy. */
    double[] sorted() {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted;
    }

    static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : sorted[middle - 1] / 2 + sorted[middle] / 2;
    }

    static double mean(double[] values) {
        double origin = values[0];
        double first = origin + meanDeviation(values, origin);
        return first + meanDeviation(values, first);
    }

    private static double meanDeviation(double[] values, double origin) {
        double sum = 0;
        for (double value : values) {
            sum += value - origin;
        }
        return sum / values.length;
    }
}
