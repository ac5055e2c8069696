package org.evenhand.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;

/**
 * The log-rank test that groups of right-censored times have one survival curve: observed against expected events, with the
 * hypergeometric variance and without continuity correction.
 *
 * <p>Source: N. Mantel, Cancer Chemotherapy Reports 50 (1966) 163–170; R. Peto, J. Peto, Journal of the Royal Statistical Society
 * A 135 (1972) 185–207. The exact p value counts the arrangements of the times over the groups whose statistic is as large.
 *
 * @param observed events in each group
 * @param expected events in each group if all had one curve
 * @param varianceOfFirst variance of observed − expected in the first group
 * @param chiSquared the statistic
 * @param degreesOfFreedom number of groups with expected events, less one
 * @param pAsymptotic upper tail of the chi-squared law
 * @param pExact share of arrangements with a statistic at least as large; empty beyond {@link #MOST_ARRANGEMENTS}
 */
public record LogRank(
        List<Integer> observed,
        List<Double> expected,
        double varianceOfFirst,
        double chiSquared,
        int degreesOfFreedom,
        double pAsymptotic,
        OptionalDouble pExact) {

    /** Up to this number of arrangements the exact p value is computed. */
    public static final int MOST_ARRANGEMENTS = 10_000;

    /** Takes copies of the lists. */
    public LogRank {
        observed = List.copyOf(observed);
        expected = List.copyOf(expected);
    }

    /**
     * @param groups at least two, each with at least one time
     * @return empty where there is nothing to compare: no event while two groups were at risk
     * @throws IllegalArgumentException for fewer than two groups or an empty one
     */
    public static Optional<LogRank> of(List<List<CensoredTime>> groups) {
        if (groups.size() < 2 || groups.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("a log-rank test needs two groups or more, none of them empty");
        }
        List<CensoredTime> times = new ArrayList<>();
        List<Integer> labels = new ArrayList<>();
        for (int group = 0; group < groups.size(); group++) {
            for (CensoredTime time : groups.get(group)) {
                times.add(time);
                labels.add(group);
            }
        }
        LogRankScores scores = new LogRankScores(times, groups.size());
        int[] arrangement = labels.stream().mapToInt(Integer::intValue).toArray();
        scores.compute(arrangement);
        Statistic statistic = Statistic.of(scores);
        if (statistic.degreesOfFreedom() == 0) {
            return Optional.empty();
        }
        return Optional.of(new LogRank(
                boxed(scores.observed()),
                boxed(scores.expected()),
                scores.covariance()[0][0],
                statistic.chiSquared(),
                statistic.degreesOfFreedom(),
                ChiSquaredDistribution.of(statistic.degreesOfFreedom()).survivalProbability(statistic.chiSquared()),
                exact(scores, arrangement, statistic.chiSquared())));
    }

    private static OptionalDouble exact(LogRankScores scores, int[] arrangement, double chiSquared) {
        OptionalInt count = Arrangements.count(arrangement, MOST_ARRANGEMENTS);
        if (count.isEmpty()) {
            return OptionalDouble.empty();
        }
        // Arrangements that differ only by the order of sums must count as equal.
        double limit = chiSquared * (1 - 1e-9);
        int[] asLarge = new int[1];
        Arrangements.forEach(arrangement, labels -> {
            scores.compute(labels);
            asLarge[0] += Statistic.of(scores).chiSquared() >= limit ? 1 : 0;
        });
        return OptionalDouble.of((double) asLarge[0] / count.getAsInt());
    }

    private static List<Integer> boxed(int[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    private static List<Double> boxed(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    private record Statistic(double chiSquared, int degreesOfFreedom) {

        static Statistic of(LogRankScores scores) {
            double[][] covariance = scores.covariance();
            int[] informative = IntStream.range(0, covariance.length)
                    .filter(group -> covariance[group][group] > 0)
                    .toArray();
            // The differences of all groups add to zero, so that the last one is left out.
            int k = informative.length - 1;
            if (k < 1) {
                return new Statistic(0, 0);
            }
            double[] difference = new double[k];
            double[][] matrix = new double[k][k];
            for (int i = 0; i < k; i++) {
                difference[i] = scores.observed()[informative[i]] - scores.expected()[informative[i]];
                for (int j = 0; j < k; j++) {
                    matrix[i][j] = covariance[informative[i]][informative[j]];
                }
            }
            if (k == 1) {
                return new Statistic(difference[0] * difference[0] / matrix[0][0], 1);
            }
            RealVector vector = new ArrayRealVector(difference, false);
            LUDecomposition decomposition = new LUDecomposition(new Array2DRowRealMatrix(matrix, false), 1e-12);
            if (!decomposition.getSolver().isNonSingular()) {
                return new Statistic(0, 0);
            }
            double chiSquared = vector.dotProduct(decomposition.getSolver().solve(vector));
            return new Statistic(Math.max(0, chiSquared), k);
        }
    }
}
