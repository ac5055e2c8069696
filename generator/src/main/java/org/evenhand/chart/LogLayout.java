package org.evenhand.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenhand.words.Words;

/** Panels of lines over a common time axis. */
record LogLayout(LogChart chart, Words words) implements Layout {

    private static final double TITLE = 24;
    private static final double BETWEEN = 12;
    /** Buckets of all lines together: keeps even a crowded chart small. */
    private static final int ALL_BUCKETS = 3000;

    private double panelHeight() {
        int n = chart.panels().size();
        return n == 1 ? 220 : n <= 3 ? 130 : 90;
    }

    private double bottom() {
        int n = chart.panels().size();
        return n * (TITLE + panelHeight()) + (n - 1) * BETWEEN;
    }

    LogChart.Place place(int width) {
        Axis time = time(width);
        return new LogChart.Place(time.startPx(), time.endPx(), TITLE, bottom());
    }

    /** A panel at its place: its value axis, and its lines as they are drawn. */
    private record Placed(LogChart.Panel panel, Axis y, List<TraceLines> lines) {}

    private Axis time(int width) {
        double left = 0;
        for (LogChart.Panel panel : chart.panels()) {
            left = Math.max(left, Frame.room(ticks(range(panel.scale()).linear(panelHeight(), 0))));
        }
        double right = width - EndLabels.room(endLabels(), width * 0.28);
        return new Axis(chart.fromS(), chart.toS(), false, left, right);
    }

    private List<Placed> placed(Axis time) {
        int count =
                chart.panels().stream().mapToInt(panel -> panel.lines().size()).sum();
        int buckets = Math.max(80, ALL_BUCKETS / Math.max(1, count));
        List<Placed> placed = new ArrayList<>();
        double top = TITLE;
        for (LogChart.Panel panel : chart.panels()) {
            Axis y = range(panel.scale()).linear(top + panelHeight(), top);
            List<TraceLines> lines = panel.lines().stream()
                    .map(line -> TraceLines.of(line.trace(), time, y, buckets))
                    .toList();
            placed.add(new Placed(panel, y, lines));
            top += panelHeight() + BETWEEN + TITLE;
        }
        return placed;
    }

    private Key key(List<Placed> placed) {
        Key key = new Key();
        if (!chart.spans().isEmpty()) {
            key.with(Key.shade(Ink.ACCENT, RowMarks.SHADE), chart.spanMeans());
        }
        boolean swings =
                placed.stream().flatMap(panel -> panel.lines().stream()).anyMatch(TraceLines::swings);
        boolean thinned = chart.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .anyMatch(line -> line.trace().thinned());
        if (swings) {
            key.with(Key.meanInBand(), words.say("chart.mean-and-extremes"));
        }
        if (thinned) {
            key.with(Key.line(Ink.INK, 1.5, null), words.say("chart.thinned"));
        }
        return key;
    }

    @Override
    public int height(int width) {
        return (int) Math.ceil(bottom() + 42 + key(placed(time(width))).height(width) + 4);
    }

    private List<String> endLabels() {
        List<String> labels = new ArrayList<>();
        for (LogChart.Panel panel : chart.panels()) {
            panel.lines().forEach(line -> labels.add(line.label()));
            panel.limits().forEach(limit -> labels.add(limit.label()));
        }
        return labels;
    }

    /** Looks by label, in order of first appearance. */
    private Map<String, LineLook> looks() {
        Map<String, LineLook> looks = new LinkedHashMap<>();
        int series = 0;
        for (LogChart.Panel panel : chart.panels()) {
            for (LogChart.Line line : panel.lines()) {
                if (!line.surroundings() && !looks.containsKey(line.label())) {
                    looks.put(line.label(), LineLook.series(series++));
                }
            }
        }
        return looks;
    }

    private Range range(String scale) {
        Range range = new Range();
        for (LogChart.Panel panel : chart.panels()) {
            if (panel.scale().equals(scale)) {
                panel.limits().forEach(limit -> range.include(limit.value()));
                panel.lines()
                        .forEach(line -> line.trace()
                                .buckets()
                                .forEach(bucket -> range.include(bucket.low()).include(bucket.high())));
                range.atLeast(panel.leastSpan());
            }
        }
        return range;
    }

    @Override
    public void paint(Sheet sheet) {
        Axis time = time(sheet.width());
        List<Placed> placed = placed(time);
        Map<String, LineLook> looks = looks();
        for (Placed panel : placed) {
            String title = Lettering.shorten(panel.panel().title(), Sheet.TEXT, sheet.width());
            sheet.text(Ink.INK, Sheet.TEXT, Sheet.Anchor.START, 0, panel.y().endPx() - 10, title);
            spans(sheet, time, panel.y());
            panel(sheet, panel, time, looks);
            Frame.left(sheet, panel.y(), time.startPx(), ticks(panel.y()));
        }
        Ticks ticks = Ticks.time(chart.fromS(), chart.toS(), (int) Math.max(3, time.lengthPx() / 40))
                .in(words);
        Frame.below(sheet, time, bottom(), ticks);
        String title = chart.timeTitle() + " (" + ticks.unit() + ")";
        sheet.text(Ink.INK, Sheet.SMALL, Sheet.Anchor.START, time.startPx(), bottom() + 36, title);
        key(placed).paint(sheet, 0, sheet.width(), bottom() + 42);
    }

    private Ticks ticks(Axis y) {
        return Ticks.linear(y.low(), y.high(), (int) Math.max(3, y.lengthPx() / 22))
                .in(words);
    }

    private void spans(Sheet sheet, Axis time, Axis y) {
        for (LogChart.Span span : chart.spans()) {
            double from = Math.max(time.startPx(), time.at(span.fromS()));
            double to = Math.min(time.endPx(), time.at(span.toS()));
            if (to >= from) {
                // A short span must still be seen.
                double shown = Math.max(to, from + 1);
                sheet.shade(Ink.ACCENT, RowMarks.SHADE, from, y.endPx(), shown, y.startPx());
                sheet.mark(TraceMarks.TIME, "span from", span.fromS(), time, from);
                sheet.mark(TraceMarks.TIME, "span to", span.toS(), time, shown);
            }
        }
    }

    private static void panel(Sheet sheet, Placed placed, Axis time, Map<String, LineLook> looks) {
        LogChart.Panel panel = placed.panel();
        Axis y = placed.y();
        EndLabels ends = new EndLabels();
        for (LogChart.Limit limit : panel.limits()) {
            double at = y.at(limit.value());
            sheet.dashes(Ink.INK, 1, new float[] {5, 3}, time.startPx(), at, time.endPx(), at);
            sheet.mark(panel.title(), "limit", limit.value(), y);
            ends.add(time.endPx(), at, limit.label());
        }
        int left = (int) time.startPx();
        int right = (int) Math.ceil(time.endPx());
        Plot plot = new Plot(left, (int) y.endPx(), right - left, (int) Math.ceil(y.lengthPx()));
        // The most important line is drawn last, over the others.
        for (int i = panel.lines().size() - 1; i >= 0; i--) {
            LogChart.Line line = panel.lines().get(i);
            LineLook look = line.surroundings() ? LineLook.back() : looks.get(line.label());
            placed.lines().get(i).plot(plot, look, TraceMarks.of(sheet, panel, line, time, y));
            List<Trace.Bucket> buckets = line.trace().buckets();
            if (!buckets.isEmpty()) {
                Trace.Bucket last = buckets.get(buckets.size() - 1);
                ends.add(time.at(last.toS()), placed.lines().get(i).endPx(), line.label());
            }
        }
        plot.paint(sheet);
        ends.paint(sheet, time.endPx(), y.endPx(), y.startPx());
    }
}
