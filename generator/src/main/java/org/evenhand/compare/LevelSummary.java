package org.evenhand.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.measure.Contributions;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Reading;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.Grubbs;
import org.evenhand.statistics.Interval;

/**
 * What is known of one measurand at one level.
 *
 * @param level of the factor
 * @param measurand which
 * @param unit of all figures
 * @param n how many values count
 * @param counts what n counts
 * @param censored how many of the values are only known to be larger
 * @param atMost how many of the values are only known to be smaller
 * @param mean of the values; absent if there is none, or one is known as a bound only
 * @param standardDeviation of the values (n − 1); absent for fewer than two
 * @param estimate the mean with its uncertainties; absent for fewer than two values
 * @param interval of the mean, 95 %, both kinds of uncertainty combined
 * @param contributions of the instruments to the mean
 * @param values those that count, by specimen or run
 * @param words for judgements: how often each word was given; empty for numbers
 * @param outlier the value farthest off, if Grubbs' test calls it an outlier; it is not removed
 * @param median of the values, where the method asks for it and every value is known
 * @param medianInterval distribution-free, at least 95 %; exists from six values
 * @param runs ids of those that take part
 */
public record LevelSummary(
        String level,
        MeasurandId measurand,
        Unit unit,
        int n,
        Counts counts,
        int censored,
        int atMost,
        OptionalDouble mean,
        OptionalDouble standardDeviation,
        Optional<Estimate> estimate,
        Optional<Interval> interval,
        Contributions contributions,
        List<Double> values,
        Map<Reading, Integer> words,
        Optional<Grubbs> outlier,
        OptionalDouble median,
        Optional<Interval> medianInterval,
        List<String> runs) {

    /** The confidence of every interval of a mean. */
    public static final double CONFIDENCE = 0.95;
}
