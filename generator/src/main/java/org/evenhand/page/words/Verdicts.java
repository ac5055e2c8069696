package org.evenhand.page.words;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Verdict;
import org.evenhand.model.Comparison;
import org.evenhand.model.Finding;
import org.evenhand.page.Sentence;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Interval;
import org.evenhand.words.Words;

/** What a comparison came to, in a sentence that says no more than its verdict. */
public final class Verdicts {

    private static final String PERCENT = Figures.NO_BREAK_SPACE + "%";

    private final StudyNames names;
    private final Words words;

    public Verdicts(StudyNames names) {
        this.names = names;
        this.words = names.words();
    }

    /**
     * The verdict in words.
     *
     * @param stands the verdict that stands, with refusals
     * @param refusals for which it may not be made
     */
    public String sentence(ComparisonResult result, Optional<Verdict> stands, List<Finding> refusals) {
        if (stands.filter(v -> v == Verdict.NOT_COMPARABLE).isPresent()) {
            return refused(refusals);
        }
        if (result instanceof ComparisonResult.Contrasted r) {
            return contrast(r, stands.orElse(Verdict.NOT_SHOWN));
        }
        if (result instanceof ComparisonResult.Share r) {
            return share(r);
        }
        if (result instanceof ComparisonResult.FailureRate r) {
            return FailureRates.sentence(r, words);
        }
        if (result instanceof ComparisonResult.Survival r) {
            return new Times(names).sentence(r, stands.orElse(Verdict.NOT_SHOWN));
        }
        if (result instanceof ComparisonResult.Trend r) {
            return trend(r, stands.orElse(Verdict.NOT_SHOWN));
        }
        return geometricMean((ComparisonResult.GeometricMean) result, stands.orElse(Verdict.NOT_SHOWN));
    }

    private String refused(List<Finding> refusals) {
        List<String> reasons =
                refusals.stream().map(Finding::message).distinct().toList();
        if (reasons.isEmpty()) {
            return words.say("verdict.refused-part");
        }
        int more = reasons.size() - 1;
        String refused = words.say("verdict.refused", Sentence.closed(reasons.get(0)));
        return more == 0 ? refused : refused + " " + words.say("verdict.more-reasons", more, words.inWords(more));
    }

    private String contrast(ComparisonResult.Contrasted r, Verdict verdict) {
        return switch (verdict) {
            case DIFFERS -> Sentence.of(amount(r));
            case SAME_WITHIN_MARGIN ->
                r.differs()
                        ? words.say("verdict.within-margin", margin(r), Sentence.of(amount(r)))
                        : words.say("verdict.same", margin(r));
            case NOT_SHOWN -> notShown(r);
            case NOT_COMPARABLE -> throw new IllegalStateException("a refused comparison has no amount");
        };
    }

    /** "22.2 % more with spreader than with none", "20.8 K lower with spreader and fan than with spreader". */
    public String amount(ComparisonResult.Contrasted r) {
        return between(
                change(r), r.plan().level().orElseThrow(), r.plan().against().orElseThrow());
    }

    /** "22.2 % more with spreader than with none". */
    private String between(String change, String level, String against) {
        return words.say("verdict.between", change, names.under(level), names.under(against));
    }

    /** "22.2 % more", "20.8 K lower": without sign, which the word carries. */
    public String change(ComparisonResult.Contrasted r) {
        Direction direction = direction(r);
        double estimate = r.estimate().orElseThrow();
        if (isRatio(r)) {
            return Change.of(estimate, r.interval(), direction, words).words();
        }
        Written written = ComparisonFigures.of(r, words);
        return points(written, unsigned(written.value())) + " " + direction.of(estimate);
    }

    /** "20.1 % to 24.4 % more", "19.7 K to 21.8 K lower"; empty if there is no interval. */
    public String changeInterval(ComparisonResult.Contrasted r) {
        Direction direction = direction(r);
        if (r.interval().isEmpty()) {
            return "";
        }
        if (isRatio(r)) {
            return Change.of(r.estimate().orElseThrow(), r.interval(), direction, words)
                    .interval();
        }
        Written written = ComparisonFigures.of(r, words);
        Interval interval = r.interval().get();
        if (interval.contains(0)) {
            return written.interval();
        }
        boolean less = interval.high() < 0;
        String near = unsigned(less ? written.high() : written.low());
        String far = unsigned(less ? written.low() : written.high());
        return words.say("figure.range", points(written, near), points(written, far)) + " "
                + (less ? direction.less() : direction.more());
    }

    private static String unsigned(String number) {
        return number.replace("\u2212", "");
    }

    /** The same pair with the bases exchanged: "18.2 % less with none than with spreader"; nothing for a difference, or where none is shown. */
    public Optional<String> otherWayRound(ComparisonResult.Contrasted r) {
        if (!isRatio(r) || !r.differs() || !(r.estimate().orElse(0) > 0)) {
            return Optional.empty();
        }
        Change inverse = Change.inverse(r.estimate().getAsDouble(), r.interval(), direction(r), words);
        return Optional.of(between(
                inverse.words(),
                r.plan().against().orElseThrow(),
                r.plan().level().orElseThrow()));
    }

    /** The same for a mean of ratios; nothing where none is shown to differ from one. */
    public Optional<String> otherWayRound(ComparisonResult.GeometricMean r) {
        Optional<Comparison> pair = names.pair(r.plan());
        if (pair.isEmpty() || r.interval().isEmpty() || r.interval().get().contains(1)) {
            return Optional.empty();
        }
        Change inverse = Change.inverse(r.estimate().orElseThrow(), r.interval(), Direction.amount(words), words);
        return Optional.of(between(
                inverse.words(),
                pair.get().against().orElseThrow(),
                pair.get().level().orElseThrow()));
    }

    /** What a percentage is of: "energy taken in the soak, with none"; empty for a difference. */
    public String base(ComparisonResult result) {
        if (result instanceof ComparisonResult.GeometricMean r) {
            return names.pair(r.plan())
                    .map(pair -> String.join(", ", r.plan().of()) + ", "
                            + names.under(pair.against().orElseThrow()))
                    .orElse("");
        }
        return result instanceof ComparisonResult.Contrasted r && isRatio(r)
                ? names.title(r.plan().measurand().orElseThrow()) + ", "
                        + names.under(r.plan().against().orElseThrow())
                : "";
    }

    public Direction direction(ComparisonResult.Contrasted r) {
        return Direction.of(names.measurand(r.plan().measurand().orElseThrow()).unit(), words);
    }

    public static boolean isRatio(ComparisonResult result) {
        return result instanceof ComparisonResult.Contrasted r && r.plan().kind() == Comparison.Kind.RATIO;
    }

    /** The margin as it was written; empty if none was stated. */
    public String margin(ComparisonResult.Contrasted r) {
        return r.plan().sameWithin().map(m -> Names.quantity(m, words)).orElse("");
    }

    /** The smallest effect that these runs could have shown: "15 ms", "2.1 %"; empty if unknown. */
    public String smallest(ComparisonResult.Contrasted r) {
        OptionalDouble smallest = r.smallest();
        if (smallest.isEmpty() || !(smallest.getAsDouble() > 0)) {
            return "";
        }
        if (isRatio(r)) {
            return Change.percentOf(smallest.getAsDouble(), words);
        }
        double value = smallest.getAsDouble();
        Written unit = Written.alone(0, r.unit().symbol(), words);
        return points(unit, words.number(Figures.uncertaintyAt(value, Figures.decimals(value))));
    }

    private String notShown(ComparisonResult.Contrasted r) {
        if (r.interval().isEmpty()) {
            return Sentence.of(String.join("; ", r.why()));
        }
        String shown = r.margin().isPresent()
                ? words.say("verdict.neither-shown", margin(r))
                : words.say("verdict.no-difference");
        return shown + " " + words.say("verdict.smallest", smallest(r));
    }

    /** A difference of percentages is in percentage points. */
    private String points(Written written, String number) {
        return written.unit().equals("%")
                ? number + Figures.NO_BREAK_SPACE + words.say("figure.percentage-points")
                : written.withUnit(number);
    }

    private String share(ComparisonResult.Share r) {
        if (r.estimate().isEmpty()) {
            return Sentence.of(String.join("; ", r.why()));
        }
        return words.say(
                "verdict.share",
                r.successes(),
                r.n(),
                Counting.word(r.counts(), r.n(), words),
                ComparisonFigures.of(r, words).interval());
    }

    private String trend(ComparisonResult.Trend r, Verdict verdict) {
        if (r.line().isEmpty()) {
            return Sentence.of(String.join("; ", r.why()));
        }
        if (verdict != Verdict.DIFFERS) {
            return words.say("verdict.no-trend", names.factor());
        }
        Written slope = ComparisonFigures.of(r, words);
        return words.say(
                        slope.value().startsWith("\u2212") ? "verdict.falls" : "verdict.rises",
                        names.factor(),
                        unsigned(slope.withUnit()))
                + exponent(r).map(e -> " " + proportion(e, r)).orElse("");
    }

    /** The exponent of a trend as pages write it. */
    public Optional<Written> exponent(ComparisonResult.Trend r) {
        return r.exponent()
                .map(e -> Written.of(
                        OptionalDouble.of(e.value()), Optional.of(e.interval(0.95)), Unit.ONE.symbol(), words));
    }

    private String proportion(Written exponent, ComparisonResult.Trend r) {
        Interval interval = r.exponent().orElseThrow().interval(0.95);
        String against = interval.contains(1)
                ? "verdict.exponent-of-proportion"
                : interval.high() < 1 ? "verdict.exponent-below-proportion" : "verdict.exponent-above-proportion";
        return words.say(against, exponent.value(), exponent.interval());
    }

    private String geometricMean(ComparisonResult.GeometricMean r, Verdict verdict) {
        if (r.interval().isEmpty()) {
            return Sentence.of(String.join("; ", r.why()));
        }
        String change = Change.of(r.estimate().orElseThrow(), r.interval(), Direction.amount(words), words)
                .words();
        String amount = names.pair(r.plan())
                .map(pair -> between(
                        change, pair.level().orElseThrow(), pair.against().orElseThrow()))
                .orElse(change);
        String said = verdict == Verdict.DIFFERS
                ? words.say(
                        "verdict.geometric-mean",
                        Sentence.capital(amount),
                        r.plan().of().size())
                : words.say("verdict.no-difference");
        return said + " " + words.say("verdict.these-workloads");
    }

    static String percent(double share, Words words) {
        return share < 0.001
                ? words.say("figure.less-than", words.number("0.1") + PERCENT)
                : words.number(Figures.at(100 * share, Figures.decimals(100 * share))) + PERCENT;
    }
}
