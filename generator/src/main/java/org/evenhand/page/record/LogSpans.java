package org.evenhand.page.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.chart.LogChart;
import org.evenhand.log.ThinSeries;
import org.evenhand.model.Condition;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Run;
import org.evenhand.model.Threshold;
import org.evenhand.page.words.Names;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.words.Words;

/**
 * The stretches of a log in which a condition of the method holds: "throttled".
 *
 * @param spans in the order of time
 * @param meaning the condition in words
 * @param tooFast whether it comes and goes faster than what is left of a thinned log can tell, so that there are no spans
 */
record LogSpans(List<LogChart.Span> spans, String meaning, boolean tooFast) {

    private static final LogSpans NONE = new LogSpans(List.of(), "", false);
    /** At most one change of sides in so many points of a thinned log can be told from its extremes alone. */
    private static final int POINTS_PER_CHANGE = 8;

    private static final Unit SECOND = Unit.of("s");

    /** Parts of the whole that are too short to be told apart in a drawing. */
    private static final double FINEST = 600;

    /**
     * Of the first measurand that asks for the share of time during which a condition holds, else of the first that
     * waits for one. Where samples were thinned, ends are as uncertain as the thinning is coarse.
     */
    static LogSpans of(Run run, Method method, Map<String, ThinSeries> series, Words words) {
        Optional<Condition> condition = method.measurands().values().stream()
                .map(Measurand::reduction)
                .filter(Reduction.Share.class::isInstance)
                .map(r -> ((Reduction.Share) r).condition())
                .findFirst()
                .or(() -> method.measurands().values().stream()
                        .map(Measurand::reduction)
                        .filter(Reduction.TimeUntil.class::isInstance)
                        .map(r -> ((Reduction.TimeUntil) r).condition())
                        .findFirst());
        return condition.map(c -> of(run, method, series, c, words)).orElse(NONE);
    }

    private static LogSpans of(
            Run run, Method method, Map<String, ThinSeries> series, Condition condition, Words words) {
        ThinSeries column = series.get(condition.column());
        Unit unit = method.records().get(condition.column());
        if (column == null || unit == null || column.size() < 2) {
            return NONE;
        }
        OptionalDouble threshold = threshold(run, condition.threshold(), unit);
        if (threshold.isEmpty()) {
            return NONE;
        }
        double dwellS = condition.dwell().map(d -> d.in(SECOND)).orElse(0.0);
        List<LogChart.Span> exact = raw(column, condition.below(), threshold.getAsDouble());
        boolean tooFast = column.isThinned() && 2L * exact.size() * POINTS_PER_CHANGE > column.size();
        double wholeS = column.timeS(column.size() - 1) - column.timeS(0);
        List<LogChart.Span> spans = joined(tooFast ? List.of() : exact, wholeS / FINEST);
        spans.removeIf(span -> span.toS() - span.fromS() < dwellS);
        double at = threshold.getAsDouble();
        String meaning = words.say(
                condition.below() ? "log.below" : "log.above",
                Names.setting(condition.column()),
                Figures.withUnit(words.number(Figures.at(at, Figures.decimalsAlone(at))), unit));
        return new LogSpans(List.copyOf(spans), meaning, tooFast);
    }

    private static OptionalDouble threshold(Run run, Threshold threshold, Unit unit) {
        try {
            if (threshold instanceof Threshold.Fixed fixed) {
                return OptionalDouble.of(fixed.quantity().in(unit));
            }
            Threshold.OfSetting ofSetting = (Threshold.OfSetting) threshold;
            String stated = run.settings().get(ofSetting.setting());
            return stated == null
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Quantity.parse(stated, unit).in(unit)
                            * ofSetting.times().doubleValue());
        } catch (MisreadException notAQuantity) {
            return OptionalDouble.empty(); // measuring has made a finding of it
        }
    }

    private static List<LogChart.Span> raw(ThinSeries series, boolean below, double threshold) {
        List<LogChart.Span> spans = new ArrayList<>();
        double begun = Double.NaN;
        int gap = 0;
        for (int i = 0; i < series.size(); i++) {
            double timeS = series.timeS(i);
            while (gap < series.gaps().size() && series.gaps().get(gap).toS() <= timeS) {
                // Nothing is known of a gap: a stretch ends with the last sample before it.
                if (begun <= series.gaps().get(gap).fromS()) {
                    spans.add(new LogChart.Span(begun, series.gaps().get(gap).fromS()));
                    begun = Double.NaN;
                }
                gap++;
            }
            boolean holds = below ? series.value(i) < threshold : series.value(i) > threshold;
            if (holds && Double.isNaN(begun)) {
                begun = timeS;
            } else if (!holds && begun <= timeS) {
                spans.add(new LogChart.Span(begun, timeS));
                begun = Double.NaN;
            }
        }
        double endS = series.timeS(series.size() - 1);
        if (begun < endS) {
            spans.add(new LogChart.Span(begun, endS));
        }
        return spans;
    }

    private static List<LogChart.Span> joined(List<LogChart.Span> spans, double finestS) {
        List<LogChart.Span> joined = new ArrayList<>();
        for (LogChart.Span span : spans) {
            int last = joined.size() - 1;
            if (last >= 0 && span.fromS() - joined.get(last).toS() < finestS) {
                joined.set(last, new LogChart.Span(joined.get(last).fromS(), span.toS()));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }
}
