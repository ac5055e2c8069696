package org.evenhand.statistics;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Observed and expected events and their covariance, computed anew for each arrangement of the same times over groups. */
final class LogRankScores {

    private final List<CensoredTime> times;
    private final int[] ascending;
    private final int groups;
    private int[] observed;
    private double[] expected;
    private double[][] covariance;

    LogRankScores(List<CensoredTime> times, int groups) {
        this.times = List.copyOf(times);
        this.groups = groups;
        this.ascending = IntStream.range(0, times.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> times.get(i).time()))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Fills the results for one arrangement: the group of each time, in the order of the times given. */
    void compute(int[] groupOf) {
        observed = new int[groups];
        expected = new double[groups];
        covariance = new double[groups][groups];
        int[] atRisk = new int[groups];
        for (int group : groupOf) {
            atRisk[group]++;
        }
        int next = 0;
        while (next < ascending.length) {
            double time = times.get(ascending[next]).time();
            int[] events = new int[groups];
            int[] leaving = new int[groups];
            int from = next;
            for (; next < ascending.length && times.get(ascending[next]).time() == time; next++) {
                int group = groupOf[ascending[next]];
                leaving[group]++;
                events[group] += times.get(ascending[next]).observed() ? 1 : 0;
            }
            add(events, atRisk, ascending.length - from);
            for (int group = 0; group < groups; group++) {
                atRisk[group] -= leaving[group];
            }
        }
    }

    private void add(int[] events, int[] atRisk, int allAtRisk) {
        int allEvents = IntStream.of(events).sum();
        if (allEvents == 0) {
            return;
        }
        double n = allAtRisk;
        double scale = allAtRisk > 1 ? allEvents * (n - allEvents) / (n - 1) : 0;
        for (int i = 0; i < groups; i++) {
            observed[i] += events[i];
            double share = atRisk[i] / n;
            expected[i] += allEvents * share;
            for (int j = 0; j < groups; j++) {
                covariance[i][j] += scale * share * ((i == j ? 1 : 0) - atRisk[j] / n);
            }
        }
    }

    int[] observed() {
        return observed;
    }

    double[] expected() {
        return expected;
    }

    double[][] covariance() {
        return covariance;
    }
}
