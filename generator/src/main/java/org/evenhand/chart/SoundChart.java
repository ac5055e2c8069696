package org.evenhand.chart;

import java.util.List;
import java.util.Optional;
import org.evenhand.words.Words;

/**
 * Sound levels in decibels as dots, never as bars, over the shaded background of each row.
 *
 * @param axisTitle the quantity with its unit
 * @param levels from top to bottom, at least one
 * @param dotMeans words for the key, such as "one run"
 * @param estimateMeans words for the key, such as "energetic mean with 95 % interval"
 * @param floorMeans words for the key, such as "at or below the background"
 */
public record SoundChart(String axisTitle, List<Level> levels, String dotMeans, String estimateMeans, String floorMeans)
        implements Figure {

    public SoundChart {
        levels = List.copyOf(levels);
    }

    /**
     * A level.
     *
     * @param label its name
     * @param dots one for each run; {@link Dot#atMost} for an upper bound
     * @param estimate empty where there is none
     * @param backgroundDb level of the background, empty where it was not measured
     * @param figure the estimate in words as the table has it, or empty
     * @param caveat the worst caveat in a few words, or empty
     */
    public record Level(
            String label,
            List<Dot> dots,
            Optional<Estimate> estimate,
            Optional<Double> backgroundDb,
            String figure,
            String caveat) {
        public Level {
            dots = List.copyOf(dots);
        }
    }

    @Override
    public Layout layout(Words words) {
        List<Row> rows = levels.stream()
                .map(level -> new Row(level.label(), level.dots(), level.estimate())
                        .withFigure(level.figure(), "")
                        .withCaveat(level.caveat())
                        .withFloor(level.backgroundDb()))
                .toList();
        Key key = RowsLayout.dots(rows, dotMeans, words)
                .with(Key.interval(), estimateMeans)
                .with(Key.shade(Ink.MUTED, RowMarks.SHADE), floorMeans);
        return new RowsLayout(axisTitle, RowsLayout.Scale.VALUES, rows, key, words);
    }
}
