package org.evenhand.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenhand.log.Samples;
import org.evenhand.log.ThinSeries;
import org.evenhand.log.Thinner;
import org.evenhand.measure.LogFacts.ColumnFacts;

/** Gathers what a log looks like as its samples pass. */
final class Survey {

    /** Enough for a curve as wide as a page, four points each; all runs of a folder are kept, so not more than that. */
    private static final int BUCKETS = 160;

    /** So many steps tell the typical one, even if some are odd. */
    private static final int STEPS_KEPT = 1001;

    /** A step so many times the typical one leaves a hole in a curve, where the method does not say. */
    private static final double TYPICAL_STEPS_IN_GAP = 5;

    private final List<String> names;
    private final Column[] columns;
    private final double[] steps = new double[STEPS_KEPT];
    private long samples;
    private double firstS;
    private double lastS;
    private double longestStepS;
    private double longestStepFromS;

    /** @param present whether each of the columns is in the log */
    Survey(List<String> names, boolean[] present) {
        this.names = names;
        columns = new Column[names.size()];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = present[i] ? new Column() : null;
        }
    }

    void samples(Samples some) {
        double[] timesS = some.timesS();
        int from = 0;
        if (samples == 0) {
            firstS = timesS[0];
            longestStepFromS = timesS[0];
            lastS = timesS[0];
            from = 1;
        }
        double before = lastS;
        for (int i = from; i < some.size(); i++) {
            double stepS = timesS[i] - before;
            if (samples + i <= STEPS_KEPT) {
                steps[(int) samples + i - 1] = stepS;
            }
            if (stepS > longestStepS) {
                longestStepS = stepS;
                longestStepFromS = before;
            }
            before = timesS[i];
        }
        samples += some.size();
        lastS = before;
        for (int i = 0; i < columns.length; i++) {
            if (columns[i] != null) {
                columns[i].samples(timesS, some.column(i), some.size());
            }
        }
    }

    LogFacts facts() {
        SortedMap<String, ColumnFacts> byName = new TreeMap<>();
        for (int i = 0; i < columns.length; i++) {
            if (columns[i] != null && columns[i].samples > 0) {
                byName.put(names.get(i), columns[i].facts());
            }
        }
        return new LogFacts(samples, firstS, lastS, typicalStepS(), longestStepS, longestStepFromS, byName);
    }

    /** Curves for drawing, of the columns that hold samples; steps longer than the given become gaps. */
    Map<String, ThinSeries> series(OptionalDouble maxGapS) {
        double gapS = maxGapS.orElse(TYPICAL_STEPS_IN_GAP * typicalStepS());
        Map<String, ThinSeries> byName = new TreeMap<>();
        for (int i = 0; i < columns.length; i++) {
            if (columns[i] != null && columns[i].samples > 0) {
                byName.put(names.get(i), columns[i].thinner.series(gapS));
            }
        }
        return byName;
    }

    Map<String, BlockSeries> means() {
        Map<String, BlockSeries> byName = new TreeMap<>();
        for (int i = 0; i < columns.length; i++) {
            if (columns[i] != null && columns[i].samples > 0) {
                byName.put(names.get(i), columns[i].blocks.series());
            }
        }
        return byName;
    }

    private double typicalStepS() {
        int known = (int) Math.min(Math.max(0, samples - 1), STEPS_KEPT);
        double[] sorted = Arrays.copyOf(steps, known);
        Arrays.sort(sorted);
        return known == 0 ? 0 : (sorted[(known - 1) / 2] + sorted[known / 2]) / 2;
    }

    private static final class Column {

        private final Thinner thinner = new Thinner(BUCKETS);
        private final BlockMeans blocks = new BlockMeans();
        private final TimeIntegral integral = new TimeIntegral();
        private long samples;
        private double lastS;
        private double first;
        private double last = Double.NaN;
        private double lowest = Double.POSITIVE_INFINITY;
        private double highest = Double.NEGATIVE_INFINITY;
        private long constant;
        private double constantFromS;
        private long longestConstant;
        private double longestConstantFromS;
        private double longestConstantToS;
        private long longestAtLowest;
        private long longestAtHighest;

        void samples(double[] timesS, double[] values, int count) {
            thinner.add(timesS, values, count);
            blocks.add(timesS, values, count);
            integral.add(timesS, values, count);
            long seen = samples;
            long equal = constant;
            double before = last;
            for (int i = 0; i < count; i++) {
                double value = values[i];
                if (Double.isNaN(value)) {
                    continue;
                }
                seen++;
                if (value == before) {
                    equal++;
                    lastS = timesS[i];
                    continue;
                }
                // Most stretches are neither the longest nor at an end of the range.
                if (equal > longestConstant || before <= lowest || before >= highest) {
                    constant = equal;
                    last = before;
                    noteConstant();
                }
                equal = 1;
                before = value;
                constantFromS = timesS[i];
                lastS = timesS[i];
            }
            first = samples == 0 && seen > 0 ? firstOf(values) : first;
            samples = seen;
            constant = equal;
            last = before;
            if (seen > 0) {
                noteConstant();
            }
        }

        private static double firstOf(double[] values) {
            int i = 0;
            while (Double.isNaN(values[i])) {
                i++;
            }
            return values[i];
        }

        /** Takes note of the stretch of equal values that ends with the last sample so far. */
        private void noteConstant() {
            if (constant > longestConstant) {
                longestConstant = constant;
                longestConstantFromS = constantFromS;
                longestConstantToS = lastS;
            }
            if (last < lowest) {
                lowest = last;
                longestAtLowest = 0;
            }
            if (last > highest) {
                highest = last;
                longestAtHighest = 0;
            }
            if (last == lowest) {
                longestAtLowest = Math.max(longestAtLowest, constant);
            }
            if (last == highest) {
                longestAtHighest = Math.max(longestAtHighest, constant);
            }
        }

        ColumnFacts facts() {
            double durationS = integral.durationS();
            double mean = durationS > 0 ? integral.value() / durationS : first;
            return new ColumnFacts(
                    samples,
                    first,
                    last,
                    lowest,
                    highest,
                    mean,
                    longestConstant,
                    longestConstantFromS,
                    longestConstantToS,
                    longestAtLowest,
                    longestAtHighest);
        }
    }
}
