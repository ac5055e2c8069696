package org.evenhand.chart;

import java.util.List;

/**
 * A column of a log in a form short enough to draw.
 *
 * @param buckets in order of time, never overlapping
 * @param samples how many samples went in
 * @param thinned whether some bucket stands for more than one sample
 */
public record Trace(List<Bucket> buckets, long samples, boolean thinned) {

    public Trace {
        buckets = List.copyOf(buckets);
    }

    /**
     * One sample, or a stretch of samples of which the first, the last, the mean and both extremes are kept.
     *
     * @param fromS time of the first sample
     * @param toS time of the last sample
     * @param first value of the first sample
     * @param low smallest value
     * @param high largest value
     * @param last value of the last sample
     * @param mean arithmetic mean of the samples, updated sample by sample in order of time
     * @param count how many samples, at least 1
     * @param lowFirst whether the smallest value came before the largest
     * @param gapBefore whether the record was interrupted just before
     */
    public record Bucket(
            double fromS,
            double toS,
            double first,
            double low,
            double high,
            double last,
            double mean,
            long count,
            boolean lowFirst,
            boolean gapBefore) {

        static Bucket of(double timeS, double value, boolean gapBefore) {
            return new Bucket(timeS, timeS, value, value, value, value, value, 1, true, gapBefore);
        }

        /** Both stretches as one; the gap that may lie between them is given up. */
        Bucket with(Bucket next) {
            boolean lowHere = low <= next.low;
            boolean highHere = high >= next.high;
            boolean order = lowHere == highHere ? (lowHere ? lowFirst : next.lowFirst) : lowHere;
            double smallest = Math.min(low, next.low);
            double largest = Math.max(high, next.high);
            long n = count + next.count;
            double middle = mean + (next.mean - mean) * next.count / n;
            return new Bucket(fromS, next.toS, first, smallest, largest, next.last, middle, n, order, gapBefore);
        }
    }
}
