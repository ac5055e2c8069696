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

/** What a comparison came to, in a sentence that says no more than its verdict. */
public final class Verdicts {

    private static final Direction MORE_OR_LESS = new Direction("more", "less");
    private static final String PERCENT = Figures.NO_BREAK_SPACE + "%";

    private final StudyNames names;

    public Verdicts(StudyNames names) {
        this.names = names;
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
            return FailureRates.sentence(r);
        }
        if (result instanceof ComparisonResult.Survival r) {
            return new Times(names).sentence(r, stands.orElse(Verdict.NOT_SHOWN));
        }
        if (result instanceof ComparisonResult.Trend r) {
            return trend(r, stands.orElse(Verdict.NOT_SHOWN));
        }
        return geometricMean((ComparisonResult.GeometricMean) result, stands.orElse(Verdict.NOT_SHOWN));
    }

    private static String refused(List<Finding> refusals) {
        List<String> reasons =
                refusals.stream().map(Finding::message).distinct().toList();
        if (reasons.isEmpty()) {
            return "Refused, because a comparison that it is made of was refused.";
        }
        int more = reasons.size() - 1;
        String others = more == 0
                ? ""
                : more == 1 ? " There is one more reason." : " There are " + Counting.inWords(more) + " more reasons.";
        return "Refused: " + uncapped(Sentence.of(reasons.get(0))) + others;
    }

    private String contrast(ComparisonResult.Contrasted r, Verdict verdict) {
        return switch (verdict) {
            case DIFFERS -> Sentence.of(amount(r));
            case SAME_WITHIN_MARGIN ->
                r.differs()
                        ? "Differs, but by less than the margin of " + margin(r) + ": " + Sentence.of(amount(r))
                        : "The same within the margin of " + margin(r) + ".";
            case NOT_SHOWN -> notShown(r);
            case NOT_COMPARABLE -> throw new IllegalStateException("a refused comparison has no amount");
        };
    }

    /** "22.2 % more with spreader than with none", "20.8 K lower with spreader and fan than with spreader". */
    public String amount(ComparisonResult.Contrasted r) {
        return change(r) + sides(r.plan());
    }

    /** " with spreader than with none". */
    private String sides(Comparison pair) {
        return " " + names.under(pair.level().orElseThrow()) + " than "
                + names.under(pair.against().orElseThrow());
    }

    /** "22.2 % more", "20.8 K lower": without sign, which the word carries. */
    public String change(ComparisonResult.Contrasted r) {
        Direction words = direction(r);
        double estimate = r.estimate().orElseThrow();
        if (isRatio(r)) {
            return Change.of(estimate, r.interval(), words).words();
        }
        Written written = ComparisonFigures.of(r);
        return points(written, unsigned(written.value())) + " " + words.of(estimate);
    }

    /** "20.1 % to 24.4 % more", "19.7 K to 21.8 K lower"; empty if there is no interval. */
    public String changeInterval(ComparisonResult.Contrasted r) {
        Direction words = direction(r);
        if (r.interval().isEmpty()) {
            return "";
        }
        if (isRatio(r)) {
            return Change.of(r.estimate().orElseThrow(), r.interval(), words).interval();
        }
        Written written = ComparisonFigures.of(r);
        Interval interval = r.interval().get();
        if (interval.contains(0)) {
            return written.interval();
        }
        boolean less = interval.high() < 0;
        String near = unsigned(less ? written.high() : written.low());
        String far = unsigned(less ? written.low() : written.high());
        return points(written, near) + " to " + points(written, far) + " " + (less ? words.less() : words.more());
    }

    private static String unsigned(String number) {
        return number.replace("\u2212", "");
    }

    /** The same pair with the bases exchanged: "18.2 % less with none than with spreader"; nothing for a difference, or where none is shown. */
    public Optional<String> otherWayRound(ComparisonResult.Contrasted r) {
        if (!isRatio(r) || !r.differs() || !(r.estimate().orElse(0) > 0)) {
            return Optional.empty();
        }
        Change inverse = Change.inverse(r.estimate().getAsDouble(), r.interval(), direction(r));
        return Optional.of(
                inverse.words() + " " + names.under(r.plan().against().orElseThrow()) + " than "
                        + names.under(r.plan().level().orElseThrow()));
    }

    /** The same for a mean of ratios; nothing where none is shown to differ from one. */
    public Optional<String> otherWayRound(ComparisonResult.GeometricMean r) {
        Optional<Comparison> pair = names.pair(r.plan());
        if (pair.isEmpty() || r.interval().isEmpty() || r.interval().get().contains(1)) {
            return Optional.empty();
        }
        Change inverse = Change.inverse(r.estimate().orElseThrow(), r.interval(), MORE_OR_LESS);
        return Optional.of(
                inverse.words() + " " + names.under(pair.get().against().orElseThrow()) + " than "
                        + names.under(pair.get().level().orElseThrow()));
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
        return Direction.of(names.measurand(r.plan().measurand().orElseThrow()).unit());
    }

    public static boolean isRatio(ComparisonResult result) {
        return result instanceof ComparisonResult.Contrasted r && r.plan().kind() == Comparison.Kind.RATIO;
    }

    /** The margin as it was written; empty if none was stated. */
    public static String margin(ComparisonResult.Contrasted r) {
        return r.plan().sameWithin().map(Names::quantity).orElse("");
    }

    /** The smallest effect that these runs could have shown: "15 ms", "2.1 %"; empty if unknown. */
    public static String smallest(ComparisonResult.Contrasted r) {
        OptionalDouble smallest = r.smallest();
        if (smallest.isEmpty() || !(smallest.getAsDouble() > 0)) {
            return "";
        }
        if (isRatio(r)) {
            return Change.percentOf(smallest.getAsDouble());
        }
        double value = smallest.getAsDouble();
        Written unit = Written.alone(0, r.unit().symbol());
        return points(unit, Figures.uncertaintyAt(value, Figures.decimals(value)));
    }

    private static String notShown(ComparisonResult.Contrasted r) {
        if (r.interval().isEmpty()) {
            return Sentence.of(String.join("; ", r.why()));
        }
        String margin = r.margin().isPresent() ? ", nor that they are the same within " + margin(r) : "";
        return "No difference shown" + margin + ". The smallest that these runs could have shown is " + smallest(r)
                + ".";
    }

    /** A difference of percentages is in percentage points. */
    private static String points(Written written, String number) {
        return written.unit().equals("%")
                ? number + Figures.NO_BREAK_SPACE + "percentage points"
                : written.withUnit(number);
    }

    private static String share(ComparisonResult.Share r) {
        if (r.estimate().isEmpty()) {
            return Sentence.of(String.join("; ", r.why()));
        }
        Written written = ComparisonFigures.of(r);
        return r.successes() + " of " + r.n() + " " + Counting.word(r.counts(), r.n()) + ", which allows a share of "
                + written.interval() + ".";
    }

    private String trend(ComparisonResult.Trend r, Verdict verdict) {
        if (r.line().isEmpty()) {
            return Sentence.of(String.join("; ", r.why()));
        }
        if (verdict != Verdict.DIFFERS) {
            return "No trend over " + names.factor() + " shown.";
        }
        Written slope = ComparisonFigures.of(r);
        String rises = slope.value().startsWith("\u2212") ? "Falls" : "Rises";
        return rises + " with " + names.factor() + ", by " + slope.withUnit().replace("\u2212", "") + "."
                + exponent(r).map(e -> " " + proportion(e, r)).orElse("");
    }

    /** The exponent of a trend as pages write it. */
    public static Optional<Written> exponent(ComparisonResult.Trend r) {
        return r.exponent()
                .map(e -> Written.of(OptionalDouble.of(e.value()), Optional.of(e.interval(0.95)), Unit.ONE.symbol()));
    }

    private static String proportion(Written exponent, ComparisonResult.Trend r) {
        Interval interval = r.exponent().orElseThrow().interval(0.95);
        String against = interval.contains(1)
                ? "which does not exclude proportion (an exponent of 1)."
                : interval.high() < 1
                        ? "less than in proportion, which would be 1."
                        : "more than in proportion, which would be 1.";
        return "The exponent is " + exponent.value() + " (" + exponent.interval() + "): " + against;
    }

    private String geometricMean(ComparisonResult.GeometricMean r, Verdict verdict) {
        if (r.interval().isEmpty()) {
            return Sentence.of(String.join("; ", r.why()));
        }
        Change change = Change.of(r.estimate().orElseThrow(), r.interval(), MORE_OR_LESS);
        String said = verdict == Verdict.DIFFERS
                ? Sentence.of(
                        change.words() + names.pair(r.plan()).map(this::sides).orElse("")
                                + ", in the geometric mean of " + r.plan().of().size() + " ratios")
                : "No difference shown.";
        return said + " It speaks for these workloads only.";
    }

    private static String uncapped(String sentence) {
        return sentence.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + sentence.substring(1);
    }

    static String percent(double share) {
        return share < 0.001
                ? "less than 0.1" + PERCENT
                : Figures.at(100 * share, Figures.decimals(100 * share)) + PERCENT;
    }
}
