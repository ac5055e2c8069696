package org.evenhand.page.words;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.quantity.Figures;
import org.evenhand.statistics.Interval;
import org.evenhand.statistics.LineFit;
import org.evenhand.words.Words;

/** The one number of a comparison as pages write it, with its interval. */
public final class ComparisonFigures {

    private static final double CONFIDENCE = 0.95;

    private ComparisonFigures() {}

    /** Slope for a trend, percentage for a share; no value for times until, which have several. */
    public static Written of(ComparisonResult result, Words words) {
        if (result instanceof ComparisonResult.Contrasted r) {
            return Written.of(r.estimate(), r.interval(), r.unit().symbol(), words);
        }
        if (result instanceof ComparisonResult.GeometricMean r) {
            return Written.of(r.estimate(), r.interval(), r.unit().symbol(), words);
        }
        if (result instanceof ComparisonResult.Trend r) {
            String unit = words.say(
                    "figure.unit-per", r.unit().symbol(), r.factorUnit().symbol());
            return r.line()
                    .map(LineFit::slope)
                    .map(s ->
                            Written.of(OptionalDouble.of(s.value()), Optional.of(s.interval(CONFIDENCE)), unit, words))
                    .orElse(Written.of(OptionalDouble.empty(), Optional.empty(), unit, words));
        }
        if (result instanceof ComparisonResult.Share r) {
            return share(r, words);
        }
        if (result instanceof ComparisonResult.FailureRate r) {
            return rate(r, words);
        }
        return Written.of(
                OptionalDouble.empty(), Optional.empty(), result.unit().symbol(), words);
    }

    /** A share in percent; limits that are not none or all are not rounded to none or all. */
    private static Written share(ComparisonResult.Share r, Words words) {
        OptionalDouble percent =
                r.estimate().isPresent() ? OptionalDouble.of(100 * r.estimate().getAsDouble()) : OptionalDouble.empty();
        Optional<Interval> interval = r.interval().map(i -> new Interval(100 * i.low(), 100 * i.high()));
        int decimals = interval.map(i -> decimals(i)).orElse(0);
        return Written.at(percent, interval, "%", decimals, words);
    }

    private static int decimals(Interval percent) {
        int decimals = Math.max(0, Figures.decimals(percent.halfWidth()));
        while (decimals < 6 && (isSwallowed(percent.low(), decimals) || isSwallowed(percent.high(), decimals))) {
            decimals++;
        }
        return decimals;
    }

    private static boolean isSwallowed(double percent, int decimals) {
        double rounded = Math.rint(percent * StrictMath.pow(10, decimals)) / StrictMath.pow(10, decimals);
        return rounded != percent && (rounded == 0 || rounded == 100);
    }

    private static Written rate(ComparisonResult.FailureRate r, Words words) {
        Written written = Written.of(r.estimate(), r.interval(), r.unit().symbol(), words);
        // Nothing seen is a count of none, not a rate that was measured to some digits.
        return r.events() == 0 && !written.isAbsent()
                ? new Written("0", "", "0", written.high(), written.unit(), words)
                : written;
    }
}
