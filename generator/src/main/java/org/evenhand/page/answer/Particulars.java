package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.Link;
import org.evenhand.page.words.Counting;
import org.evenhand.page.words.PValues;
import org.evenhand.page.words.Times;
import org.evenhand.page.words.Verdicts;
import org.evenhand.page.words.Written;
import org.evenhand.quantity.Figures;
import org.evenhand.statistics.Interval;
import org.evenhand.statistics.LineFit;

/** What stands behind a comparison's verdict, for those who ask how. */
final class Particulars {

    private Particulars() {}

    static List<Entry> of(Answer answer, ComparisonResult result) {
        List<Entry> entries = new ArrayList<>();
        entries.add(Entry.of("Behind it", Quotable.n(answer, result)));
        if (result instanceof ComparisonResult.Contrasted r) {
            contrasted(answer, r, entries);
        } else if (result instanceof ComparisonResult.Trend r) {
            trend(answer, r, entries);
        } else if (result instanceof ComparisonResult.Survival r) {
            survival(answer, r, entries);
        } else if (result instanceof ComparisonResult.GeometricMean r) {
            new Verdicts(answer.names())
                    .otherWayRound(r)
                    .ifPresent(o -> entries.add(Entry.of("The other way round", o)));
        } else if (result instanceof ComparisonResult.FailureRate r) {
            entries.add(Entry.of("Watched for", Figures.value(r.timeS() / 3600, 0) + Figures.NO_BREAK_SPACE + "h"));
            entries.add(Entry.of("Failures", Integer.toString(r.events())));
        }
        p(answer, result.p(), "p", entries);
        p(answer, result.pAdjusted(), "p, after Holm", entries);
        entries.add(Entry.of(
                "Quote",
                Link.here(
                        "ready to copy",
                        Quotations.id(Address.comparison(result.plan().id())))));
        return entries;
    }

    private static void contrasted(Answer answer, ComparisonResult.Contrasted r, List<Entry> entries) {
        Verdicts verdicts = new Verdicts(answer.names());
        verdicts.otherWayRound(r).ifPresent(o -> entries.add(Entry.of("The other way round", o)));
        if (r.degreesOfFreedom().isPresent()) {
            entries.add(Entry.of("Degrees of freedom", Budgets.freedom(r.degreesOfFreedom())));
        }
        if (r.margin().isPresent()) {
            entries.add(Entry.of("Margin", verdicts.margin(r)));
        }
        r.equivalence()
                .ifPresent(e -> entries.add(Entry.of(
                        "90" + Figures.NO_BREAK_SPACE + "% interval",
                        Written.of(
                                        r.estimate(),
                                        java.util.Optional.of(e.interval()),
                                        r.unit().symbol(),
                                        answer.words())
                                .interval())));
        if (!verdicts.smallest(r).isEmpty()) {
            entries.add(Entry.of("Smallest that could have shown", verdicts.smallest(r)));
        }
        if (Budgets.has(r)) {
            entries.add(Entry.of(
                    "Uncertainty budget",
                    Link.here(
                            "of the difference",
                            Address.budget(Address.comparison(r.plan().id())))));
        }
    }

    private static void trend(Answer answer, ComparisonResult.Trend r, List<Entry> entries) {
        new Verdicts(answer.names())
                .exponent(r)
                .ifPresent(
                        e -> entries.add(Entry.of("Exponent", e.value() + " (" + e.interval() + "); 1 is proportion")));
        r.line().map(LineFit::intercept).ifPresent(i -> {
            Interval interval = i.interval(0.95);
            entries.add(Entry.of(
                    "Intercept",
                    Written.of(
                                    OptionalDouble.of(i.value()),
                                    java.util.Optional.of(interval),
                                    r.unit().symbol(),
                                    answer.words())
                            .withUncertainty()));
        });
        if (r.efficiency().isPresent()) {
            double efficiency = r.efficiency().getAsDouble();
            entries.add(Entry.of("Scaling efficiency, lowest to highest", Figures.at(efficiency, 2)));
        }
        r.line().ifPresent(l -> {
            if (l.rSquared().isPresent()) {
                entries.add(Entry.of("R²", Figures.value(l.rSquared().getAsDouble(), 0)));
            }
        });
    }

    private static void survival(Answer answer, ComparisonResult.Survival r, List<Entry> entries) {
        for (ComparisonResult.Curve curve : r.levels()) {
            int n = curve.curve().size();
            entries.add(Entry.of(
                    "Median, " + answer.names().level(curve.level()),
                    new Times(answer.names()).median(r, curve) + "; it happened in "
                            + curve.curve().events() + " of " + n + " "
                            + Counting.word(curve.counts(), n, answer.words())));
        }
        r.test()
                .ifPresent(t -> entries.add(Entry.of(
                        "Log-rank test",
                        "χ² = " + Figures.value(t.chiSquared(), 0)
                                + (t.pExact().isPresent() ? ", exact by permutation" : ", by the chi-squared law"))));
    }

    private static void p(Answer answer, OptionalDouble p, String label, List<Entry> entries) {
        if (p.isPresent()) {
            entries.add(Entry.of(label, PValues.of(p.getAsDouble(), answer.words())));
        }
    }
}
