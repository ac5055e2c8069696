package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.Verdict;
import org.evenhand.model.MeasurandId;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.ComparisonRow;
import org.evenhand.page.view.ComparisonTable;
import org.evenhand.page.view.SummaryRow;
import org.evenhand.page.view.SummaryTable;
import org.evenhand.page.words.ComparisonFigures;
import org.evenhand.page.words.Counting;
import org.evenhand.page.words.LevelFigures;
import org.evenhand.page.words.Verdicts;
import org.evenhand.page.words.Written;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.UnitKind;
import org.evenhand.statistics.Estimate;
import org.evenhand.words.Words;

/** The evidence tables: absolute figures first, then comparisons. */
final class Tables {

    private Tables() {}

    static List<SummaryTable> summaries(Answer answer) {
        List<SummaryTable> tables = new ArrayList<>();
        for (MeasurandId id : answer.study().measurands()) {
            List<LevelSummary> ofMeasurand = answer.evidence().summaries().stream()
                    .filter(s -> s.measurand().equals(id))
                    .toList();
            if (ofMeasurand.stream().anyMatch(s -> s.n() > 0)) {
                tables.add(table(answer, id, ofMeasurand));
            }
        }
        return tables;
    }

    private static SummaryTable table(Answer answer, MeasurandId id, List<LevelSummary> levels) {
        boolean numeric = answer.names().measurand(id).isNumeric();
        String unit = answer.names().measurand(id).unit().symbol();
        return new SummaryTable(
                "summary." + Address.slug(answer.names().address(id)),
                answer.names().title(id),
                unit.equals("1") ? "" : unit,
                numeric ? statistic(levels, answer.words()) : answer.words().say("table.words"),
                numeric ? Quotable.CONFIDENCE : "",
                levels.stream()
                        .flatMap(s -> Stream.concat(
                                Stream.of(row(answer, s)),
                                s.median().isPresent() ? Stream.of(median(answer, s)) : Stream.empty()))
                        .toList());
    }

    private static String statistic(List<LevelSummary> levels, Words words) {
        if (levels.stream().allMatch(s -> s.n() <= 1)) {
            return words.say("table.single");
        }
        boolean specimens = levels.stream().anyMatch(s -> s.counts() == org.evenhand.compare.Counts.SPECIMENS);
        boolean censored = levels.stream().anyMatch(s -> s.censored() > 0);
        boolean interval = levels.stream().anyMatch(s -> s.interval().isPresent());
        boolean energetic = levels.stream().allMatch(s -> s.unit().kind() == UnitKind.LEVEL);
        String mean = (energetic ? "table.energetic-" : "table.mean-") + (specimens ? "specimens" : "runs");
        return words.say(mean)
                + (interval ? " " + words.say("table.expanded") : "")
                + (censored ? " " + words.say("table.cut-off") : "");
    }

    private static SummaryRow row(Answer answer, LevelSummary s) {
        Written written = LevelFigures.of(s, answer.words());
        return new SummaryRow(
                Address.level(s.level(), answer.names().address(s.measurand())),
                answer.names().level(s.level()),
                Integer.toString(s.n()),
                Counting.word(s.counts(), s.n(), answer.words()),
                LevelFigures.value(s, answer.words()),
                written.expanded(),
                written.low(),
                written.high(),
                standard(s.estimate().map(Estimate::typeA), s, answer.words()),
                standard(optional(EvidenceTables.typeB(s)), s, answer.words()),
                answer.origin(answer.behind(s)),
                answer.links(answer.behind(s)),
                answer.caveats(s));
    }

    /** The median stands under the mean; no expanded uncertainty belongs to it, and no part of it is the instruments'. */
    private static SummaryRow median(Answer answer, LevelSummary s) {
        Written written = Written.of(s.median(), s.medianInterval(), s.unit().symbol(), answer.words());
        return new SummaryRow(
                Address.level(s.level(), answer.names().address(s.measurand())) + ".median",
                answer.words().say("table.median", answer.names().level(s.level())),
                Integer.toString(s.n()),
                Counting.word(s.counts(), s.n(), answer.words()),
                written.value(),
                "",
                written.low(),
                written.high(),
                "",
                "",
                answer.origin(answer.behind(s)),
                List.of(),
                answer.caveats(s));
    }

    static Optional<Double> optional(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    /**
     * A standard uncertainty: two significant digits; nothing where none is known. What lies two places below the figure's
     * own uncertainty is only said to be smaller.
     */
    private static String standard(Optional<Double> uncertainty, LevelSummary summary, Words words) {
        if (uncertainty.filter(u -> u > 0).isEmpty()) {
            return "";
        }
        double u = uncertainty.get();
        int decimals = Figures.decimals(u);
        int least =
                summary.interval().map(i -> Figures.decimals(i.halfWidth()) + 2).orElse(decimals);
        return words.number(
                decimals <= least
                        ? Figures.uncertaintyAt(u, decimals)
                        : "<" + Figures.NO_BREAK_SPACE + Figures.at(StrictMath.pow(10, -least), Math.max(0, least)));
    }

    static ComparisonTable comparisons(Answer answer) {
        return new ComparisonTable(
                Quotable.CONFIDENCE,
                decisionRule(answer),
                answer.evidence().comparisons().stream()
                        .map(c -> row(answer, c))
                        .toList());
    }

    /** A ratio says so where others have their unit. */
    private static String unit(Answer answer, ComparisonResult result, boolean refused, Written written) {
        if (refused || written.isAbsent()) {
            return "";
        }
        return Verdicts.isRatio(result) || result instanceof ComparisonResult.GeometricMean
                ? answer.words().say("table.ratio")
                : written.unit();
    }

    private static String decisionRule(Answer answer) {
        long tests = answer.evidence().comparisons().stream()
                .filter(c -> c.p().isPresent())
                .count();
        boolean margin = answer.evidence().comparisons().stream()
                .anyMatch(c -> c.plan().sameWithin().isPresent());
        Words words = answer.words();
        String differs = tests == 0
                ? ""
                : tests == 1 ? words.say("table.differs-one") : words.say("table.differs-several", tests);
        return (differs + (margin ? " " + words.say("table.same") : "")).strip();
    }

    private static ComparisonRow row(Answer answer, ComparisonResult result) {
        boolean refused = answer.isRefused(result);
        Written written = ComparisonFigures.of(result, answer.words());
        return new ComparisonRow(
                Address.comparison(result.plan().id()),
                answer.names().subject(result.plan()),
                refused ? "" : written.value(),
                unit(answer, result, refused, written),
                refused ? "" : written.low(),
                refused ? "" : written.high(),
                answer.verdict(result).map(Verdict::word).orElse(""),
                answer.sentence(result),
                refused ? "" : new Verdicts(answer.names()).base(result),
                refused ? List.of() : Particulars.of(answer, result),
                answer.links(answer.behind(result)),
                answer.caveats(result));
    }
}
