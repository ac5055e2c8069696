package org.evenhand.statistics;

import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Events counted over a time fixed beforehand, with exact bounds of their rate.
 *
 * <p>Assumes a constant rate and independent events. Source: F. Garwood, Biometrika 28 (1936) 437–442; NIST/SEMATECH e-Handbook
 * of Statistical Methods, 8.4.5.1 (test stopped by time).
 *
 * @param events number of events, not negative
 * @param time total time watched, positive; the rate is per unit of it
 */
public record PoissonRate(int events, double time) {

    /**
     * @throws IllegalArgumentException if the number is negative or the time not positive
     */
    public PoissonRate {
        Arguments.notNegative(events, "number of events");
        Arguments.positive(time, "time");
    }

    /** Events per unit of time. */
    public double rate() {
        return events / time;
    }

    /** Mean time between events; empty without an event. */
    public OptionalDouble meanTimeBetween() {
        return events > 0 ? OptionalDouble.of(time / events) : OptionalDouble.empty();
    }

    /** Two-sided interval of the rate with half of the error in each tail. */
    public Interval interval(double confidence) {
        double tail = (1 - Arguments.fraction(confidence, "confidence")) / 2;
        return new Interval(low(tail), high(tail));
    }

    /** One-sided upper bound of the rate; without an event −ln(1 − confidence)/T. */
    public double upperBound(double confidence) {
        return high(1 - Arguments.fraction(confidence, "confidence"));
    }

    /** One-sided lower bound of the rate; 0 without an event. */
    public double lowerBound(double confidence) {
        return low(1 - Arguments.fraction(confidence, "confidence"));
    }

    /**
     * The chance of no event during a further time if the rate were at its one-sided upper bound.
     *
     * @param furtherTime in the unit of {@link #time}, not negative
     */
    public double chanceOfNoEvent(double furtherTime, double confidence) {
        return StrictMath.exp(-upperBound(confidence) * Arguments.notNegative(furtherTime, "further time"));
    }

    private double low(double tail) {
        if (events == 0) {
            return 0;
        }
        // The lower quantile is where the upper tail is 1 − tail.
        return Student.upperQuantile(ChiSquaredDistribution.of(2.0 * events), 1 - tail) / (2 * time);
    }

    private double high(double tail) {
        if (events == 0) {
            return -StrictMath.log(tail) / time;
        }
        return Student.upperQuantile(ChiSquaredDistribution.of(2.0 * events + 2), tail) / (2 * time);
    }
}
