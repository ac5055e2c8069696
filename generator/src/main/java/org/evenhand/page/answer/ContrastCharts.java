package org.evenhand.page.answer;

import java.util.List;
import java.util.Optional;
import org.evenhand.chart.ComparisonChart;
import org.evenhand.chart.Estimate;
import org.evenhand.chart.Interval;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Verdict;
import org.evenhand.model.Finding;
import org.evenhand.model.MeasurandId;
import org.evenhand.page.view.Address;
import org.evenhand.page.words.ComparisonFigures;
import org.evenhand.page.words.Direction;
import org.evenhand.page.words.Verdicts;
import org.evenhand.statistics.Equivalence;
import org.evenhand.words.Words;

/** Differences of one measurand around zero; all ratios of a study around one. */
final class ContrastCharts {

    private ContrastCharts() {}

    /** Which chart a comparison belongs to: differences share an axis only where they are of one measurand. */
    static String group(Answer answer, ComparisonResult.Contrasted r) {
        return Verdicts.isRatio(r)
                ? "ratios"
                : Address.slug(answer.names().address(r.plan().measurand().orElseThrow()));
    }

    static String title(Answer answer, List<ComparisonResult.Contrasted> many) {
        boolean ratio = Verdicts.isRatio(many.get(0));
        if (many.size() == 1) {
            return answer.words()
                    .say(
                            ratio ? "chart.title-ratio" : "chart.title-difference",
                            answer.names().title(measurand(many)),
                            sides(answer, many.get(0)));
        }
        return ratio
                ? answer.words().say("chart.ratios")
                : answer.words().say("chart.differences", answer.names().title(measurand(many)));
    }

    private static String sides(Answer answer, ComparisonResult.Contrasted r) {
        return answer.words()
                .say(
                        "chart.against",
                        answer.names().level(r.plan().level().orElseThrow()),
                        answer.names().level(r.plan().against().orElseThrow()));
    }

    static String source(Answer answer, List<ComparisonResult.Contrasted> many) {
        return answer.words().say(Verdicts.isRatio(many.get(0)) ? "chart.axis-logarithmic" : "chart.line-at-zero");
    }

    static ComparisonChart figure(Answer answer, List<ComparisonResult.Contrasted> many) {
        boolean ratio = Verdicts.isRatio(many.get(0));
        List<ComparisonChart.Comparison> rows =
                many.stream().map(r -> row(answer, r, ratio)).toList();
        boolean shown = rows.stream().anyMatch(r -> r.estimate().isPresent());
        boolean bands = rows.stream().anyMatch(r -> r.sameWithin().isPresent());
        Words words = answer.words();
        Direction direction = new Verdicts(answer.names()).direction(many.get(0));
        boolean oneKind = many.stream()
                .allMatch(r -> new Verdicts(answer.names()).direction(r).equals(direction));
        ComparisonChart.Sides sides = !shown
                ? new ComparisonChart.Sides("", "")
                : oneKind
                        ? new ComparisonChart.Sides(direction.less(), direction.more())
                        : new ComparisonChart.Sides(words.say("chart.smaller"), words.say("chart.larger"));
        return new ComparisonChart(
                ratio ? words.say("chart.axis-ratio") : axis(answer, many),
                ratio,
                rows,
                sides,
                shown ? words.say(ratio ? "chart.ratio-interval" : "chart.difference-interval") : "",
                bands ? words.say("chart.counts-as-same") : "");
    }

    private static String axis(Answer answer, List<ComparisonResult.Contrasted> many) {
        String unit = many.get(0).unit().symbol();
        return answer.words().say("chart.axis-difference", answer.names().title(measurand(many)))
                + (unit.equals("1") ? "" : " (" + unit + ")");
    }

    private static MeasurandId measurand(List<ComparisonResult.Contrasted> many) {
        return many.get(0).plan().measurand().orElseThrow();
    }

    private static ComparisonChart.Comparison row(Answer answer, ComparisonResult.Contrasted r, boolean ratio) {
        String label = ratio ? answer.names().subject(r.plan()) : sides(answer, r);
        if (answer.isRefused(r)) {
            String why = answer.refusals(r).stream()
                    .map(Finding::message)
                    .findFirst()
                    .orElse("");
            return new ComparisonChart.Comparison(
                    label,
                    Optional.empty(),
                    Optional.empty(),
                    why,
                    answer.words().say("chart.not-comparable"),
                    answer.worst(answer.caveats(r)));
        }
        return new ComparisonChart.Comparison(
                label,
                estimate(r, ratio),
                band(r, ratio),
                figure(answer, r),
                verdict(answer, r),
                answer.worst(answer.caveats(r)));
    }

    private static String figure(Answer answer, ComparisonResult.Contrasted r) {
        String figure = ComparisonFigures.of(r, answer.words()).withUnit();
        return figure.isEmpty() ? r.why().stream().findFirst().orElse("") : figure;
    }

    private static Optional<Estimate> estimate(ComparisonResult.Contrasted r, boolean ratio) {
        if (r.estimate().isEmpty() || ratio && !(r.estimate().getAsDouble() > 0)) {
            return Optional.empty();
        }
        double value = r.estimate().getAsDouble();
        return r.interval()
                .filter(i -> !ratio || i.low() > 0)
                .map(i -> Estimate.of(value, i.low(), i.high()))
                .or(() -> Optional.of(Estimate.alone(value)));
    }

    private static Optional<Interval> band(ComparisonResult.Contrasted r, boolean ratio) {
        if (r.margin().isEmpty()) {
            return Optional.empty();
        }
        double margin = r.margin().getAsDouble();
        if (!ratio) {
            return Optional.of(new Interval(-margin, margin));
        }
        org.evenhand.statistics.Interval limits = Equivalence.ratioMargin(margin);
        return Optional.of(new Interval(limits.low(), limits.high()));
    }

    private static String verdict(Answer answer, ComparisonResult.Contrasted r) {
        Verdict verdict = answer.verdict(r).orElse(Verdict.NOT_SHOWN);
        return switch (verdict) {
            case DIFFERS ->
                new Verdicts(answer.names())
                        .direction(r)
                        .of(
                                Verdicts.isRatio(r)
                                        ? r.estimate().orElseThrow() - 1
                                        : r.estimate().orElseThrow());
            case SAME_WITHIN_MARGIN -> answer.words().say("chart.same-within", new Verdicts(answer.names()).margin(r));
            case NOT_SHOWN -> answer.words().say("quote.no-difference");
            case NOT_COMPARABLE -> answer.words().say("quote.not-comparable");
        };
    }
}
