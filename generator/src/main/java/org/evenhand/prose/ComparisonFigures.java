package org.evenhand.prose;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Verdict;
import org.evenhand.model.Better;
import org.evenhand.model.Comparison;
import org.evenhand.model.Item;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Study;
import org.evenhand.prose.Evidence.Kind;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.KaplanMeier;

/** Turns what comparisons came to into what sentences say. */
final class ComparisonFigures {

    private static final double CONFIDENCE = 0.95;

    private final ResultsFolder folder;
    private final Function<ComparisonResult, Optional<Verdict>> verdict;

    ComparisonFigures(ResultsFolder folder, Function<ComparisonResult, Optional<Verdict>> verdict) {
        this.folder = folder;
        this.verdict = verdict;
    }

    Function<ComparisonResult, Optional<Verdict>> verdict() {
        return verdict;
    }

    Evidence of(Study study, ComparisonResult result) {
        if (result instanceof ComparisonResult.Contrasted r) {
            boolean ratio = r.plan().kind() == Comparison.Kind.RATIO;
            String n = r.numbers().pairs()
                    ? "n = " + r.numbers().level() + " pairs"
                    : "n = " + r.numbers().level() + " and " + r.numbers().against() + " "
                            + r.numbers().counts().word();
            Figure figure = Figure.of(r.estimate(), r.interval(), r.unit());
            return evidence(
                    study,
                    result,
                    ratio ? Kind.RATIO : Kind.DIFFERENCE,
                    figure,
                    Optional.empty(),
                    r.differs(),
                    n,
                    "",
                    Evidence.Count.NONE);
        }
        if (result instanceof ComparisonResult.Trend r) {
            Unit unit = FigureText.slopeUnit(r.unit(), r.factorUnit());
            Figure slope = r.line().map(l -> figure(l.slope(), unit)).orElse(Figure.none(unit));
            return evidence(
                    study,
                    result,
                    Kind.TREND,
                    slope,
                    r.exponent().map(e -> figure(e, Unit.ONE)),
                    isShown(result),
                    "n = " + r.points().size(),
                    r.line().isPresent() ? "" : "no line",
                    Evidence.Count.NONE);
        }
        if (result instanceof ComparisonResult.Survival r) {
            List<String> medians =
                    r.levels().stream().map(c -> median(study, c, r.unit())).toList();
            String n = StudyResolver.joined(r.levels().stream()
                    .map(c -> StudyResolver.counted(c.curve().size(), c.counts().word()) + " at " + c.level())
                    .toList());
            return evidence(
                    study,
                    result,
                    Kind.TIME_UNTIL,
                    order(r),
                    Optional.empty(),
                    isShown(result),
                    n,
                    String.join(" and ", medians),
                    Evidence.Count.NONE);
        }
        if (result instanceof ComparisonResult.Share r) {
            Figure figure = Figure.of(r.estimate(), r.interval(), Unit.ONE);
            return evidence(
                    study,
                    result,
                    Kind.SHARE,
                    figure,
                    Optional.empty(),
                    false,
                    StudyResolver.counted(r.n(), r.counts().word()),
                    r.n() == 0 ? "nothing was counted" : "",
                    new Evidence.Count(r.successes(), r.n()));
        }
        if (result instanceof ComparisonResult.FailureRate r) {
            Figure figure = Figure.of(r.events() == 0 ? OptionalDouble.empty() : r.estimate(), r.interval(), r.unit());
            String n = r.events() + " in " + Figures.value(r.timeS() / 3600, 0) + Figures.NO_BREAK_SPACE + "h";
            return evidence(
                    study,
                    result,
                    Kind.FAILURE_RATE,
                    figure,
                    Optional.empty(),
                    false,
                    n,
                    r.interval().isPresent() ? "" : "no time was observed",
                    new Evidence.Count(r.events(), r.events()));
        }
        ComparisonResult.GeometricMean r = (ComparisonResult.GeometricMean) result;
        Figure figure = Figure.of(r.estimate(), r.interval(), Unit.ONE);
        return evidence(
                study,
                result,
                Kind.RATIO,
                figure,
                Optional.empty(),
                isShown(result),
                "geometric mean of " + r.plan().of().size() + " ratios",
                "",
                Evidence.Count.NONE);
    }

    private boolean isShown(ComparisonResult result) {
        return result.verdict().filter(v -> v == Verdict.DIFFERS).isPresent();
    }

    private Evidence evidence(
            Study study,
            ComparisonResult result,
            Kind kind,
            Figure figure,
            Optional<Figure> second,
            boolean differs,
            String n,
            String words,
            Evidence.Count count) {
        Comparison plan = result.plan();
        Optional<Measurand> measurand = plan.measurand().map(this::measurand);
        return new Evidence(
                new Target.OfComparison(study.id(), plan.id()),
                kind,
                kind,
                measurand.map(Measurand::title).orElse("Geometric mean of ratios"),
                plan.measurand().map(StudyResolver::noun).orElse(""),
                measurand.map(Measurand::better).orElse(Better.NEITHER),
                measurand.map(Measurand::unit).orElse(Unit.ONE),
                figure,
                second,
                verdict.apply(result),
                differs,
                plan.sameWithin().map(ComparisonFigures::written),
                plan.level().map(l -> side(study, l, plan.against())),
                plan.against().map(a -> side(study, a, plan.level())),
                n,
                words,
                count);
    }

    private Measurand measurand(MeasurandId id) {
        return folder.methods().get(id.method()).measurands().get(id.measurand());
    }

    private Side side(Study study, String level, Optional<String> other) {
        Optional<String> name = study.factor().equals("item")
                ? Optional.ofNullable(folder.items().get(level)).map(Item::name)
                : Optional.empty();
        return Side.of(level, other, name);
    }

    static String written(Quantity quantity) {
        String number = quantity.value().stripTrailingZeros().toPlainString().replace('-', '\u2212');
        String spread = quantity.expandedUncertainty()
                .map(u -> Figures.NO_BREAK_SPACE + "±" + Figures.NO_BREAK_SPACE + u.toPlainString())
                .orElse("");
        return Figures.withUnit(number + spread, quantity.unit());
    }

    private static Figure figure(Estimate estimate, Unit unit) {
        return Figure.of(OptionalDouble.of(estimate.value()), Optional.of(estimate.interval(CONFIDENCE)), unit);
    }

    /** The difference of the medians, where it has a sign: a median that was not reached is later than one that was. */
    private static Figure order(ComparisonResult.Survival survival) {
        if (survival.levels().size() < 2) {
            return Figure.none(survival.unit());
        }
        OptionalDouble level = survival.levels().get(0).curve().median();
        OptionalDouble against = survival.levels().get(1).curve().median();
        if (level.isPresent() && against.isPresent()) {
            return Figure.of(level.getAsDouble() - against.getAsDouble(), survival.unit());
        }
        if (against.isPresent()) {
            double last = last(survival.levels().get(0).curve());
            return Figure.atLeast(last - against.getAsDouble(), survival.unit());
        }
        return level.isPresent()
                ? Figure.atMost(
                        level.getAsDouble() - last(survival.levels().get(1).curve()), survival.unit())
                : Figure.none(survival.unit());
    }

    static double last(KaplanMeier curve) {
        return curve.steps().get(curve.steps().size() - 1).time();
    }

    private String median(Study study, ComparisonResult.Curve curve, Unit unit) {
        String title = side(study, curve.level(), Optional.empty()).title();
        OptionalDouble median = curve.curve().median();
        return median.isPresent()
                ? "a median of " + FigureText.value(Figure.of(median.getAsDouble(), unit), false) + " for " + title
                : "none reached within " + FigureText.value(Figure.of(last(curve.curve()), unit), false) + " for "
                        + title;
    }
}
