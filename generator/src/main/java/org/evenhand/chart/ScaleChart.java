package org.evenhand.chart;

import java.util.List;
import org.evenhand.words.Words;

/**
 * Counts on an ordered scale: a row for each level, a column for each place, a dot for each count.
 *
 * @param axisTitle what was judged
 * @param places the scale, from low to high, at least one
 * @param levels from top to bottom, at least one
 * @param dotMeans words for the key, such as "one listener"
 */
public record ScaleChart(String axisTitle, List<String> places, List<Level> levels, String dotMeans) implements Figure {

    /** @throws IllegalArgumentException if a level has not one count for each place */
    public ScaleChart {
        places = List.copyOf(places);
        levels = List.copyOf(levels);
        if (places.isEmpty() || levels.isEmpty()) {
            throw new IllegalArgumentException("a scale needs places and levels");
        }
        for (Level level : levels) {
            if (level.counts().size() != places.size()) {
                throw new IllegalArgumentException("level " + level.label() + " needs " + places.size() + " counts");
            }
        }
    }

    /**
     * A level.
     *
     * @param label its name
     * @param counts one for each place, not negative
     * @param caveat the worst caveat in a few words, or empty
     */
    public record Level(String label, List<Integer> counts, String caveat) {
        public Level {
            counts = List.copyOf(counts);
        }
    }

    @Override
    public Layout layout(Words words) {
        return new ScaleLayout(this, words);
    }
}
