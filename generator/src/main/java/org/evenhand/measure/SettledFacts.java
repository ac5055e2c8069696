package org.evenhand.measure;

import java.util.OptionalDouble;
import org.evenhand.quantity.Unit;

/**
 * How the last window of a log looked that a settled value is taken from.
 *
 * @param windowS its length in seconds
 * @param samples within it
 * @param mean of the samples, in the unit
 * @param drift fitted slope × window
 * @param allowedDrift the method's criterion
 * @param lag1 autocorrelation of neighbouring samples; absent if all are equal
 * @param effectiveSamples how many independent samples the window is worth
 * @param theilSenDrift median slope × window
 * @param trendP two-sided p of no trend after Mann and Kendall; absent if all block means are equal
 * @param settled whether the drift is below the criterion
 * @param unit of the mean; drifts are in its unit of a difference
 */
public record SettledFacts(
        double windowS,
        long samples,
        double mean,
        double drift,
        double allowedDrift,
        OptionalDouble lag1,
        double effectiveSamples,
        OptionalDouble theilSenDrift,
        OptionalDouble trendP,
        boolean settled,
        Unit unit) {

    /** The same in another unit: factor and offset of values. */
    SettledFacts in(Unit other) {
        double f = unit.differenceTo(other).fast().apply(1);
        return new SettledFacts(
                windowS,
                samples,
                unit.to(other).fast().apply(mean),
                drift * f,
                allowedDrift * f,
                lag1,
                effectiveSamples,
                theilSenDrift.isPresent() ? OptionalDouble.of(theilSenDrift.getAsDouble() * f) : theilSenDrift,
                trendP,
                settled,
                other);
    }
}
