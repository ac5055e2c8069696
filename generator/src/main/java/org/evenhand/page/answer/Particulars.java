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
import org.evenhand.words.Words;

/** What stands behind a comparison's verdict, for those who ask how. */
final class Particulars {

    private Particulars() {}

    static List<Entry> of(Answer answer, ComparisonResult result) {
        Words words = answer.words();
        List<Entry> entries = new ArrayList<>();
        entries.add(Entry.of(words.say("particular.behind"), Quotable.n(answer, result)));
        if (result instanceof ComparisonResult.Contrasted r) {
            contrasted(answer, r, entries);
        } else if (result instanceof ComparisonResult.Trend r) {
            trend(answer, r, entries);
        } else if (result instanceof ComparisonResult.Survival r) {
            survival(answer, r, entries);
        } else if (result instanceof ComparisonResult.GeometricMean r) {
            new Verdicts(answer.names())
                    .otherWayRound(r)
                    .ifPresent(o -> entries.add(Entry.of(answer.words().say("particular.other-way"), o)));
        } else if (result instanceof ComparisonResult.FailureRate r) {
            entries.add(Entry.of(
                    words.say("particular.watched"),
                    words.number(Figures.value(r.timeS() / 3600, 0)) + Figures.NO_BREAK_SPACE + "h"));
            entries.add(Entry.of(words.say("particular.failures"), Integer.toString(r.events())));
        }
        p(answer, result.p(), words.say("particular.p"), entries);
        p(answer, result.pAdjusted(), words.say("particular.p-holm"), entries);
        entries.add(Entry.of(
                words.say("particular.quote"),
                Link.here(
                        words.say("particular.ready"),
                        Quotations.id(Address.comparison(result.plan().id())))));
        return entries;
    }

    private static void contrasted(Answer answer, ComparisonResult.Contrasted r, List<Entry> entries) {
        Words words = answer.words();
        Verdicts verdicts = new Verdicts(answer.names());
        verdicts.otherWayRound(r)
                .ifPresent(o -> entries.add(Entry.of(answer.words().say("particular.other-way"), o)));
        if (r.degreesOfFreedom().isPresent()) {
            entries.add(Entry.of(words.say("answer.freedom"), Budgets.freedom(r.degreesOfFreedom(), words)));
        }
        if (r.margin().isPresent()) {
            entries.add(Entry.of(words.say("particular.margin"), verdicts.margin(r)));
        }
        r.equivalence()
                .ifPresent(e -> entries.add(Entry.of(
                        words.say("answer.interval", "90" + Figures.NO_BREAK_SPACE + "%"),
                        Written.of(
                                        r.estimate(),
                                        java.util.Optional.of(e.interval()),
                                        r.unit().symbol(),
                                        answer.words())
                                .interval())));
        if (!verdicts.smallest(r).isEmpty()) {
            entries.add(Entry.of(words.say("particular.smallest"), verdicts.smallest(r)));
        }
        if (Budgets.has(r)) {
            entries.add(Entry.of(
                    words.say("particular.budget"),
                    Link.here(
                            words.say("particular.of-difference"),
                            Address.budget(Address.comparison(r.plan().id())))));
        }
    }

    private static void trend(Answer answer, ComparisonResult.Trend r, List<Entry> entries) {
        Words words = answer.words();
        new Verdicts(answer.names())
                .exponent(r)
                .ifPresent(e -> entries.add(Entry.of(
                        words.say("particular.exponent"),
                        words.say("particular.exponent-is", e.value(), e.interval()))));
        r.line().map(LineFit::intercept).ifPresent(i -> {
            Interval interval = i.interval(0.95);
            entries.add(Entry.of(
                    words.say("particular.intercept"),
                    Written.of(
                                    OptionalDouble.of(i.value()),
                                    java.util.Optional.of(interval),
                                    r.unit().symbol(),
                                    answer.words())
                            .withUncertainty()));
        });
        if (r.efficiency().isPresent()) {
            double efficiency = r.efficiency().getAsDouble();
            entries.add(Entry.of(words.say("particular.efficiency"), words.number(Figures.at(efficiency, 2))));
        }
        r.line().ifPresent(l -> {
            if (l.rSquared().isPresent()) {
                entries.add(
                        Entry.of("R²", words.number(Figures.value(l.rSquared().getAsDouble(), 0))));
            }
        });
    }

    private static void survival(Answer answer, ComparisonResult.Survival r, List<Entry> entries) {
        Words words = answer.words();
        for (ComparisonResult.Curve curve : r.levels()) {
            int n = curve.curve().size();
            entries.add(Entry.of(
                    words.say("particular.median", answer.names().level(curve.level())),
                    words.say(
                            "particular.median-of",
                            new Times(answer.names()).median(r, curve),
                            curve.curve().events(),
                            n,
                            Counting.word(curve.counts(), n, words))));
        }
        r.test()
                .ifPresent(t -> entries.add(Entry.of(
                        words.say("particular.log-rank"),
                        words.say(
                                t.pExact().isPresent() ? "particular.exact" : "particular.chi-squared",
                                words.number(Figures.value(t.chiSquared(), 0))))));
    }

    private static void p(Answer answer, OptionalDouble p, String label, List<Entry> entries) {
        if (p.isPresent()) {
            entries.add(Entry.of(label, PValues.of(p.getAsDouble(), answer.words())));
        }
    }
}
