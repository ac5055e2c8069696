package org.evenhand.page.answer;

import java.util.List;
import java.util.Optional;
import org.evenhand.chart.Estimate;
import org.evenhand.chart.Interval;
import org.evenhand.chart.LevelChart;
import org.evenhand.chart.ProportionChart;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.page.words.ComparisonFigures;
import org.evenhand.page.words.Counting;
import org.evenhand.page.words.Written;

/** Shares and rates of failure. */
final class CountCharts {

    private CountCharts() {}

    static String sharesTitle(Answer answer, List<ComparisonResult.Share> shares) {
        return answer.words()
                .say(
                        "chart.share-title",
                        answer.names().title(shares.get(0).plan().measurand().orElseThrow()));
    }

    static ProportionChart shares(Answer answer, List<ComparisonResult.Share> shares) {
        List<ProportionChart.Group> groups = shares.stream()
                .filter(s -> s.n() > 0)
                .map(s -> new ProportionChart.Group(
                        answer.names().level(s.plan().level().orElseThrow()),
                        s.successes(),
                        s.n(),
                        new Interval(
                                s.interval().orElseThrow().low(),
                                s.interval().orElseThrow().high()),
                        answer.words().say("quote.of", s.successes(), s.n()),
                        answer.worst(answer.caveats(s))))
                .toList();
        String counts = Counting.noun(shares.get(0).counts());
        return new ProportionChart(
                answer.words().say("chart.share-axis-" + counts),
                groups,
                answer.words().say("chart.share-interval"));
    }

    static String ratesTitle(Answer answer, List<ComparisonResult.FailureRate> rates) {
        return answer.words()
                .say(
                        "chart.rate-title",
                        answer.names().title(rates.get(0).plan().measurand().orElseThrow()));
    }

    /** Several chances at one level are one rate, drawn once. */
    static LevelChart rates(Answer answer, List<ComparisonResult.FailureRate> rates) {
        List<LevelChart.Level> rows = rates.stream()
                .filter(r -> r.interval().isPresent())
                .map(r -> row(answer, r))
                .distinct()
                .toList();
        boolean none = rates.stream().allMatch(r -> r.events() == 0);
        return new LevelChart(
                answer.words().say("chart.rate-axis"),
                rows,
                "",
                answer.words().say(none ? "chart.rate-none" : "chart.rate-interval"));
    }

    private static LevelChart.Level row(Answer answer, ComparisonResult.FailureRate r) {
        Written rate = ComparisonFigures.of(r, answer.words());
        var interval = r.interval().orElseThrow();
        return new LevelChart.Level(
                answer.names().level(r.plan().level().orElseThrow()),
                List.of(),
                Optional.of(Estimate.of(r.estimate().orElseThrow(), interval.low(), interval.high())),
                r.events() == 0
                        ? answer.words().say("quote.at-most", rate.withUnit(rate.high()))
                        : rate.withUncertainty(),
                answer.worst(answer.caveats(r)));
    }
}
