package org.evenhand.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Thins a column of any length while it is read, in memory that does not grow: no extreme value is lost, and no gap
 * longer than a few thousandths of the whole is closed.
 *
 * <p>Samples are kept singly as long as there is room; then neighbours are merged in pairs, again and again.
 */
public final class Thinner {

    /** A number of buckets that suits a chart in a column of text. */
    public static final int FOR_CHART = 300;

    private final int buckets;
    private List<Trace.Bucket> kept = new ArrayList<>();
    private Trace.Bucket filling;
    private int inFilling;
    private int perBucket = 1;
    private long samples;
    private boolean interrupted;
    private boolean thinned;
    private double lastTimeS = Double.NEGATIVE_INFINITY;

    /**
     * @param buckets how many buckets to aim at, at least 2; a trace has fewer than twice as many
     * @throws IllegalArgumentException if fewer are asked for
     */
    public Thinner(int buckets) {
        if (!(buckets >= 2)) {
            throw new IllegalArgumentException("a trace needs at least two buckets, not " + buckets);
        }
        this.buckets = buckets;
    }

    /**
     * Takes the next sample.
     *
     * @param timeS seconds from the start, finite, not before the last one
     * @param value the value; NaN or infinite for a missing one, which leaves a gap
     * @throws IllegalArgumentException if time runs backwards or is not finite
     */
    public void add(double timeS, double value) {
        if (!(timeS >= lastTimeS && Double.isFinite(timeS))) {
            throw new IllegalArgumentException("time " + timeS + " s comes after " + lastTimeS + " s");
        }
        lastTimeS = timeS;
        if (!Double.isFinite(value)) {
            interrupt();
            return;
        }
        samples++;
        Trace.Bucket sample = Trace.Bucket.of(timeS, value, interrupted);
        if (filling != null && (interrupted || inFilling >= perBucket)) {
            keepFilling();
        }
        interrupted = false;
        filling = filling == null ? sample : filling.with(sample);
        inFilling++;
        thinned |= inFilling > 1;
    }

    /** Says that the record was interrupted here: what comes next is not joined to what came before. */
    public void interrupt() {
        interrupted = samples > 0;
    }

    /** What was taken in so far. */
    public Trace trace() {
        List<Trace.Bucket> all = new ArrayList<>(kept);
        if (filling != null) {
            all.add(filling);
        }
        return new Trace(all, samples, thinned);
    }

    private void keepFilling() {
        kept.add(filling);
        filling = null;
        inFilling = 0;
        if (kept.size() >= 2 * buckets - 1) {
            double lengthS = lastTimeS - kept.get(0).fromS();
            int before = kept.size();
            kept = pairs(kept, lengthS / buckets);
            perBucket *= 2;
            thinned |= kept.size() < before;
        }
    }

    /**
     * Merges neighbours in pairs, except across a gap longer than given. At most {@code buckets} gaps can be as long
     * as that, so of twice as many buckets no more than three quarters remain.
     */
    static List<Trace.Bucket> pairs(List<Trace.Bucket> from, double longGapS) {
        List<Trace.Bucket> merged = new ArrayList<>();
        int i = 0;
        while (i < from.size()) {
            Trace.Bucket bucket = from.get(i++);
            if (i < from.size()) {
                Trace.Bucket next = from.get(i);
                if (!next.gapBefore() || next.fromS() - bucket.toS() <= longGapS) {
                    bucket = bucket.with(next);
                    i++;
                }
            }
            merged.add(bucket);
        }
        return merged;
    }
}
