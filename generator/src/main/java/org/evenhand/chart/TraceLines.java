package org.evenhand.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * How a trace is drawn: a line through its values; or, where samples swing so fast that lines would cover the panel,
 * the band from lowest to highest with the mean in it.
 *
 * @param pieces uninterrupted stretches of buckets, in order of time
 * @param x time axis
 * @param y value axis
 */
record TraceLines(List<List<Trace.Bucket>> pieces, Axis x, Axis y) {

    /** Half of all buckets must reach over more pixels than this to be drawn as a band. */
    private static final double SWING_PX = 6;

    private static final double BAND = 0.35;

    /** The lines of a trace in about as many buckets as given at most. */
    static TraceLines of(Trace trace, Axis x, Axis y, int mostBuckets) {
        List<Trace.Bucket> buckets = trace.buckets();
        double longGapS = 2 * (x.high() - x.low()) / Math.max(1, x.lengthPx());
        int before = Integer.MAX_VALUE;
        while (buckets.size() > mostBuckets && buckets.size() < before) {
            before = buckets.size();
            buckets = Thinner.pairs(buckets, longGapS);
        }
        List<List<Trace.Bucket>> pieces = new ArrayList<>();
        for (Trace.Bucket bucket : buckets) {
            if (pieces.isEmpty() || bucket.gapBefore()) {
                pieces.add(new ArrayList<>());
            }
            pieces.get(pieces.size() - 1).add(bucket);
        }
        return new TraceLines(pieces, x, y);
    }

    /** Height in pixels at which the drawn line ends; NaN for an empty trace. */
    double endPx() {
        if (pieces.isEmpty()) {
            return Double.NaN;
        }
        List<Trace.Bucket> piece = pieces.get(pieces.size() - 1);
        Trace.Bucket last = piece.get(piece.size() - 1);
        return y.at(swings() ? last.mean() : last.last());
    }

    /** Draws it, and notes where its values lie. */
    void plot(Plot plot, LineLook look, TraceMarks marks) {
        boolean swings = swings();
        List<List<double[]>> lines = new ArrayList<>();
        for (List<Trace.Bucket> piece : pieces) {
            if (swings) {
                band(plot, look, piece, marks);
            }
            List<double[]> points = new ArrayList<>();
            for (Trace.Bucket bucket : piece) {
                if (swings) {
                    double[] mean = {middle(bucket), y.at(bucket.mean())};
                    points.add(mean);
                    marks.mean(bucket, mean);
                } else {
                    values(points, bucket, marks);
                }
            }
            lines.add(points);
        }
        for (int i = 1; i < pieces.size(); i++) {
            List<Trace.Bucket> before = pieces.get(i - 1);
            marks.gap(before.get(before.size() - 1), pieces.get(i).get(0));
        }
        Polyline line = Polyline.of(lines);
        plot.line(look.ink(), look.widthPx(), look.dash(), line.xs(), line.ys());
        Polyline singles = line.singles();
        plot.signs(Sign.DOT, look.ink(), 3, singles.xs(), singles.ys());
    }

    /** Whether it is drawn as a band. */
    boolean swings() {
        double[] reaches = pieces.stream()
                .flatMap(List::stream)
                .mapToDouble(bucket -> Math.abs(y.at(bucket.high()) - y.at(bucket.low())))
                .sorted()
                .toArray();
        return reaches.length > 0 && reaches[reaches.length / 2] > SWING_PX;
    }

    private double middle(Trace.Bucket bucket) {
        return (x.at(bucket.fromS()) + x.at(bucket.toS())) / 2;
    }

    private void band(Plot plot, LineLook look, List<Trace.Bucket> piece, TraceMarks marks) {
        int n = piece.size();
        double[] xs = new double[2 * n];
        double[] lows = new double[2 * n];
        double[] highs = new double[2 * n];
        for (int i = 0; i < n; i++) {
            Trace.Bucket bucket = piece.get(i);
            // At least half a pixel wide, so that a lonely extreme is seen.
            xs[2 * i] = Math.min(x.at(bucket.fromS()), middle(bucket) - 0.25);
            xs[2 * i + 1] = Math.max(x.at(bucket.toS()), middle(bucket) + 0.25);
            for (int side = 0; side < 2; side++) {
                lows[2 * i + side] = y.at(bucket.low());
                highs[2 * i + side] = y.at(bucket.high());
            }
        }
        plot.band(look.ink(), BAND, xs, lows, highs);
        marks.band(piece, xs, lows, highs);
    }

    private void values(List<double[]> points, Trace.Bucket bucket, TraceMarks marks) {
        double from = x.at(bucket.fromS());
        double[] first = {from, y.at(bucket.first())};
        points.add(first);
        if (bucket.count() == 1) {
            marks.sample(bucket, first);
            return;
        }
        double to = x.at(bucket.toS());
        double third = (to - from) / 3;
        double[] low = {bucket.lowFirst() ? from + third : to - third, y.at(bucket.low())};
        double[] high = {bucket.lowFirst() ? to - third : from + third, y.at(bucket.high())};
        double[] last = {to, y.at(bucket.last())};
        points.add(bucket.lowFirst() ? low : high);
        points.add(bucket.lowFirst() ? high : low);
        points.add(last);
        marks.stretch(bucket, first, low, high, last);
    }
}
