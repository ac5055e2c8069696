package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.chart.SurvivalChart;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Counts;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.KaplanMeier;

/** Times until an event as step curves. */
final class TimeCharts {

    private static final Unit SECOND = Unit.of("s");

    private TimeCharts() {}

    /** Nothing where no level has a time, or the measurand does not count in a unit of time. */
    static Optional<SurvivalChart> figure(Answer answer, ComparisonResult.Survival r) {
        if (r.levels().isEmpty() || !r.unit().convertsTo(SECOND)) {
            return Optional.empty();
        }
        List<SurvivalChart.Curve> curves =
                r.levels().stream().map(c -> curve(answer, r, c)).toList();
        double toS =
                curves.stream().mapToDouble(SurvivalChart.Curve::endS).max().orElseThrow();
        boolean specimens = r.levels().stream().anyMatch(c -> c.counts() == Counts.SPECIMENS);
        return toS > 0
                ? Optional.of(new SurvivalChart(
                        answer.words().say(specimens ? "chart.not-yet-specimen" : "chart.not-yet-run"),
                        answer.words().say("chart.time-from-start"),
                        toS,
                        curves,
                        answer.words().say("chart.watching-ended")))
                : Optional.empty();
    }

    private static SurvivalChart.Curve curve(Answer answer, ComparisonResult.Survival r, ComparisonResult.Curve c) {
        List<SurvivalChart.Step> steps = new ArrayList<>();
        List<Double> censored = new ArrayList<>();
        double end = 0;
        for (KaplanMeier.Step step : c.curve().steps()) {
            double timeS = r.unit().to(SECOND).fast().apply(step.time());
            end = Math.max(end, timeS);
            if (step.events() > 0) {
                steps.add(new SurvivalChart.Step(timeS, step.survival()));
            }
            for (int i = 0; i < step.censored(); i++) {
                censored.add(timeS);
            }
        }
        return new SurvivalChart.Curve(answer.names().level(c.level()), steps, censored, end);
    }
}
