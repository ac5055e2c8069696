package org.evenhand.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.model.Comparison;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Study;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.LineFit;
import org.evenhand.words.Words;

/** A measurand against a numeric factor: least squares through the values that n counts. */
final class Trends {

    private Trends() {}

    static ComparisonResult.Trend of(
            Comparison plan, Study study, Measurand measurand, List<LevelRun> runs, Words words) {
        MeasurandId id = plan.measurand().orElseThrow();
        Reasons why = new Reasons(words);
        List<ComparisonResult.Point> points = new ArrayList<>();
        Unit factorUnit = quantity(study.levels().get(0)).unit();
        int levels = 0;
        for (String level : study.levels()) {
            double x = quantity(level).in(factorUnit);
            LevelValues values = LevelValues.of(runs, level, id);
            if (values.censored() > 0 || values.atMost() > 0) {
                why.add("compare.line-without-bounds", level);
                continue;
            }
            levels += values.isEmpty() ? 0 : 1;
            for (double y : values.values()) {
                points.add(new ComparisonResult.Point(x, y));
            }
        }
        Optional<LineFit> line = LineFit.of(xs(points), ys(points));
        if (line.isEmpty()) {
            why.add("compare.few-points", points.size(), levels);
        } else if (!scatters(line.get(), points)) {
            line = Optional.empty();
            why.add("compare.no-scatter");
        }
        return new ComparisonResult.Trend(
                plan,
                measurand.unit(),
                factorUnit,
                Optional.of(Verdict.NOT_SHOWN),
                why.list(),
                line,
                line.isPresent() ? exponent(measurand, points) : Optional.empty(),
                line.isPresent() ? efficiency(measurand, points) : OptionalDouble.empty(),
                List.copyOf(points),
                line.map(l -> l.slope().pTwoSided(0)).orElse(OptionalDouble.empty()),
                OptionalDouble.empty());
    }

    /** Whether the points stand off the line by more than rounding; an interval of no width is no certainty. */
    private static boolean scatters(LineFit line, List<ComparisonResult.Point> points) {
        double size = points.stream().mapToDouble(p -> Math.abs(p.y())).max().orElse(0);
        return line.residualDeviation() > 4 * Math.ulp(size);
    }

    /** The slope of the logarithms; only where every value is above zero on a scale whose zero means none. */
    private static Optional<Estimate> exponent(Measurand measurand, List<ComparisonResult.Point> points) {
        boolean positive = points.stream().allMatch(p -> p.x() > 0 && p.y() > 0);
        return positive && measurand.unit().kind() == UnitKind.DIFFERENCE
                ? LineFit.ofLogarithms(xs(points), ys(points)).map(LineFit::slope)
                : Optional.empty();
    }

    private static OptionalDouble efficiency(Measurand measurand, List<ComparisonResult.Point> points) {
        double lowest =
                points.stream().mapToDouble(ComparisonResult.Point::x).min().orElse(0);
        double highest =
                points.stream().mapToDouble(ComparisonResult.Point::x).max().orElse(0);
        OptionalDouble atLowest = meanAt(points, lowest);
        OptionalDouble atHighest = meanAt(points, highest);
        boolean makesSense = lowest > 0
                && highest > lowest
                && atLowest.orElse(0) > 0
                && measurand.unit().kind() == UnitKind.DIFFERENCE;
        return makesSense
                ? OptionalDouble.of((atHighest.orElseThrow() / atLowest.orElseThrow()) / (highest / lowest))
                : OptionalDouble.empty();
    }

    private static OptionalDouble meanAt(List<ComparisonResult.Point> points, double x) {
        return points.stream()
                .filter(p -> p.x() == x)
                .mapToDouble(ComparisonResult.Point::y)
                .average();
    }

    private static double[] xs(List<ComparisonResult.Point> points) {
        return points.stream().mapToDouble(ComparisonResult.Point::x).toArray();
    }

    private static double[] ys(List<ComparisonResult.Point> points) {
        return points.stream().mapToDouble(ComparisonResult.Point::y).toArray();
    }

    /** Reading made sure that the levels of a trend are quantities. */
    private static Quantity quantity(String level) {
        try {
            return Quantity.parseCount(level);
        } catch (MisreadException e) {
            throw new IllegalStateException(e);
        }
    }
}
