package org.evenhand.check.rule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.BlockSeries;
import org.evenhand.quantity.Conversion;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.LineFit;

/**
 * How a column of a log went over a run.
 *
 * @param series means of the column, in the method's unit
 * @param toWanted from there to the unit that was asked for
 */
record Course(BlockSeries series, Conversion.Fast toWanted) {

    private static final int PARTS = 10;

    /** A column in a unit; nothing if the log has no such column, or it is of another kind. */
    static Optional<Course> of(StudyView study, LevelRun run, String column, Unit wanted) {
        BlockSeries series = run.measured().means().get(column);
        Unit unit = study.method(run.run()).records().get(column);
        return series != null && unit != null && unit.convertsTo(wanted)
                ? Optional.of(new Course(series, unit.to(wanted).fast()))
                : Optional.empty();
    }

    /** The mean between two times, both included; nothing if no block lies there. */
    OptionalDouble mean(double fromS, double toS) {
        double sum = 0;
        int blocks = 0;
        for (int i = 0; i < series.size(); i++) {
            if (series.timeS(i) >= fromS && series.timeS(i) <= toS) {
                sum += series.mean(i);
                blocks++;
            }
        }
        return blocks == 0 ? OptionalDouble.empty() : OptionalDouble.of(toWanted.apply(sum / blocks));
    }

    /**
     * The slope of the fitted line between two times, for each second; zero where there are too few blocks to tell. A
     * difference in the unit.
     */
    double slopePerS(double fromS, double toS) {
        int[] within = IntStream.range(0, series.size())
                .filter(i -> series.timeS(i) >= fromS && series.timeS(i) <= toS)
                .toArray();
        double[] times = IntStream.of(within).mapToDouble(series::timeS).toArray();
        double[] values = IntStream.of(within)
                .mapToDouble(i -> toWanted.apply(series.mean(i)))
                .toArray();
        return LineFit.of(times, values).map(fit -> fit.slope().value()).orElse(0.0);
    }

    double firstS() {
        return series.timeS(0);
    }

    double lastS() {
        return series.timeS(series.size() - 1);
    }

    /** All means that there are, in the unit that was asked for. */
    List<Double> means() {
        return IntStream.range(0, series.size())
                .mapToObj(i -> toWanted.apply(series.mean(i)))
                .toList();
    }

    /** Means over tenths of the run, in which a single odd sample does not stand out; fewer where tenths are empty. */
    List<Double> tenths() {
        List<Double> means = new ArrayList<>();
        double lengthS = (lastS() - firstS()) / PARTS;
        for (int part = 0; part < PARTS; part++) {
            double fromS = firstS() + part * lengthS;
            double toS = part == PARTS - 1 ? lastS() : Math.nextDown(fromS + lengthS);
            mean(fromS, toS).ifPresent(means::add);
        }
        return means;
    }

    double lowest() {
        return Collections.min(tenths());
    }

    double highest() {
        return Collections.max(tenths());
    }
}
