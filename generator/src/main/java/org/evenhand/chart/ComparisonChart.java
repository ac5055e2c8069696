package org.evenhand.chart;

import java.util.List;
import java.util.Optional;
import org.evenhand.words.Words;

/**
 * One row for each comparison: differences around 0, or ratios around 1 on a logarithmic axis.
 *
 * @param axisTitle what is compared against what, with its unit
 * @param ratio whether the values are ratios
 * @param rows from top to bottom, at least one
 * @param sides words over the plot, such as "cooler with the spreader" to the left; empty for none
 * @param estimateMeans words for the key, such as "difference of means with 95 % interval"
 * @param bandMeans words for the key, such as "counts as the same", or empty
 */
public record ComparisonChart(
        String axisTitle, boolean ratio, List<Comparison> rows, Sides sides, String estimateMeans, String bandMeans)
        implements Figure {

    /** @throws IllegalArgumentException if a ratio, an end of its interval or of its band is not above 0 */
    public ComparisonChart {
        rows = List.copyOf(rows);
        if (ratio && !rows.stream().allMatch(Comparison::isPositive)) {
            throw new IllegalArgumentException("a logarithmic axis shows ratios above 0 only");
        }
    }

    /** Words for the side below and above the reference line; either may be empty. */
    public record Sides(String lower, String higher) {}

    /**
     * A comparison.
     *
     * @param label what is compared
     * @param estimate empty where the comparison was refused
     * @param sameWithin the values that count as the same, empty where none were declared
     * @param figure the estimate in words as the table has it; for a refused comparison the reason
     * @param verdict the verdict in words
     * @param caveat the worst caveat in a few words, or empty
     */
    public record Comparison(
            String label,
            Optional<Estimate> estimate,
            Optional<Interval> sameWithin,
            String figure,
            String verdict,
            String caveat) {

        private boolean isPositive() {
            return estimate.map(e -> e.value() > 0
                                    && e.interval().map(i -> i.low() > 0).orElse(true))
                            .orElse(true)
                    && sameWithin.map(band -> band.low() > 0).orElse(true);
        }
    }

    @Override
    public Layout layout(Words words) {
        List<Row> drawn = rows.stream().map(ComparisonChart::row).toList();
        Key key = new Key().with(Key.interval(), estimateMeans).with(Key.shade(Ink.MUTED, RowMarks.SHADE), bandMeans);
        RowsLayout.Scale scale = ratio ? RowsLayout.Scale.RATIO : RowsLayout.Scale.DIFFERENCE;
        return new RowsLayout(axisTitle, scale, drawn, key, sides, words);
    }

    private static Row row(Comparison of) {
        Row row = new Row(of.label(), List.of(), of.estimate()).withCaveat(of.caveat());
        if (of.estimate().isEmpty()) {
            String why = of.figure().isEmpty() ? of.verdict() : of.verdict() + ": " + of.figure();
            return row.withInstead(why);
        }
        return row.withFigure(of.figure(), of.verdict()).withBand(of.sameWithin());
    }
}
