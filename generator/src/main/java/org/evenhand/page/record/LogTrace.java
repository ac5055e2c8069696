package org.evenhand.page.record;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.chart.Thinner;
import org.evenhand.chart.Trace;
import org.evenhand.log.ThinSeries;
import org.evenhand.measure.BlockSeries;

/** Turns a thinned column of a log into what is drawn. */
final class LogTrace {

    /** Points of a thinned column that are drawn as one stretch: as many as thinning leaves of each. */
    private static final int POINTS = 4;

    private LogTrace() {}

    /**
     * The trace of a column.
     *
     * @param series real samples with all extremes
     * @param means of all samples, in blocks
     * @param samples how many the log has of this column
     */
    static Trace of(ThinSeries series, BlockSeries means, long samples) {
        if (!series.isThinned()) {
            Thinner all = new Thinner(Math.max(2, series.size() + 1));
            int gap = 0;
            for (int i = 0; i < series.size(); i++) {
                while (gap < series.gaps().size() && series.gaps().get(gap).toS() <= series.timeS(i)) {
                    all.interrupt();
                    gap++;
                }
                all.add(series.timeS(i), series.value(i));
            }
            return all.trace();
        }
        return new Trace(stretches(series, means, samples), samples, true);
    }

    private static List<Trace.Bucket> stretches(ThinSeries series, BlockSeries means, long samples) {
        long each = Math.max(1, samples * POINTS / series.size());
        List<Trace.Bucket> buckets = new ArrayList<>();
        int gap = 0;
        int from = 0;
        while (from < series.size()) {
            boolean gapBefore = false;
            while (gap < series.gaps().size() && series.gaps().get(gap).toS() <= series.timeS(from)) {
                gapBefore = from > 0;
                gap++;
            }
            double nextGapS =
                    gap < series.gaps().size() ? series.gaps().get(gap).toS() : Double.POSITIVE_INFINITY;
            int to = from + 1;
            while (to < series.size() && to - from < POINTS && series.timeS(to) < nextGapS) {
                to++;
            }
            buckets.add(bucket(series, from, to, means, each, gapBefore));
            from = to;
        }
        return buckets;
    }

    private static Trace.Bucket bucket(
            ThinSeries series, int from, int to, BlockSeries means, long count, boolean gapBefore) {
        int lowest = from;
        int highest = from;
        for (int i = from + 1; i < to; i++) {
            lowest = series.value(i) < series.value(lowest) ? i : lowest;
            highest = series.value(i) > series.value(highest) ? i : highest;
        }
        double fromS = series.timeS(from);
        double toS = series.timeS(to - 1);
        double low = series.value(lowest);
        double high = series.value(highest);
        double mean = Math.max(low, Math.min(high, meanAt(means, (fromS + toS) / 2, (low + high) / 2)));
        return new Trace.Bucket(
                fromS,
                toS,
                series.value(from),
                low,
                high,
                series.value(to - 1),
                mean,
                to - from > 1 ? Math.max(2, count) : 1,
                lowest <= highest,
                gapBefore);
    }

    /** Between the means of the two blocks around a time, on a straight line. */
    private static double meanAt(BlockSeries means, double timeS, double otherwise) {
        int n = means.size();
        if (n == 0) {
            return otherwise;
        }
        int after = 0;
        while (after < n && means.timeS(after) < timeS) {
            after++;
        }
        if (after == 0 || after == n) {
            return means.mean(Math.min(after, n - 1));
        }
        double share = (timeS - means.timeS(after - 1)) / (means.timeS(after) - means.timeS(after - 1));
        return means.mean(after - 1) + share * (means.mean(after) - means.mean(after - 1));
    }
}
