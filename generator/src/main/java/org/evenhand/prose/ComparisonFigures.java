package org.evenhand.prose;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Counts;
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
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.KaplanMeier;
import org.evenhand.words.Words;

/** Turns what comparisons came to into what sentences say. */
final class ComparisonFigures {

    private static final double CONFIDENCE = 0.95;

    private final ResultsFolder folder;
    private final Function<ComparisonResult, Optional<Verdict>> verdict;
    private final FigureText text;
    private final Words words;

    ComparisonFigures(ResultsFolder folder, Function<ComparisonResult, Optional<Verdict>> verdict) {
        this.folder = folder;
        this.verdict = verdict;
        this.text = FigureText.in(StudyResolver.language(folder));
        this.words = text.words();
    }

    Function<ComparisonResult, Optional<Verdict>> verdict() {
        return verdict;
    }

    Evidence of(Study study, ComparisonResult result) {
        if (result instanceof ComparisonResult.Contrasted r) {
            boolean ratio = r.plan().kind() == Comparison.Kind.RATIO;
            String n = r.numbers().pairs()
                    ? "n = " + words.say("figure.count-pair", r.numbers().level())
                    : words.say(
                            "figure.n-and",
                            r.numbers().level(),
                            r.numbers().against(),
                            plural(r.numbers().counts()));
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
                    r.line().isPresent() ? "" : words.say("sentence.no-line"),
                    Evidence.Count.NONE);
        }
        if (result instanceof ComparisonResult.Survival r) {
            List<String> medians =
                    r.levels().stream().map(c -> median(study, c, r.unit())).toList();
            String n = StudyResolver.joined(r.levels().stream()
                    .map(c -> words.say("sentence.n-at", counted(c.curve().size(), c.counts()), c.level()))
                    .toList());
            return evidence(
                    study,
                    result,
                    Kind.TIME_UNTIL,
                    order(r),
                    Optional.empty(),
                    isShown(result),
                    n,
                    words.list(medians),
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
                    counted(r.n(), r.counts()),
                    r.n() == 0 ? words.say("sentence.nothing-counted") : "",
                    new Evidence.Count(r.successes(), r.n()));
        }
        if (result instanceof ComparisonResult.FailureRate r) {
            Figure figure = Figure.of(r.events() == 0 ? OptionalDouble.empty() : r.estimate(), r.interval(), r.unit());
            String hours = words.number(Figures.value(r.timeS() / 3600, 0)) + Figures.NO_BREAK_SPACE + "h";
            String n = words.say("sentence.in-time", r.events(), hours);
            return evidence(
                    study,
                    result,
                    Kind.FAILURE_RATE,
                    figure,
                    Optional.empty(),
                    false,
                    n,
                    r.interval().isPresent() ? "" : words.say("sentence.no-time"),
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
                words.say("sentence.mean-of-ratios", r.plan().of().size()),
                "",
                Evidence.Count.NONE);
    }

    private String counted(int n, Counts counts) {
        return "n = " + words.say(counts == Counts.SPECIMENS ? "figure.count-specimen" : "figure.count-run", n);
    }

    /** What stands behind two numbers, whatever the second is. */
    private String plural(Counts counts) {
        return words.say(counts == Counts.SPECIMENS ? "figure.word-specimen" : "figure.word-run", 2);
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
            String said,
            Evidence.Count count) {
        Comparison plan = result.plan();
        Optional<Measurand> measurand = plan.measurand().map(this::measurand);
        return new Evidence(
                new Target.OfComparison(study.id(), plan.id()),
                kind,
                kind,
                measurand.map(Measurand::title).orElseGet(() -> words.say("sentence.mean-title")),
                plan.measurand().map(StudyResolver::noun).orElse(""),
                measurand.map(Measurand::better).orElse(Better.NEITHER),
                measurand.map(Measurand::unit).orElse(Unit.ONE),
                figure,
                second,
                verdict.apply(result),
                differs,
                plan.sameWithin().map(text::written),
                plan.level().map(l -> side(study, l, plan.against())),
                plan.against().map(a -> side(study, a, plan.level())),
                n,
                said,
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
                ? words.say("sentence.median", text.value(Figure.of(median.getAsDouble(), unit), false), title)
                : words.say("sentence.none-reached", text.value(Figure.of(last(curve.curve()), unit), false), title);
    }
}
