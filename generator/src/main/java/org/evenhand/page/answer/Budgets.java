package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Counts;
import org.evenhand.compare.LevelSummary;
import org.evenhand.measure.Contributions;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Budget;
import org.evenhand.page.view.BudgetRow;
import org.evenhand.page.words.Causes;
import org.evenhand.page.words.Counting;
import org.evenhand.page.words.Verdicts;
import org.evenhand.quantity.Figures;
import org.evenhand.statistics.Estimate;

/** Uncertainty budgets: what contributes how much to a figure. */
final class Budgets {

    private static final double CONFIDENCE = LevelSummary.CONFIDENCE;

    /** Nothing but rounding is left of an error that two sides have in common. */
    private static final double CANCELLED = 1e-9;

    private Budgets() {}

    static List<Budget> of(Answer answer) {
        List<Budget> budgets = new ArrayList<>();
        for (ComparisonResult result : answer.evidence().comparisons()) {
            if (result instanceof ComparisonResult.Contrasted r && has(r) && !answer.isRefused(r)) {
                budgets.add(ofDifference(answer, r));
            }
        }
        for (LevelSummary summary : answer.evidence().summaries()) {
            summary.estimate()
                    .filter(e -> e.standardUncertainty() > 0)
                    .ifPresent(e -> budgets.add(ofLevel(answer, summary, e)));
        }
        return budgets;
    }

    static boolean has(ComparisonResult.Contrasted r) {
        return r.difference().filter(d -> d.standardUncertainty() > 0).isPresent();
    }

    private static Budget ofDifference(Answer answer, ComparisonResult.Contrasted r) {
        String subject = answer.names().subject(r.plan());
        String unit = answer.names()
                .measurand(r.plan().measurand().orElseThrow())
                .unit()
                .ofDifference()
                .symbol();
        String repeats = r.numbers().pairs()
                ? "Scatter of " + Counting.of(r.numbers().level(), "pair", answer.words())
                : "Scatter of " + r.numbers().level() + " and " + r.numbers().against() + " "
                        + Counting.word(r.numbers().counts(), r.numbers().against(), answer.words());
        return budget(
                answer,
                Address.comparison(r.plan().id()),
                Verdicts.isRatio(r) ? subject + ", as a difference" : subject,
                unit,
                repeats,
                r.difference().orElseThrow(),
                r.contributions(),
                true);
    }

    private static Budget ofLevel(Answer answer, LevelSummary s, Estimate estimate) {
        String counted = Counting.of(s.n(), s.counts() == Counts.SPECIMENS ? "specimen" : "run", answer.words());
        return budget(
                answer,
                Address.level(s.level(), answer.names().address(s.measurand())),
                answer.names().title(s.measurand()) + ", " + answer.names().level(s.level()),
                s.unit().ofDifference().symbol(),
                "Scatter of " + counted,
                estimate,
                s.contributions(),
                false);
    }

    private static Budget budget(
            Answer answer,
            String evidence,
            String figure,
            String unit,
            String repeats,
            Estimate estimate,
            Contributions contributions,
            boolean difference) {
        double combined = estimate.standardUncertainty();
        double expanded = estimate.expandedUncertainty(CONFIDENCE);
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(
                repeats, "A", "Student t", estimate.typeA(), OptionalDouble.of(estimate.degreesOfFreedom()), ""));
        parts.addAll(typeB(answer, contributions, combined, difference));
        parts.sort(Comparator.comparingDouble((Part p) -> -p.uncertainty()).thenComparing(Part::source));
        int decimals = Figures.decimals(combined);
        return new Budget(
                Address.budget(evidence),
                figure,
                unit.equals("1") ? "" : unit,
                parts.stream().map(p -> p.row(combined, decimals + 1)).toList(),
                Figures.uncertaintyAt(combined, decimals),
                freedom(estimate.effectiveDegreesOfFreedom()),
                Figures.at(expanded / combined, 2),
                Figures.uncertaintyAt(expanded, Figures.decimals(expanded)));
    }

    /** Causes that are one run's alone are put together by the cause. */
    private static List<Part> typeB(Answer answer, Contributions contributions, double combined, boolean difference) {
        Map<String, Double> squares = new TreeMap<>();
        Map<String, Integer> numbers = new TreeMap<>();
        contributions.byCause().forEach((cause, u) -> {
            String name = Causes.withoutRun(cause) + (Causes.isOfOneRun(cause) ? "\n" : "");
            squares.merge(name, u * u, Double::sum);
            numbers.merge(name, 1, Integer::sum);
        });
        List<Part> parts = new ArrayList<>();
        squares.forEach((name, square) -> {
            boolean own = name.endsWith("\n");
            double u = Math.sqrt(square);
            boolean cancels = difference && !own && u < CANCELLED * combined;
            String note = own
                    ? "independent in " + Counting.of(numbers.get(name), "run", answer.words())
                    : cancels ? "common to both sides: cancels" : difference ? common(name) : "";
            parts.add(new Part(
                    Causes.words(name.strip(), answer.folder().instruments(), answer.words()),
                    "B",
                    name.contains("as stated") ? "normal, k = 2" : "rectangular",
                    cancels ? 0 : u,
                    OptionalDouble.empty(),
                    note));
        });
        return parts;
    }

    private static String common(String cause) {
        return cause.endsWith(" gain") ? "one instrument on both sides scales with the difference" : "";
    }

    /** Degrees of freedom, fractional; ∞ where nothing limits them. */
    static String freedom(OptionalDouble freedom) {
        if (freedom.isEmpty()) {
            return "∞";
        }
        double value = freedom.getAsDouble();
        return value >= 1000 ? "> 1000" : value == Math.rint(value) ? Figures.at(value, 0) : Figures.at(value, 1);
    }

    private record Part(
            String source, String type, String distribution, double uncertainty, OptionalDouble freedom, String note) {

        BudgetRow row(double combined, int decimals) {
            double share = 100 * (uncertainty / combined) * (uncertainty / combined);
            String percent = share > 0 && share < 0.1
                    ? "<" + Figures.NO_BREAK_SPACE + "0.1"
                    : Figures.at(share, share >= 99.95 || share == 0 ? 0 : 1);
            double shown = StrictMath.pow(10, -decimals) / 2;
            String u = uncertainty == 0
                    ? "0"
                    : uncertainty < shown
                            ? "<" + Figures.NO_BREAK_SPACE
                                    + Figures.at(StrictMath.pow(10, -decimals), Math.max(0, decimals))
                            : Figures.uncertaintyAt(uncertainty, decimals);
            return new BudgetRow(
                    source,
                    type,
                    distribution,
                    u,
                    Budgets.freedom(freedom),
                    percent + Figures.NO_BREAK_SPACE + "%",
                    note);
        }
    }
}
