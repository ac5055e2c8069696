package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.chart.Interval;
import org.evenhand.chart.TrendChart;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Counts;
import org.evenhand.compare.LevelSummary;
import org.evenhand.page.words.Names;
import org.evenhand.statistics.LineFit;
import org.evenhand.words.Words;

/** A measurand over a numeric factor. */
final class TrendCharts {

    /** Enough for the band to look round. */
    private static final int PLACES = 24;

    private TrendCharts() {}

    static TrendChart figure(Answer answer, ComparisonResult.Trend r) {
        List<TrendChart.Point> points =
                r.points().stream().map(p -> new TrendChart.Point(p.x(), p.y())).toList();
        double low =
                r.points().stream().mapToDouble(ComparisonResult.Point::x).min().orElseThrow();
        double high =
                r.points().stream().mapToDouble(ComparisonResult.Point::x).max().orElseThrow();
        List<TrendChart.FitPoint> fit = new ArrayList<>();
        r.line().ifPresent(line -> {
            for (int i = 0; i <= PLACES; i++) {
                fit.add(place(line, low + (high - low) * i / PLACES));
            }
        });
        Optional<Double> proportional = r.exponent().isPresent() ? slopeFrom(r, low) : Optional.empty();
        boolean specimens = answer.evidence().summaries().stream()
                .filter(s -> r.plan().measurand().filter(s.measurand()::equals).isPresent())
                .anyMatch(s -> s.counts() == Counts.SPECIMENS);
        Words words = answer.words();
        return new TrendChart(
                Names.label(answer.study().factor()) + unit(r.factorUnit().symbol()),
                answer.names().title(r.plan().measurand().orElseThrow())
                        + unit(r.unit().symbol()),
                points,
                fit,
                proportional,
                new TrendChart.Means(
                        words.say(specimens ? "chart.one-specimen" : "chart.one-run"),
                        fit.isEmpty() ? "" : words.say("chart.fitted-line"),
                        fit.isEmpty() ? "" : words.say("chart.band"),
                        proportional.isPresent() ? words.say("chart.in-proportion") : ""));
    }

    static String source(Answer answer, ComparisonResult.Trend r) {
        return r.line().isPresent() ? answer.words().say("chart.band-of-line") : "";
    }

    private static TrendChart.FitPoint place(LineFit line, double x) {
        var y = line.at(x);
        var interval = y.interval(LevelSummary.CONFIDENCE);
        return new TrendChart.FitPoint(x, y.value(), Optional.of(new Interval(interval.low(), interval.high())));
    }

    /** Slope of the line through the origin and the mean at the lowest place. */
    private static Optional<Double> slopeFrom(ComparisonResult.Trend r, double low) {
        return Optional.of(r.points().stream()
                        .filter(p -> p.x() == low)
                        .mapToDouble(ComparisonResult.Point::y)
                        .average()
                        .orElseThrow()
                / low);
    }

    private static String unit(String symbol) {
        return symbol.equals("1") ? "" : " (" + symbol + ")";
    }
}
