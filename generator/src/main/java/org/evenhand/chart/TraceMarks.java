package org.evenhand.chart;

import java.util.List;

/**
 * Notes where the values of a trace were drawn. Marks of time follow those of the values they belong to.
 *
 * @param sheet on which they are noted, if it is marked at all
 * @param scale name of the value axis
 * @param line name of the trace, put before the kinds of its marks; empty for none
 */
record TraceMarks(Sheet sheet, String scale, String line, Axis x, Axis y) {

    /** The name of the time axis in the list of marks. */
    static final String TIME = "time";

    /** The marks of one line of a panel. */
    static TraceMarks of(Sheet sheet, LogChart.Panel panel, LogChart.Line line, Axis x, Axis y) {
        return new TraceMarks(sheet, panel.title(), line.label(), x, y);
    }

    /** Between two stretches nothing is drawn. */
    void gap(Trace.Bucket before, Trace.Bucket after) {
        time("gap from", before.toS(), x.at(before.toS()));
        time("gap to", after.fromS(), x.at(after.fromS()));
    }

    /** A sample that stands for itself alone. */
    void sample(Trace.Bucket bucket, double[] point) {
        value("sample", bucket.first(), point[1]);
        time("sample", bucket.fromS(), point[0]);
    }

    /** The four points of a stretch. When its extremes came is not known, only that they came within it. */
    void stretch(Trace.Bucket bucket, double[] first, double[] low, double[] high, double[] last) {
        value("first", bucket.first(), first[1]);
        time("first", bucket.fromS(), first[0]);
        value("low", bucket.low(), low[1]);
        value("high", bucket.high(), high[1]);
        value("last", bucket.last(), last[1]);
        time("last", bucket.toS(), last[0]);
    }

    /** The mean of a stretch, in the middle of its time. */
    void mean(Trace.Bucket bucket, double[] point) {
        value("mean", bucket.mean(), point[1]);
        time("mean", (bucket.fromS() + bucket.toS()) / 2, point[0]);
    }

    /** The band of a piece, each stretch from its left to its right end. */
    void band(List<Trace.Bucket> piece, double[] xs, double[] lows, double[] highs) {
        if (!sheet.isMarked()) {
            return;
        }
        for (int i = 0; i < piece.size(); i++) {
            value("band low", piece.get(i).low(), lows[2 * i]);
            value("band high", piece.get(i).high(), highs[2 * i]);
            time("band from", piece.get(i).fromS(), xs[2 * i]);
            time("band to", piece.get(i).toS(), xs[2 * i + 1]);
        }
    }

    private void value(String what, double value, double pixel) {
        note(scale, what, value, y, pixel);
    }

    private void time(String what, double timeS, double pixel) {
        note(TIME, what, timeS, x, pixel);
    }

    private void note(String axisName, String what, double value, Axis axis, double pixel) {
        if (sheet.isMarked()) {
            sheet.mark(axisName, line.isEmpty() ? what : line + " " + what, value, axis, pixel);
        }
    }
}
