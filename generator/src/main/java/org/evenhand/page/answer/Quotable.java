package org.evenhand.page.answer;

import java.util.List;
import java.util.Optional;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.Verdict;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.words.ComparisonFigures;
import org.evenhand.page.words.Counting;
import org.evenhand.page.words.LevelFigures;
import org.evenhand.page.words.Times;
import org.evenhand.page.words.Verdicts;
import org.evenhand.page.words.Written;
import org.evenhand.quantity.Figures;
import org.evenhand.words.Words;

/**
 * A piece of evidence with everything that it must not be quoted without.
 *
 * @param id on the page
 * @param subject what it is of
 * @param figure with its unit, and with its direction where it is a percentage
 * @param interval "95 % interval 1 K to 2 K"; empty if there is none
 * @param n how many stand behind it
 * @param base of a percentage; empty if it has none
 * @param about what the claim is about: the measurand where the claim names both sides itself, else the subject
 * @param claim the figure as it is quoted: "22.2 % more with spreader than with none"
 * @param further the verdict in a sentence; empty where the claim says it, and for a level
 * @param caveat the worst; empty if there is none
 */
record Quotable(
        String id,
        String subject,
        String figure,
        String interval,
        String n,
        String base,
        String about,
        String claim,
        String further,
        String caveat) {

    static final String CONFIDENCE = "95" + Figures.NO_BREAK_SPACE + "%";

    static Quotable of(Answer answer, LevelSummary summary) {
        Written written = LevelFigures.of(summary, answer.words());
        String subject = answer.names().title(summary.measurand()) + ", "
                + answer.names().under(summary.level());
        String figure = written.isAbsent() ? LevelFigures.label(summary, answer.words()) : written.withUnit();
        return new Quotable(
                Address.level(summary.level(), answer.names().address(summary.measurand())),
                subject,
                figure,
                interval(answer, written),
                Counting.n(summary.n(), summary.counts(), summary.runs().size(), answer.words()),
                "",
                subject,
                figure,
                "",
                worst(answer, answer.caveats(summary)));
    }

    static Quotable of(Answer answer, ComparisonResult result) {
        Verdicts verdicts = new Verdicts(answer.names());
        boolean refused = answer.isRefused(result);
        String subject = answer.names().subject(result.plan());
        String figure = refused ? answer.words().say("quote.not-comparable") : figure(answer, result);
        return new Quotable(
                Address.comparison(result.plan().id()),
                subject,
                figure,
                refused ? "" : interval(answer, result, verdicts),
                n(answer, result),
                refused || !hasDirection(result) ? "" : verdicts.base(result),
                refused ? subject : about(answer, result, subject),
                refused ? figure : claim(answer, result, verdicts, figure),
                refused ? answer.sentence(result) : further(answer, result),
                worst(answer, answer.caveats(result)));
    }

    /** A contrast says more or less only where a difference is shown. */
    private static boolean hasDirection(ComparisonResult result) {
        return !(result instanceof ComparisonResult.Contrasted r) || r.differs();
    }

    private static String about(Answer answer, ComparisonResult result, String subject) {
        return result instanceof ComparisonResult.Contrasted r && r.differs()
                ? answer.names().title(r.plan().measurand().orElseThrow())
                : subject;
    }

    private static String claim(Answer answer, ComparisonResult result, Verdicts verdicts, String figure) {
        if (result instanceof ComparisonResult.Contrasted r && r.differs()) {
            boolean same =
                    r.verdict().filter(v -> v == Verdict.SAME_WITHIN_MARGIN).isPresent();
            return same
                    ? answer.words().say("quote.within-margin", verdicts.margin(r), verdicts.amount(r))
                    : verdicts.amount(r);
        }
        return figure;
    }

    private static String further(Answer answer, ComparisonResult result) {
        if (result instanceof ComparisonResult.Contrasted r) {
            String smallest = new Verdicts(answer.names()).smallest(r);
            boolean notShown = r.verdict().filter(v -> v == Verdict.NOT_SHOWN).isPresent();
            return notShown && !smallest.isEmpty()
                    ? answer.words().say("verdict.smallest", smallest)
                    : r.interval().isEmpty() ? answer.sentence(result) : "";
        }
        return result instanceof ComparisonResult.Share ? "" : answer.sentence(result);
    }

    private static String figure(Answer answer, ComparisonResult result) {
        Words words = answer.words();
        if (result instanceof ComparisonResult.Contrasted r && !r.differs()) {
            return r.verdict().filter(v -> v == Verdict.SAME_WITHIN_MARGIN).isPresent()
                    ? words.say("quote.same", new Verdicts(answer.names()).margin(r))
                    : words.say("quote.no-difference");
        }
        if (result instanceof ComparisonResult.Contrasted r) {
            return new Verdicts(answer.names()).change(r);
        }
        if (result instanceof ComparisonResult.Share r) {
            return r.n() == 0 ? words.say("quote.no-reading") : words.say("quote.of", r.successes(), r.n());
        }
        Optional<Written> exponent = exponent(answer, result);
        if (exponent.isPresent()) {
            return words.say("quote.exponent", exponent.get().value());
        }
        Written written = ComparisonFigures.of(result, answer.words());
        if (result instanceof ComparisonResult.FailureRate r && r.events() == 0 && written.hasInterval()) {
            return words.say("quote.at-most", written.withUnit(written.high()));
        }
        if (result instanceof ComparisonResult.Survival r && !r.levels().isEmpty()) {
            ComparisonResult.Curve curve = r.levels().get(0);
            return words.say("quote.median", new Times(answer.names()).median(r, curve));
        }
        return written.isAbsent() ? words.say("quote.no-figure") : written.withUnit();
    }

    private static String interval(Answer answer, ComparisonResult result, Verdicts verdicts) {
        if (result instanceof ComparisonResult.Contrasted r && !r.differs()) {
            Written written = ComparisonFigures.of(r, answer.words());
            String name = Verdicts.isRatio(r) ? "quote.ratio" : "quote.difference";
            return written.hasInterval()
                    ? answer.words().say(name, written.withUnit(), CONFIDENCE, written.interval())
                    : "";
        }
        if (result instanceof ComparisonResult.Contrasted r) {
            return answer.words().say("quote.interval", CONFIDENCE, verdicts.changeInterval(r));
        }
        if (result instanceof ComparisonResult.FailureRate r && r.events() == 0) {
            return answer.words().say("quote.one-sided", CONFIDENCE);
        }
        Written written = exponent(answer, result).orElse(ComparisonFigures.of(result, answer.words()));
        return interval(answer, written);
    }

    private static String interval(Answer answer, Written written) {
        return written.hasInterval() ? answer.words().say("quote.interval", CONFIDENCE, written.interval()) : "";
    }

    /** What a trend is known by, where the factor has a true zero: 1 is proportion. */
    private static Optional<Written> exponent(Answer answer, ComparisonResult result) {
        return result instanceof ComparisonResult.Trend r ? new Verdicts(answer.names()).exponent(r) : Optional.empty();
    }

    static String n(Answer answer, ComparisonResult result) {
        int runs = answer.behind(result).size();
        if (result instanceof ComparisonResult.Contrasted r) {
            return Counting.n(r.numbers(), answer.words());
        }
        if (result instanceof ComparisonResult.Share r) {
            return Counting.n(r.n(), r.counts(), r.n(), answer.words());
        }
        if (result instanceof ComparisonResult.Trend r) {
            long levels = r.points().stream()
                    .map(ComparisonResult.Point::x)
                    .distinct()
                    .count();
            return answer.words()
                    .say(
                            "quote.values-at-levels",
                            Counting.of(r.points().size(), "value", answer.words()),
                            Counting.of(levels, "level", answer.words()));
        }
        if (result instanceof ComparisonResult.Survival r && r.levels().size() == 2) {
            return Counting.n(
                    new ComparisonResult.Numbers(
                            r.levels().get(0).curve().size(),
                            r.levels().get(1).curve().size(),
                            r.levels().get(1).counts(),
                            false),
                    answer.words());
        }
        return runs == 0
                ? "n = " + Counting.of(result.plan().of().size(), "ratio", answer.words())
                : "n = " + Counting.of(runs, "run", answer.words());
    }

    private static String worst(Answer answer, List<Caveat> caveats) {
        if (!caveats.isEmpty()) {
            return caveats.get(0).text();
        }
        List<String> own = answer.authorsCaveats();
        return own.isEmpty() ? "" : own.get(0);
    }
}
