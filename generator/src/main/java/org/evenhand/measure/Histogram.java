package org.evenhand.measure;

import org.evenhand.log.Samples;
import org.evenhand.statistics.TypeB;

/**
 * Finds the sample of a given rank, or the middle of two, to within the width of a bin, in memory that does not grow with their number.
 *
 * <p>The range between the least and the greatest sample is cut into equal bins; the result is the middle of the bin
 * that holds the sample, and half the width is stated as the limit of its error.
 */
final class Histogram implements Reducer {

    private static final int BINS = 1 << 16;

    private final Signal signal;
    private final double least;
    private final double width;
    private final long rank;
    private final long upperRank;
    private final double meanOfMinus;
    private final long[] counts = new long[BINS];

    /**
     * @param rank of the sample that is looked for, from 1
     * @param upperRank the same, or that of the next sample if the middle of the two is wanted
     */
    Histogram(Signal signal, double least, double greatest, long rank, long upperRank, double meanOfMinus) {
        this.signal = signal;
        this.least = least;
        this.width = (greatest - least) / BINS;
        this.rank = rank;
        this.upperRank = upperRank;
        this.meanOfMinus = meanOfMinus;
    }

    @Override
    public void samples(Samples some) {
        for (int i = 0; i < some.size(); i++) {
            sample(some.timesS()[i], some, i);
        }
    }

    private void sample(double timeS, Samples some, int index) {
        double value = signal.of(some, index);
        if (!Double.isNaN(value)) {
            counts[width > 0 ? Math.min((int) ((value - least) / width), BINS - 1) : 0]++;
        }
    }

    @Override
    public Reduced result() {
        double value = (sampleOf(rank) + sampleOf(upperRank)) / 2;
        return new Reduced.Figure(
                value, value + meanOfMinus, meanOfMinus, 1, 1, 0, TypeB.rectangular(width / 2), "bins of the sketch");
    }

    private double sampleOf(long wanted) {
        long below = 0;
        int bin = 0;
        while (below + counts[bin] < wanted) {
            below += counts[bin++];
        }
        return width > 0 ? least + (bin + 0.5) * width : least;
    }
}
