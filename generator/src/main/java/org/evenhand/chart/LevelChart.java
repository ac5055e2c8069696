package org.evenhand.chart;

import java.util.List;
import java.util.Optional;
import org.evenhand.words.Words;

/**
 * One row for each level: every run as a dot, below it the mean with its interval.
 *
 * @param axisTitle the measurand with its unit
 * @param levels from top to bottom, at least one
 * @param dotMeans words for the key, such as "one run"
 * @param estimateMeans words for the key, such as "mean with 95 % interval"
 */
public record LevelChart(String axisTitle, List<Level> levels, String dotMeans, String estimateMeans)
        implements Figure {

    public LevelChart {
        levels = List.copyOf(levels);
    }

    /**
     * A level.
     *
     * @param label its name
     * @param dots one for each run, in any order
     * @param estimate empty where there is none, for example because every run is censored
     * @param figure the estimate in words as the table has it, or empty
     * @param caveat the worst caveat in a few words, or empty
     */
    public record Level(String label, List<Dot> dots, Optional<Estimate> estimate, String figure, String caveat) {
        public Level {
            dots = List.copyOf(dots);
        }
    }

    @Override
    public Layout layout(Words words) {
        List<Row> rows = levels.stream()
                .map(level -> new Row(level.label(), level.dots(), level.estimate())
                        .withFigure(level.figure(), "")
                        .withCaveat(level.caveat()))
                .toList();
        Key key = RowsLayout.dots(rows, dotMeans, words).with(Key.interval(), estimateMeans);
        return new RowsLayout(axisTitle, RowsLayout.Scale.VALUES, rows, key, words);
    }
}
