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
import org.evenhand.page.words.Names;
import org.evenhand.page.words.Verdicts;
import org.evenhand.quantity.Figures;
import org.evenhand.statistics.Estimate;
import org.evenhand.words.Words;

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
        Words words = answer.words();
        String subject = answer.names().subject(r.plan());
        String unit = answer.names()
                .measurand(r.plan().measurand().orElseThrow())
                .unit()
                .ofDifference()
                .symbol();
        String repeats = r.numbers().pairs()
                ? words.say("budget.scatter", Counting.of(r.numbers().level(), "pair", words))
                : words.say(
                        "budget.scatter-of-two",
                        r.numbers().level(),
                        r.numbers().against(),
                        Counting.word(r.numbers().counts(), r.numbers().against(), words));
        return budget(
                answer,
                Address.comparison(r.plan().id()),
                Verdicts.isRatio(r) ? words.say("budget.as-difference", subject) : subject,
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
                answer.words()
                        .say(
                                "budget.figure",
                                answer.names().title(s.measurand()),
                                answer.names().level(s.level())),
                s.unit().ofDifference().symbol(),
                answer.words().say("budget.scatter", counted),
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
        Words words = answer.words();
        double combined = estimate.standardUncertainty();
        double expanded = estimate.expandedUncertainty(CONFIDENCE);
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(
                repeats,
                "A",
                words.say("budget.student"),
                estimate.typeA(),
                OptionalDouble.of(estimate.degreesOfFreedom()),
                ""));
        parts.addAll(typeB(answer, contributions, combined, difference));
        parts.sort(Comparator.comparingDouble((Part p) -> -p.uncertainty()).thenComparing(Part::source));
        int decimals = Figures.decimals(combined);
        return new Budget(
                Address.budget(evidence),
                figure,
                unit.equals("1") ? "" : Names.unit(unit, words),
                parts.stream().map(p -> p.row(combined, decimals + 1, words)).toList(),
                words.number(Figures.uncertaintyAt(combined, decimals)),
                freedom(estimate.effectiveDegreesOfFreedom(), words),
                words.number(Figures.at(expanded / combined, 2)),
                words.number(Figures.uncertaintyAt(expanded, Figures.decimals(expanded))));
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
        Words words = answer.words();
        List<Part> parts = new ArrayList<>();
        squares.forEach((name, square) -> {
            boolean own = name.endsWith("\n");
            double u = Math.sqrt(square);
            boolean cancels = difference && !own && u < CANCELLED * combined;
            String note = own
                    ? words.say("budget.independent", Counting.of(numbers.get(name), "run", words))
                    : cancels ? words.say("budget.cancels") : difference ? common(name, words) : "";
            parts.add(new Part(
                    Causes.words(name.strip(), answer.folder().instruments(), answer.words()),
                    "B",
                    words.say(name.contains("as stated") ? "budget.normal" : "budget.rectangular"),
                    cancels ? 0 : u,
                    OptionalDouble.empty(),
                    note));
        });
        return parts;
    }

    private static String common(String cause, Words words) {
        return cause.endsWith(" gain") ? words.say("budget.scales") : "";
    }

    /** Degrees of freedom, fractional; ∞ where nothing limits them. */
    static String freedom(OptionalDouble freedom, Words words) {
        if (freedom.isEmpty()) {
            return "∞";
        }
        double value = freedom.getAsDouble();
        return value >= 1000 ? "> 1000" : words.number(Figures.at(value, value == Math.rint(value) ? 0 : 1));
    }

    private record Part(
            String source, String type, String distribution, double uncertainty, OptionalDouble freedom, String note) {

        BudgetRow row(double combined, int decimals, Words words) {
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
                    words.number(u),
                    Budgets.freedom(freedom, words),
                    words.number(percent) + Figures.NO_BREAK_SPACE + "%",
                    note);
        }
    }
}
