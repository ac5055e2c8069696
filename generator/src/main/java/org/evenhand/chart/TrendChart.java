package org.evenhand.chart;

import java.util.List;
import java.util.Optional;
import org.evenhand.words.Words;

/**
 * Points over a numeric factor with a fitted line, its band, and the line of proportion.
 *
 * @param xTitle the factor with its unit
 * @param yTitle the measurand with its unit
 * @param points one for each run, at least one
 * @param fit the fitted line from left to right, empty for none; a straight one needs its two ends and enough points
 *     between for the band to look round
 * @param proportionalSlope slope of the line through the origin, empty for none
 * @param means words for the key
 */
public record TrendChart(
        String xTitle,
        String yTitle,
        List<Point> points,
        List<FitPoint> fit,
        Optional<Double> proportionalSlope,
        Means means)
        implements Figure {

    public TrendChart {
        points = List.copyOf(points);
        fit = List.copyOf(fit);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a trend needs points");
        }
    }

    /** A run: finite values in the units of the axes. */
    public record Point(double x, double y) {

        /** @throws IllegalArgumentException if a value is not finite */
        public Point {
            if (!(Double.isFinite(x) && Double.isFinite(y))) {
                throw new IllegalArgumentException("a point has finite values, not " + x + ", " + y);
            }
        }
    }

    /** A place of the fitted line, with its band there; empty where there is no band. */
    public record FitPoint(double x, double y, Optional<Interval> band) {

        /** @throws IllegalArgumentException if a value is not finite */
        public FitPoint {
            if (!(Double.isFinite(x) && Double.isFinite(y))) {
                throw new IllegalArgumentException("a line goes through finite values, not " + x + ", " + y);
            }
        }
    }

    /** Words for the key; an empty one is left out. */
    public record Means(String point, String fit, String band, String proportional) {}

    @Override
    public Layout layout(Words words) {
        return new TrendLayout(this, words);
    }
}
