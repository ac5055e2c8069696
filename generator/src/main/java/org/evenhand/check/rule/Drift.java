package org.evenhand.check.rule;

import java.util.Optional;
import org.evenhand.measure.BlockSeries;
import org.evenhand.statistics.LineFit;

/**
 * How much a series changes within a window, along a straight line fitted to it.
 *
 * @param change fitted slope × window, signed
 * @param mean of the window
 * @param middleS where the window lies, in seconds since the beginning of the log
 */
record Drift(double change, double mean, double middleS) {

    /**
     * The window with the greatest change; the whole series if it is shorter than a window.
     *
     * @param blocks of the column; null if it was not logged
     */
    static Optional<Drift> worst(BlockSeries blocks, double windowS) {
        if (blocks == null || blocks.size() < 2) {
            return Optional.empty();
        }
        Optional<Drift> worst = Optional.empty();
        int from = 0;
        for (int to = 1; to < blocks.size(); to++) {
            // The longest stretch up to here that the window holds.
            while (blocks.timeS(to) - blocks.timeS(from) > windowS) {
                from++;
            }
            boolean full = from > 0 || to == blocks.size() - 1;
            Optional<Drift> drift = full ? within(blocks, from, to, windowS) : Optional.empty();
            if (drift.isPresent() && (worst.isEmpty() || Math.abs(drift.get().change) > Math.abs(worst.get().change))) {
                worst = drift;
            }
        }
        return worst;
    }

    private static Optional<Drift> within(BlockSeries blocks, int from, int to, double windowS) {
        int n = to - from + 1;
        double[] times = new double[n];
        double[] means = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            times[i] = blocks.timeS(from + i);
            means[i] = blocks.mean(from + i);
            sum += means[i];
        }
        double mean = sum / n;
        boolean whole = n == blocks.size();
        double spanS = whole ? times[n - 1] - times[0] : windowS;
        double middleS = (times[0] + times[n - 1]) / 2;
        if (n == 2 && times[1] > times[0]) {
            double change = (means[1] - means[0]) / (times[1] - times[0]) * spanS;
            return Optional.of(new Drift(change, mean, middleS));
        }
        return LineFit.of(times, means).map(line -> new Drift(line.slope().value() * spanS, mean, middleS));
    }
}
