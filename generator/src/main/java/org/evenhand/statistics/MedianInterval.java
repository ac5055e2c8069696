package org.evenhand.statistics;

import java.util.Optional;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * The distribution-free interval of a median between two order statistics.
 *
 * <p>Source: W. J. Conover, Practical Nonparametric Statistics, 3rd edition (1999), 3.2; H. A. David, H. N. Nagaraja, Order
 * Statistics, 3rd edition (2003), 7.1.
 *
 * @param interval from the value of rank r to that of rank n + 1 − r
 * @param rank r, counted from 1
 * @param coverage 1 − 2·P(B ≤ r − 1) with B binomial (n, ½): at least the confidence asked for
 */
public record MedianInterval(Interval interval, int rank, double coverage) {

    /**
     * The shortest symmetric pair of ranks with at least the confidence asked for.
     *
     * @param confidence strictly between 0 and 1
     * @return empty where even smallest and largest value do not reach it; at 95 % for n below 6
     */
    public static Optional<MedianInterval> of(Sample sample, double confidence) {
        Arguments.fraction(confidence, "confidence");
        int n = sample.size();
        BinomialDistribution signs = BinomialDistribution.of(n, 0.5);
        int rank = 0;
        while (rank < n / 2 && 1 - 2 * signs.cumulativeProbability(rank) >= confidence) {
            rank++;
        }
        if (rank == 0) {
            return Optional.empty();
        }
        double[] sorted = sample.sorted();
        Interval interval = new Interval(sorted[rank - 1], sorted[n - rank]);
        return Optional.of(new MedianInterval(interval, rank, 1 - 2 * signs.cumulativeProbability(rank - 1)));
    }
}
