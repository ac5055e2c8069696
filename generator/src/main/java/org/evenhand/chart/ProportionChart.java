package org.evenhand.chart;

import java.util.List;
import java.util.Optional;
import org.evenhand.words.Words;

/**
 * Shares, k of n, on an axis from 0 to 100 %.
 *
 * @param axisTitle what is counted, of what
 * @param groups from top to bottom, at least one
 * @param estimateMeans words for the key, such as "share with exact 95 % interval"
 */
public record ProportionChart(String axisTitle, List<Group> groups, String estimateMeans) implements Figure {

    public ProportionChart {
        groups = List.copyOf(groups);
    }

    /**
     * A group.
     *
     * @param label its name
     * @param successes how many of {@code n}, from 0
     * @param n at least 1
     * @param interval of the share, within 0 to 1
     * @param figure the share in words as the table has it, such as "7 of 8"
     * @param caveat the worst caveat in a few words, or empty
     */
    public record Group(String label, int successes, int n, Interval interval, String figure, String caveat) {

        /** @throws IllegalArgumentException if the counts are impossible or the interval leaves 0 to 1 */
        public Group {
            if (!(n >= 1 && successes >= 0 && successes <= n && interval.low() >= 0 && interval.high() <= 1)) {
                throw new IllegalArgumentException("no share: " + successes + " of " + n + ", " + interval);
            }
        }
    }

    @Override
    public Layout layout(Words words) {
        List<Row> rows = groups.stream()
                .map(group -> new Row(group.label(), List.of(), Optional.of(estimate(group)))
                        .withFigure(group.figure(), "")
                        .withCaveat(group.caveat()))
                .toList();
        Key key = new Key().with(Key.interval(), estimateMeans);
        return new RowsLayout(axisTitle, RowsLayout.Scale.PERCENT, rows, key, words);
    }

    private static Estimate estimate(Group group) {
        return Estimate.of(
                100.0 * group.successes() / group.n(),
                100 * group.interval().low(),
                100 * group.interval().high());
    }
}
