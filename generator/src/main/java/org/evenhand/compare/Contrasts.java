package org.evenhand.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.measure.Contributions;
import org.evenhand.model.Comparison;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Contrast;
import org.evenhand.statistics.Equivalence;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.IndependentMeans;
import org.evenhand.statistics.Interval;
import org.evenhand.statistics.PairedMeans;
import org.evenhand.statistics.Sample;
import org.evenhand.words.Words;

/**
 * Differences and ratios of two levels.
 *
 * <p>Source of the definitions: docs/methods.md, "Comparisons". Whether it differs is left open here, since that depends on
 * the study's other comparisons; see {@link Multiplicity}.
 */
final class Contrasts {

    private static final double CONFIDENCE = 0.95;
    private static final double EQUIVALENCE_ALPHA = 0.05;

    private Contrasts() {}

    static ComparisonResult.Contrasted of(Comparison plan, Measurand measurand, List<LevelRun> runs, Words words) {
        MeasurandId id = plan.measurand().orElseThrow();
        String level = plan.level().orElseThrow();
        String against = plan.against().orElseThrow();
        boolean ratio = plan.kind() == Comparison.Kind.RATIO;
        Reasons why = new Reasons(words);
        LevelValues x;
        LevelValues y;
        Optional<? extends Contrast> contrast;
        if (plan.pairedBy().isPresent()) {
            String by = plan.pairedBy().get();
            Pairs pairs = Pairs.of(LevelValues.paired(runs, level, id, by), LevelValues.paired(runs, against, id, by));
            x = pairs.x();
            y = pairs.y();
            contrast = paired(x, y, by, why);
        } else {
            x = LevelValues.of(runs, level, id);
            y = LevelValues.of(runs, against, id);
            contrast = independent(x, level, y, against, why);
        }
        OptionalDouble estimate = plan.pairedBy().isPresent()
                ? estimate(ofSample(x), ofSample(y), ratio)
                : estimate(x.centre(), y.centre(), ratio);
        Optional<Estimate> difference = contrast.flatMap(Contrast::difference);
        if (contrast.isPresent() && difference.isEmpty()) {
            why.add("compare.all-equal");
        }
        Optional<Interval> interval = ratio
                ? contrast.flatMap(c -> c.ratioInterval(CONFIDENCE))
                : difference.map(d -> d.interval(CONFIDENCE));
        if (ratio && difference.isPresent() && interval.isEmpty()) {
            why.add("compare.base-near-zero");
            estimate = OptionalDouble.empty();
        }
        OptionalDouble margin = margin(plan, measurand, ratio);
        Optional<Equivalence> equivalence =
                margin.isEmpty() ? Optional.empty() : equivalence(contrast, difference, margin.getAsDouble(), ratio);
        return new ComparisonResult.Contrasted(
                plan,
                ratio ? Unit.ONE : measurand.unit().ofDifference(),
                Optional.of(Verdict.NOT_SHOWN),
                false,
                why.list(),
                estimate,
                interval,
                difference.map(Estimate::effectiveDegreesOfFreedom).orElse(OptionalDouble.empty()),
                interval.isPresent()
                        ? difference.map(d -> d.pTwoSided(0)).orElse(OptionalDouble.empty())
                        : OptionalDouble.empty(),
                OptionalDouble.empty(),
                margin,
                equivalence,
                smallest(ratio, contrast, difference, interval),
                difference,
                interval.isPresent() ? contrast.flatMap(Contrast::logRatio) : Optional.empty(),
                x.contributions().minus(y.contributions()),
                new ComparisonResult.Numbers(
                        x.units().size(),
                        y.units().size(),
                        x.counts(),
                        plan.pairedBy().isPresent()));
    }

    private static Optional<IndependentMeans> independent(
            LevelValues x, String level, LevelValues y, String against, Reasons why) {
        boolean complete = isComplete(x, level, why) & isComplete(y, against, why);
        if (!complete) {
            return Optional.empty();
        }
        return x.mean()
                .flatMap(left -> y.mean()
                        .map(right -> new IndependentMeans(
                                left,
                                right,
                                covariance(x.contributions(), y.contributions(), left.typeB() * right.typeB()))));
    }

    private static Optional<PairedMeans> paired(LevelValues x, LevelValues y, String by, Reasons why) {
        if (x.units().size() < 2) {
            why.add("compare.few-pairs", x.units().size(), by);
            return Optional.empty();
        }
        if (x.censored() > 0 || y.censored() > 0) {
            why.add("compare.some-censored");
            return Optional.empty();
        }
        if (x.atMost() > 0 || y.atMost() > 0) {
            why.add("compare.some-at-most");
            return Optional.empty();
        }
        Contributions ofX = x.contributions();
        Contributions ofY = y.contributions();
        return PairedMeans.of(Sample.of(x.values()), Sample.of(y.values()))
                .map(p -> p.withTypeB(
                        ofX.combined(), ofY.combined(), covariance(ofX, ofY, ofX.combined() * ofY.combined())));
    }

    private static boolean isComplete(LevelValues values, String level, Reasons why) {
        if (values.isEmpty()) {
            why.add("compare.no-value", level);
        } else if (values.censored() > 0) {
            why.add("compare.censored", level, values.censored(), values.units().size());
        } else if (values.atMost() > 0) {
            why.add("compare.at-most", level, values.atMost(), values.units().size());
        } else if (values.units().size() < 2) {
            why.add("compare.single-value", level);
        } else {
            return true;
        }
        return false;
    }

    /** Causes that both sides share are fully correlated. Rounding must not make the covariance exceed what the two uncertainties allow. */
    private static double covariance(Contributions x, Contributions y, double most) {
        double sum = 0;
        for (Map.Entry<String, Double> cause : x.byCause().entrySet()) {
            sum += cause.getValue() * y.byCause().getOrDefault(cause.getKey(), 0.0);
        }
        return Math.max(-most, Math.min(most, sum));
    }

    /** Of pairs the differences are averaged, which of decibels too is a plain mean: they are ratios on a log scale. */
    private static OptionalDouble ofSample(LevelValues values) {
        return values.sample().map(s -> OptionalDouble.of(s.mean())).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble estimate(OptionalDouble x, OptionalDouble y, boolean ratio) {
        if (x.isEmpty() || y.isEmpty()) {
            return OptionalDouble.empty();
        }
        double value = ratio ? x.getAsDouble() / y.getAsDouble() : x.getAsDouble() - y.getAsDouble();
        return Math.abs(value) <= Double.MAX_VALUE ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static OptionalDouble margin(Comparison plan, Measurand measurand, boolean ratio) {
        if (plan.sameWithin().isEmpty()) {
            return OptionalDouble.empty();
        }
        Quantity margin = plan.sameWithin().get();
        return OptionalDouble.of(
                ratio
                        ? margin.in(Unit.ONE)
                        : margin.differenceIn(measurand.unit().ofDifference()));
    }

    private static Optional<Equivalence> equivalence(
            Optional<? extends Contrast> contrast, Optional<Estimate> difference, double margin, boolean ratio) {
        return ratio
                ? contrast.flatMap(c -> Equivalence.ofRatio(c, margin, EQUIVALENCE_ALPHA))
                : difference.flatMap(d -> Equivalence.of(d, new Interval(-margin, margin), EQUIVALENCE_ALPHA));
    }

    /** The half-width of the interval: what lies nearer to no effect could not have been told from it. */
    private static OptionalDouble smallest(
            boolean ratio,
            Optional<? extends Contrast> contrast,
            Optional<Estimate> difference,
            Optional<Interval> interval) {
        if (interval.isEmpty()) {
            return OptionalDouble.empty();
        }
        double expanded = difference.orElseThrow().expandedUncertainty(CONFIDENCE);
        if (!ratio) {
            return OptionalDouble.of(expanded);
        }
        double base = Math.abs(contrast.orElseThrow().denominator().value());
        return OptionalDouble.of(expanded / base);
    }

    /** The values of two levels that have a partner, in the order of their keys. */
    private record Pairs(LevelValues x, LevelValues y) {

        static Pairs of(LevelValues x, LevelValues y) {
            List<LevelValues.Unit> left = new ArrayList<>();
            List<LevelValues.Unit> right = new ArrayList<>();
            for (LevelValues.Unit unit : x.units()) {
                y.units().stream()
                        .filter(u -> Objects.equals(u.key(), unit.key()))
                        .findFirst()
                        .ifPresent(partner -> {
                            left.add(unit);
                            right.add(partner);
                        });
            }
            return new Pairs(
                    new LevelValues(x.counts(), left, x.runs(), x.decibels()),
                    new LevelValues(y.counts(), right, y.runs(), y.decibels()));
        }
    }
}
