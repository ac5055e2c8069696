package org.evenhand.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.evenhand.log.ThinSeries.Gap;

/**
 * Thins a series as it comes, in memory that does not grow with it.
 *
 * <p>Up to four samples for each bucket are kept as they are. When there are more, time is cut into buckets of equal
 * width, of each of which the first, the least, the greatest and the last sample stay; when time runs out of buckets,
 * two by two become one. What comes out depends on the samples alone.
 */
public final class Thinner {

    private static final int PER_BUCKET = 4;

    /** Of the longest steps; more gaps than that are no longer worth drawing one by one. */
    private static final int GAPS_KEPT = 32;

    private final int buckets;
    private final double[] timesS;
    private final double[] values;
    private final boolean[] used;
    private final List<Gap> longest = new ArrayList<>();
    private int count;
    private boolean bucketed;
    private boolean thinned;
    private double startS;
    private double widthS;
    private double lastS = Double.NaN;
    private double leastKeptS;

    /** @param buckets at least 2; the series has at most four times as many points */
    public Thinner(int buckets) {
        if (buckets < 2) {
            throw new IllegalArgumentException("at least two buckets, not " + buckets);
        }
        this.buckets = buckets;
        timesS = new double[buckets * PER_BUCKET];
        values = new double[buckets * PER_BUCKET];
        used = new boolean[buckets];
    }

    /**
     * Takes one sample.
     *
     * @param timeS not before that of the sample before
     * @param value NaN if none was taken, which leaves a hole
     */
    public void add(double timeS, double value) {
        if (Double.isNaN(value)) {
            return;
        }
        step(timeS);
        if (!bucketed) {
            if (count < timesS.length) {
                timesS[count] = timeS;
                values[count++] = value;
                return;
            }
            if (!(timeS > timesS[0])) {
                thinned = true;
                return; // all at one time: there is nothing to cut
            }
            cut(timeS);
        }
        while (!(timeS - startS < widthS * buckets)) {
            halve();
        }
        put(timeS, value);
    }

    /**
     * Takes some samples, in the order of time.
     *
     * @param count how many of the two arrays
     */
    public void add(double[] timesS, double[] values, int count) {
        int i = 0;
        while (i < count) {
            add(timesS[i], values[i]);
            i = bucketed ? stay(timesS, values, i + 1, count) : i + 1;
        }
    }

    /**
     * Takes the samples that fall into the bucket of the one before, for which no division is needed.
     *
     * @return the index of the first that may not
     */
    private int stay(double[] times, double[] some, int from, int count) {
        int bucket = Math.min((int) ((lastS - startS) / widthS), buckets - 1);
        // The quotient is rounded: so near to its end a bucket is left to the division.
        double untilS = startS + (bucket + 1) * widthS * (1 - 1e-12);
        int at = bucket * PER_BUCKET;
        if (!used[bucket] || !(untilS - startS < widthS * buckets)) {
            return from;
        }
        double least = values[at + 1];
        double greatest = values[at + 2];
        double beforeS = lastS;
        int last = -1;
        int i = from;
        for (; i < count && times[i] < untilS; i++) {
            double value = some[i];
            if (Double.isNaN(value)) {
                continue;
            }
            if (times[i] - beforeS > leastKeptS) {
                lastS = beforeS;
                step(times[i]);
            }
            beforeS = times[i];
            last = i;
            if (value < least) {
                least = value;
                timesS[at + 1] = times[i];
            }
            if (value > greatest) {
                greatest = value;
                timesS[at + 2] = times[i];
            }
        }
        if (last >= 0) {
            lastS = beforeS;
            thinned = true;
            values[at + 1] = least;
            values[at + 2] = greatest;
            timesS[at + 3] = times[last];
            values[at + 3] = some[last];
        }
        return i;
    }

    /** The series so far; steps longer than this become gaps. */
    public ThinSeries series(double longestStepS) {
        List<Gap> gaps = new ArrayList<>(longest);
        gaps.removeIf(gap -> !(gap.toS() - gap.fromS() > longestStepS));
        gaps.sort(Comparator.comparingDouble(Gap::fromS));
        if (!bucketed) {
            return new ThinSeries(Arrays.copyOf(timesS, count), Arrays.copyOf(values, count), thinned, gaps);
        }
        double[] outTimes = new double[timesS.length];
        double[] outValues = new double[timesS.length];
        int points = 0;
        for (int bucket = 0; bucket < buckets; bucket++) {
            int at = bucket * PER_BUCKET;
            if (!used[bucket]) {
                continue;
            }
            boolean leastFirst = timesS[at + 1] <= timesS[at + 2];
            for (int slot : new int[] {at, leastFirst ? at + 1 : at + 2, leastFirst ? at + 2 : at + 1, at + 3}) {
                boolean again =
                        points > 0 && outTimes[points - 1] == timesS[slot] && outValues[points - 1] == values[slot];
                if (!again) {
                    outTimes[points] = timesS[slot];
                    outValues[points++] = values[slot];
                }
            }
        }
        return new ThinSeries(Arrays.copyOf(outTimes, points), Arrays.copyOf(outValues, points), thinned, gaps);
    }

    private void step(double timeS) {
        double before = lastS;
        lastS = timeS;
        if (!(timeS - before > leastKeptS)) {
            return; // also for the first sample, before which there is none
        }
        longest.add(new Gap(before, timeS));
        if (longest.size() > GAPS_KEPT) {
            int shortest = 0;
            for (int i = 1; i < longest.size(); i++) {
                shortest = length(i) <= length(shortest) ? i : shortest; // of equals, the one that came last
            }
            // Times are rounded, and steps with them: those that differ by less than this are equal.
            leastKeptS = length(shortest) * (1 + 1e-9);
            longest.remove(shortest);
        }
    }

    private double length(int gap) {
        return longest.get(gap).toS() - longest.get(gap).fromS();
    }

    /** Goes over to buckets, so wide that the samples so far fill half of them. */
    private void cut(double timeS) {
        double[] oldTimes = timesS.clone();
        double[] oldValues = values.clone();
        bucketed = true;
        startS = oldTimes[0];
        widthS = 2 * (timeS - startS) / buckets;
        for (int i = 0; i < count; i++) {
            put(oldTimes[i], oldValues[i]);
        }
    }

    private void halve() {
        for (int bucket = 0; bucket < buckets; bucket++) {
            int from = bucket * PER_BUCKET;
            boolean filled = used[bucket];
            used[bucket] = false;
            if (filled) {
                // The target lies at or before the source, so that nothing is overwritten before it is read.
                double[] t = Arrays.copyOfRange(timesS, from, from + PER_BUCKET);
                double[] v = Arrays.copyOfRange(values, from, from + PER_BUCKET);
                merge(bucket / 2, t, v);
            }
        }
        widthS *= 2;
    }

    private void put(double timeS, double value) {
        int bucket = Math.min((int) ((timeS - startS) / widthS), buckets - 1);
        int at = bucket * PER_BUCKET;
        if (!used[bucket]) {
            used[bucket] = true;
            Arrays.fill(timesS, at, at + PER_BUCKET, timeS);
            Arrays.fill(values, at, at + PER_BUCKET, value);
            return;
        }
        thinned = true;
        if (value < values[at + 1]) {
            timesS[at + 1] = timeS;
            values[at + 1] = value;
        }
        if (value > values[at + 2]) {
            timesS[at + 2] = timeS;
            values[at + 2] = value;
        }
        timesS[at + 3] = timeS;
        values[at + 3] = value;
    }

    private void merge(int bucket, double[] t, double[] v) {
        int at = bucket * PER_BUCKET;
        if (!used[bucket]) {
            used[bucket] = true;
            System.arraycopy(t, 0, timesS, at, PER_BUCKET);
            System.arraycopy(v, 0, values, at, PER_BUCKET);
            return;
        }
        if (v[1] < values[at + 1]) {
            timesS[at + 1] = t[1];
            values[at + 1] = v[1];
        }
        if (v[2] > values[at + 2]) {
            timesS[at + 2] = t[2];
            values[at + 2] = v[2];
        }
        timesS[at + 3] = t[3];
        values[at + 3] = v[3];
    }
}
