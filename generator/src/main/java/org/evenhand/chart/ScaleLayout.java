package org.evenhand.chart;

import java.util.List;
import org.evenhand.words.Words;

/**
 * Stacks of dots, all with one pitch: a stack twice as high is twice the count. Where dots would be too small to tell
 * apart, a bar of the same height stands for the stack.
 */
record ScaleLayout(ScaleChart chart, Words words) implements Layout {

    private static final double STACK = 72;
    private static final double LARGEST_PITCH = 9;
    private static final double SMALLEST_PITCH = 3;
    private static final double LINE = 16;

    private Key key() {
        return isOfDots() ? new Key().with(Key.sign(Sign.DOT, Ink.SERIES_1), chart.dotMeans()) : new Key();
    }

    private boolean isOfDots() {
        return pitch() >= SMALLEST_PITCH;
    }

    private int most() {
        return chart.levels().stream()
                .flatMap(level -> level.counts().stream())
                .mapToInt(Integer::intValue)
                .max()
                .orElse(0);
    }

    private double pitch() {
        return Math.min(LARGEST_PITCH, STACK / Math.max(1, most()));
    }

    private double rowHeight() {
        return Math.max(46, most() * pitch() + 30);
    }

    private double bottom() {
        return 4 + chart.levels().size() * rowHeight();
    }

    private double column(int width) {
        return (width - labelWidth(width) - 20) / chart.places().size();
    }

    private int placeLines(int width) {
        return chart.places().stream()
                .mapToInt(place ->
                        Lettering.wrap(place, Sheet.SMALL, column(width) - 6, 2).size())
                .max()
                .orElse(1);
    }

    private double labelWidth(int width) {
        double widest = 0;
        for (ScaleChart.Level level : chart.levels()) {
            for (String line : Lettering.wrap(level.label(), Sheet.TEXT, width * 0.3, 2)) {
                widest = Math.max(widest, Lettering.width(line, Sheet.TEXT));
            }
            for (String line : caveat(level, width)) {
                widest = Math.max(widest, Lettering.width(line, Sheet.SMALL) + 16);
            }
        }
        return widest;
    }

    private static List<String> caveat(ScaleChart.Level level, int width) {
        return level.caveat().isEmpty() ? List.of() : Lettering.wrap(level.caveat(), Sheet.SMALL, width * 0.3 - 16, 2);
    }

    @Override
    public int height(int width) {
        return (int) Math.ceil(bottom() + placeLines(width) * LINE + 24 + key().height(width) + 4);
    }

    @Override
    public void paint(Sheet sheet) {
        double left = labelWidth(sheet.width()) + 20;
        double column = column(sheet.width());
        for (int i = 0; i < chart.levels().size(); i++) {
            ScaleChart.Level level = chart.levels().get(i);
            double base = 4 + (i + 1) * rowHeight() - 4;
            label(sheet, level, base);
            sheet.line(Ink.MUTED, 0.7, left, base, sheet.width(), base);
            // The axis of a stack: its foot is half a dot above the line, so that the stack stands on it.
            Axis count = new Axis(0, Math.max(1, most()), false, base - 1, base - 1 - Math.max(1, most()) * pitch());
            for (int p = 0; p < chart.places().size(); p++) {
                stack(sheet, level.label(), level.counts().get(p), left + (p + 0.5) * column, count);
            }
        }
        double y = bottom() + 16;
        for (int p = 0; p < chart.places().size(); p++) {
            double line = y;
            for (String part : Lettering.wrap(chart.places().get(p), Sheet.SMALL, column - 6, 2)) {
                sheet.text(Ink.INK, Sheet.SMALL, Sheet.Anchor.MIDDLE, left + (p + 0.5) * column, line, part);
                line += LINE;
            }
        }
        y += placeLines(sheet.width()) * LINE + 4;
        sheet.text(
                Ink.INK,
                Sheet.SMALL,
                Sheet.Anchor.START,
                left,
                y,
                Lettering.shorten(chart.axisTitle(), Sheet.SMALL, sheet.width() - left));
        key().paint(sheet, 0, sheet.width(), y + 6);
    }

    private static void label(Sheet sheet, ScaleChart.Level level, double base) {
        List<String> label = Lettering.wrap(level.label(), Sheet.TEXT, sheet.width() * 0.3, 2);
        List<String> caveat = caveat(level, sheet.width());
        double y = base - (label.size() + caveat.size() - 1) * LINE - 2;
        for (String line : label) {
            sheet.text(Ink.INK, Sheet.TEXT, Sheet.Anchor.START, 0, y, line);
            y += LINE;
        }
        if (!caveat.isEmpty()) {
            sheet.sign(Sign.CAVEAT, Ink.ACCENT, 6, y - 4, 10);
        }
        for (String line : caveat) {
            sheet.text(Ink.ACCENT, Sheet.SMALL, Sheet.Anchor.START, 16, y, line);
            y += LINE;
        }
    }

    private void stack(Sheet sheet, String level, int n, double x, Axis count) {
        if (!isOfDots()) {
            sheet.shade(Ink.SERIES_1, 1, x - 6, count.at(0), x + 6, count.at(n));
        }
        for (int k = 0; k < n && isOfDots(); k++) {
            sheet.sign(Sign.DOT, Ink.SERIES_1, x, count.at(k + 0.5), pitch() * 0.84);
        }
        sheet.mark(level, "count", n, count);
        double above = count.at(n) - 5;
        sheet.text(n == 0 ? Ink.MUTED : Ink.INK, Sheet.SMALL, Sheet.Anchor.MIDDLE, x, above, Integer.toString(n));
    }
}
