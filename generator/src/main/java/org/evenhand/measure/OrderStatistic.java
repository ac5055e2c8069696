package org.evenhand.measure;

import java.util.Arrays;
import java.util.Optional;
import org.evenhand.log.Samples;

/**
 * The median or a percentile of the samples.
 *
 * <p>The median of an even number of samples is the mean of the two in the middle; the percentile p is the least sample
 * that at least the share p of all samples do not exceed. Up to {@link #MOST_KEPT} samples are kept and the result is
 * exact; beyond that a second pass sorts them into a {@link Histogram}. Source of the definitions: R. J. Hyndman,
 * Y. Fan, The American Statistician 50 (1996) 361–365, definitions 2 and 1.
 */
final class OrderStatistic implements Reducer {

    static final int MOST_KEPT = 1 << 16;

    private final Signal signal;
    private final double share;
    private final boolean median;
    private final Sum minus = new Sum();
    private double[] kept = new double[1024];
    private long samples;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;

    private OrderStatistic(Signal signal, double share, boolean median) {
        this.signal = signal;
        this.share = share;
        this.median = median;
    }

    static OrderStatistic median(Signal signal) {
        return new OrderStatistic(signal, 0.5, true);
    }

    static OrderStatistic percentile(Signal signal, double share) {
        return new OrderStatistic(signal, share, false);
    }

    @Override
    public void samples(Samples some) {
        for (int i = 0; i < some.size(); i++) {
            sample(some.timesS()[i], some, i);
        }
    }

    private void sample(double timeS, Samples some, int index) {
        double value = signal.of(some, index);
        if (Double.isNaN(value)) {
            return;
        }
        if (samples < MOST_KEPT) {
            if (samples == kept.length) {
                kept = Arrays.copyOf(kept, 2 * kept.length);
            }
            kept[(int) samples] = value;
        }
        samples++;
        least = Math.min(least, value);
        greatest = Math.max(greatest, value);
        minus.add(signal.minusOf(some, index));
    }

    @Override
    public Reduced result() {
        if (samples == 0) {
            return Reduced.Refused.tooFewSamples();
        }
        double[] sorted = Arrays.copyOf(kept, (int) samples);
        Arrays.sort(sorted);
        int rank = (int) rank();
        double value = between() ? (sorted[rank - 1] + sorted[rank]) / 2 : sorted[rank - 1];
        return Reduced.Figure.likeColumn(value, minus.value() / samples, 0);
    }

    /** Whether the value lies between two samples, that of this rank and the next. */
    private boolean between() {
        return median && samples % 2 == 0;
    }

    /** From 1. */
    private long rank() {
        return Math.max(1, (long) Math.ceil(share * samples));
    }

    @Override
    public Optional<Reducer> again() {
        if (samples <= MOST_KEPT) {
            return Optional.empty();
        }
        kept = new double[0];
        return Optional.of(new Histogram(
                signal, least, greatest, rank(), between() ? rank() + 1 : rank(), minus.value() / samples));
    }
}
