package org.evenhand.prose;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Comparison;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Interval;

/** The numbers that belong to a figure and have an address of their own. */
final class Parts {

    private static final double CONFIDENCE = 0.95;
    private static final Unit HOUR = Unit.of("h");
    private static final double SECONDS_PER_HOUR = 3600;

    private final Evidence whole;
    private final FigureText text;
    private final Map<String, Evidence> byName = new LinkedHashMap<>();

    private Parts(Evidence whole, FigureText text) {
        this.whole = whole;
        this.text = text;
        if (whole.isRefused()) {
            return;
        }
        end("low", whole.figure().low());
        end("high", whole.figure().high());
    }

    static Map<String, Evidence> of(Evidence whole, ComparisonResult result, FigureText text) {
        Parts parts = new Parts(whole, text);
        if (!whole.isRefused()) {
            parts.add(result);
        }
        return parts.byName;
    }

    static Map<String, Evidence> of(Evidence whole, LevelSummary summary, FigureText text) {
        Parts parts = new Parts(whole, text);
        parts.put("deviation", summary.standardDeviation(), summary.unit().ofDifference());
        if (summary.median().isPresent()) {
            parts.put(
                    "median",
                    new Figure(
                            summary.median(),
                            end(summary.medianInterval().map(Interval::low)),
                            end(summary.medianInterval().map(Interval::high)),
                            summary.unit()));
        }
        parts.put("n", OptionalDouble.of(summary.n()), Unit.ONE);
        parts.put("censored", OptionalDouble.of(summary.censored()), Unit.ONE);
        if (summary.censored() == 0) {
            parts.put("lowest", summary.values().stream().mapToDouble(d -> d).min(), summary.unit());
            parts.put("highest", summary.values().stream().mapToDouble(d -> d).max(), summary.unit());
        }
        return parts.byName;
    }

    private static OptionalDouble end(Optional<Double> end) {
        return end.isPresent() ? OptionalDouble.of(end.get()) : OptionalDouble.empty();
    }

    private void add(ComparisonResult result) {
        if (result instanceof ComparisonResult.Contrasted r) {
            boolean ratio = r.plan().kind() == Comparison.Kind.RATIO;
            put("smallest", ratio ? percent(r.smallest()) : r.smallest(), ratio ? FigureText.PERCENT : r.unit());
            r.plan().sameWithin().ifPresent(this::margin);
        } else if (result instanceof ComparisonResult.Trend r) {
            if (r.line().isPresent()) {
                put("slope", whole.figure());
                Interval at = r.line().get().intercept().interval(CONFIDENCE);
                put(
                        "intercept",
                        new Figure(
                                OptionalDouble.of(r.line().get().intercept().value()),
                                OptionalDouble.of(at.low()),
                                OptionalDouble.of(at.high()),
                                r.unit()));
            }
            whole.second().ifPresent(e -> {
                put("exponent", e);
                put("exponent/low", e.low(), e.unit());
                put("exponent/high", e.high(), e.unit());
            });
            put("efficiency", percent(r.efficiency()), FigureText.PERCENT);
        } else if (result instanceof ComparisonResult.Survival r) {
            byName.remove("low");
            byName.remove("high");
            r.levels().forEach(c -> median(c, r.unit()));
        } else if (result instanceof ComparisonResult.Share r) {
            put("successes", OptionalDouble.of(r.successes()), Unit.ONE);
            put("n", OptionalDouble.of(r.n()), Unit.ONE);
            put("low", percent(whole.figure().low()), FigureText.PERCENT);
            put("high", percent(whole.figure().high()), FigureText.PERCENT);
        } else if (result instanceof ComparisonResult.FailureRate r) {
            put("events", OptionalDouble.of(r.events()), Unit.ONE);
            put("rate", r.estimate(), r.unit());
            put("time", OptionalDouble.of(r.timeS() / SECONDS_PER_HOUR), HOUR);
            put("chance", percent(r.chance()), FigureText.PERCENT);
        }
    }

    private void median(ComparisonResult.Curve curve, Unit unit) {
        OptionalDouble median = curve.curve().median();
        Figure figure = median.isPresent()
                ? new Figure(
                        median,
                        curve.curve().medianLow(CONFIDENCE),
                        curve.curve().medianHigh(CONFIDENCE),
                        unit)
                : Figure.atLeast(ComparisonFigures.last(curve.curve()), unit);
        put("median/" + curve.level(), figure);
        put("events/" + curve.level(), OptionalDouble.of(curve.curve().events()), Unit.ONE);
    }

    private void margin(Quantity margin) {
        Figure figure = Figure.of(margin.value().doubleValue(), margin.unit());
        byName.put("margin", whole.part(figure, text.written(margin)));
    }

    /** An end of the interval is written to the digits of the figure itself. */
    private void end(String name, OptionalDouble value) {
        if (value.isPresent()) {
            Unit unit = whole.figure().unit();
            boolean difference = whole.kind() == Evidence.Kind.DIFFERENCE;
            String written = text.number(value.getAsDouble(), FigureText.decimals(whole.figure()), unit, difference);
            byName.put(name, whole.part(Figure.of(value.getAsDouble(), unit), written));
        }
    }

    private void put(String name, OptionalDouble value, Unit unit) {
        if (value.isPresent()) {
            byName.put(name, whole.part(Figure.of(value.getAsDouble(), unit), ""));
        }
    }

    private void put(String name, Figure figure) {
        byName.put(name, whole.part(figure, ""));
    }

    private static OptionalDouble percent(OptionalDouble share) {
        return share.isPresent() ? OptionalDouble.of(share.getAsDouble() * 100) : share;
    }
}
