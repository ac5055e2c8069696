package org.evenhand.page.answer;

import java.util.List;
import java.util.Optional;
import org.evenhand.chart.Figure;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;

/** The chart that shows one piece of evidence; none where a drawing would show nothing. */
final class QuotedCharts {

    private QuotedCharts() {}

    static Optional<Figure> of(Answer answer, ComparisonResult result) {
        if (answer.isRefused(result)) {
            return Optional.empty();
        }
        if (result instanceof ComparisonResult.Contrasted r) {
            return Optional.of(ContrastCharts.figure(answer, List.of(r)))
                    .filter(chart ->
                            chart.rows().stream().anyMatch(row -> row.estimate().isPresent()))
                    .map(Figure.class::cast);
        }
        if (result instanceof ComparisonResult.Trend r && !r.points().isEmpty()) {
            return Optional.of(TrendCharts.figure(answer, r));
        }
        if (result instanceof ComparisonResult.Survival r) {
            return TimeCharts.figure(answer, r).map(Figure.class::cast);
        }
        if (result instanceof ComparisonResult.Share r && r.n() > 0) {
            return Optional.of(CountCharts.shares(answer, List.of(r)));
        }
        if (result instanceof ComparisonResult.FailureRate r && r.interval().isPresent()) {
            return Optional.of(CountCharts.rates(answer, List.of(r)));
        }
        return Optional.empty();
    }

    /** A level among the others of its measurand, as the page draws them. */
    static Optional<Figure> of(LevelSummary summary, List<DrawnChart> charts, Answer answer) {
        String name = ChartFigures.name(answer, summary.measurand());
        return charts.stream()
                .filter(chart -> chart.name().equals(name))
                .findFirst()
                .map(DrawnChart::figure);
    }
}
