package org.evenhand.chart;

import org.evenhand.words.Words;

/** A plane with points, a fitted line and its band. */
record TrendLayout(TrendChart chart, Words words) implements Layout {

    private static final double TOP = 26;
    private static final double PLOT = 260;
    private static final LineLook PROPORTIONAL = new LineLook(Ink.MUTED, 1.2, new float[] {5, 3});

    private Key key() {
        TrendChart.Means means = chart.means();
        Key key = new Key().with(Key.sign(Sign.RING, Ink.SERIES_1), means.point());
        if (!chart.fit().isEmpty()) {
            key.with(Key.line(Ink.INK, 1.5, null), means.fit())
                    .with(Key.shade(Ink.MUTED, RowMarks.SHADE), means.band());
        }
        if (chart.proportionalSlope().isPresent()) {
            key.with(Key.line(PROPORTIONAL.ink(), PROPORTIONAL.widthPx(), PROPORTIONAL.dash()), means.proportional());
        }
        return key;
    }

    @Override
    public int height(int width) {
        return (int) Math.ceil(TOP + PLOT + 42 + key().height(width) + 4);
    }

    private Axis xAxis(double startPx, double endPx) {
        Range range = new Range();
        chart.points().forEach(point -> range.include(point.x()));
        chart.fit().forEach(point -> range.include(point.x()));
        return range.linear(startPx, endPx);
    }

    private Axis yAxis(Axis x) {
        Range range = new Range();
        chart.points().forEach(point -> range.include(point.y()));
        chart.fit().forEach(point -> {
            range.include(point.y());
            point.band().ifPresent(range::include);
        });
        chart.proportionalSlope()
                .ifPresent(slope -> range.include(slope * x.low()).include(slope * x.high()));
        return range.linear(TOP + PLOT, TOP);
    }

    @Override
    public void paint(Sheet sheet) {
        Ticks yTicks = ticks(yAxis(xAxis(0, 1)), 32);
        double left = Frame.room(yTicks);
        Axis x = xAxis(left, sheet.width() - 14);
        Axis y = yAxis(x);
        sheet.text(
                Ink.INK,
                Sheet.SMALL,
                Sheet.Anchor.START,
                0,
                12,
                Lettering.shorten(chart.yTitle(), Sheet.SMALL, sheet.width()));
        Plot plot = new Plot((int) left, (int) TOP, (int) Math.ceil(x.lengthPx()), (int) PLOT);
        fit(plot, x, y);
        chart.proportionalSlope().ifPresent(slope -> {
            double[] ends = {x.low(), x.high()};
            double[] heights = {slope * x.low(), slope * x.high()};
            plot.line(PROPORTIONAL.ink(), PROPORTIONAL.widthPx(), PROPORTIONAL.dash(), x.at(ends), y.at(heights));
        });
        double[] xs = chart.points().stream().mapToDouble(TrendChart.Point::x).toArray();
        double[] ys = chart.points().stream().mapToDouble(TrendChart.Point::y).toArray();
        plot.signs(Sign.RING, Ink.SERIES_1, 8, x.at(xs), y.at(ys));
        for (TrendChart.Point point : chart.points()) {
            sheet.mark("x", "run", point.x(), x);
            sheet.mark("y", "run", point.y(), y);
        }
        plot.paint(sheet);
        Frame.left(sheet, y, left, yTicks);
        Frame.below(sheet, x, TOP + PLOT, ticks(x, 56));
        sheet.text(
                Ink.INK,
                Sheet.SMALL,
                Sheet.Anchor.START,
                left,
                TOP + PLOT + 36,
                Lettering.shorten(chart.xTitle(), Sheet.SMALL, sheet.width() - left));
        key().paint(sheet, 0, sheet.width(), TOP + PLOT + 42);
    }

    private Ticks ticks(Axis axis, double spacingPx) {
        return Ticks.linear(axis.low(), axis.high(), (int) Math.max(3, axis.lengthPx() / spacingPx))
                .in(words);
    }

    private void fit(Plot plot, Axis x, Axis y) {
        if (chart.fit().isEmpty()) {
            return;
        }
        double[] xs =
                x.at(chart.fit().stream().mapToDouble(TrendChart.FitPoint::x).toArray());
        double[] ys =
                y.at(chart.fit().stream().mapToDouble(TrendChart.FitPoint::y).toArray());
        if (chart.fit().stream().allMatch(point -> point.band().isPresent())) {
            double[] lows = chart.fit().stream()
                    .mapToDouble(p -> p.band().orElseThrow().low())
                    .toArray();
            double[] highs = chart.fit().stream()
                    .mapToDouble(p -> p.band().orElseThrow().high())
                    .toArray();
            plot.band(Ink.MUTED, RowMarks.SHADE, xs, y.at(lows), y.at(highs));
        }
        plot.line(Ink.INK, 1.5, null, xs, ys);
    }
}
