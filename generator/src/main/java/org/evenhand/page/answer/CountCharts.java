package org.evenhand.page.answer;

import java.util.List;
import java.util.Optional;
import org.evenhand.chart.Estimate;
import org.evenhand.chart.Interval;
import org.evenhand.chart.LevelChart;
import org.evenhand.chart.ProportionChart;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.page.words.ComparisonFigures;
import org.evenhand.page.words.Written;

/** Shares and rates of failure. */
final class CountCharts {

    private CountCharts() {}

    static String sharesTitle(Answer answer, List<ComparisonResult.Share> shares) {
        return answer.names().title(shares.get(0).plan().measurand().orElseThrow()) + ", share";
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
                        s.successes() + " of " + s.n(),
                        Answer.worst(answer.caveats(s))))
                .toList();
        String counts = shares.get(0).counts().word();
        return new ProportionChart("Share of " + counts + " (%)", groups, "share with exact 95\u00a0% interval");
    }

    static String ratesTitle(Answer answer, List<ComparisonResult.FailureRate> rates) {
        return answer.names().title(rates.get(0).plan().measurand().orElseThrow()) + ", rate";
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
                "Failures for each hour watched (1/h)",
                rows,
                "",
                none ? "none seen; up to the one-sided 95\u00a0% bound" : "rate with 95\u00a0% interval");
    }

    private static LevelChart.Level row(Answer answer, ComparisonResult.FailureRate r) {
        Written rate = ComparisonFigures.of(r, answer.words());
        var interval = r.interval().orElseThrow();
        return new LevelChart.Level(
                answer.names().level(r.plan().level().orElseThrow()),
                List.of(),
                Optional.of(Estimate.of(r.estimate().orElseThrow(), interval.low(), interval.high())),
                r.events() == 0 ? "at most " + rate.withUnit(rate.high()) : rate.withUncertainty(),
                Answer.worst(answer.caveats(r)));
    }
}
