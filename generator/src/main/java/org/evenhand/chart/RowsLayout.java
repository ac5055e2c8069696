package org.evenhand.chart;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.evenhand.words.Words;

/**
 * Charts of rows: a label at the left, marks over a common horizontal axis, figures at the right.
 *
 * @param axisTitle quantity with unit
 * @param scale kind of axis
 * @param rows from top to bottom
 * @param key what the marks mean
 * @param sides words over the plot, either side of the reference line
 */
record RowsLayout(String axisTitle, Scale scale, List<Row> rows, Key key, ComparisonChart.Sides sides, Words words)
        implements Layout {

    enum Scale {
        VALUES,
        DIFFERENCE,
        RATIO,
        PERCENT
    }

    RowsLayout {
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a chart needs at least one row");
        }
    }

    RowsLayout(String axisTitle, Scale scale, List<Row> rows, Key key, Words words) {
        this(axisTitle, scale, rows, key, new ComparisonChart.Sides("", ""), words);
    }

    /** A key with the kinds of dots that occur. */
    static Key dots(List<Row> rows, String dotMeans, Words words) {
        Key key = new Key();
        if (RowsPlan.has(rows, Dot.Bound.EXACT)) {
            key.with(Key.sign(Sign.DOT, Ink.SERIES_1), dotMeans);
        }
        if (RowsPlan.has(rows, Dot.Bound.AT_LEAST)) {
            key.with(Key.sign(Sign.AT_LEAST, Ink.SERIES_1), words.say("chart.at-least"));
        }
        if (RowsPlan.has(rows, Dot.Bound.AT_MOST)) {
            key.with(Key.sign(Sign.AT_MOST, Ink.SERIES_1), words.say("chart.at-most"));
        }
        return key;
    }

    private RowsPlan plan(int width) {
        boolean hasSides = !sides.lower().isEmpty() || !sides.higher().isEmpty();
        return RowsPlan.of(rows, width, hasSides ? 22 : 4, this::axis);
    }

    private List<String> titleLines(RowsPlan plan, int width) {
        return Lettering.wrap(axisTitle, Sheet.SMALL, width - plan.axis().startPx(), 2);
    }

    @Override
    public int height(int width) {
        RowsPlan plan = plan(width);
        double below = 24 + titleLines(plan, width).size() * RowText.LINE + 6 + key.height(width) + 4;
        return (int) Math.ceil(plan.bottom() + below);
    }

    @Override
    public void paint(Sheet sheet) {
        RowsPlan plan = plan(sheet.width());
        Axis axis = plan.axis();
        for (RowsPlan.Place place : plan.rows()) {
            RowMarks.shades(sheet, place, axis);
            if (place.top() > plan.top()) {
                sheet.fill(Ink.MUTED, 0.3, new Rectangle2D.Double(0, place.top(), sheet.width(), 0.6));
            }
        }
        reference(sheet, plan);
        Plot plot = new Plot(0, 0, sheet.width(), (int) Math.ceil(plan.bottom()));
        for (RowsPlan.Place place : plan.rows()) {
            place.text().paint(sheet, place.textCentre());
            RowMarks.instead(sheet, place, axis.startPx());
            RowMarks.paint(sheet, plot, place, axis);
        }
        plot.paint(sheet);
        Frame.below(sheet, axis, plan.bottom(), ticks(axis));
        double baseline = plan.bottom() + 36;
        for (String line : titleLines(plan, sheet.width())) {
            sheet.text(Ink.INK, Sheet.SMALL, Sheet.Anchor.START, axis.startPx(), baseline, line);
            baseline += RowText.LINE;
        }
        key.paint(sheet, 0, sheet.width(), baseline - RowText.LINE + 8);
    }

    private Axis axis(double startPx, double endPx) {
        if (scale == Scale.PERCENT) {
            return new Axis(0, 100, false, startPx, endPx);
        }
        Range range = new Range();
        if (scale == Scale.DIFFERENCE) {
            range.include(0);
        }
        for (Row row : rows) {
            row.dots().forEach(dot -> range.include(dot.value()));
            row.estimate().ifPresent(range::include);
            row.band().ifPresent(range::include);
            row.floor().ifPresent(range::include);
        }
        return scale == Scale.RATIO ? range.aroundOne(startPx, endPx) : range.linear(startPx, endPx);
    }

    private Ticks ticks(Axis axis) {
        int most = (int) Math.max(3, axis.lengthPx() / 48);
        Ticks ticks = axis.logarithmic()
                ? Ticks.logarithmic(axis.low(), axis.high(), most)
                : Ticks.linear(axis.low(), axis.high(), most);
        return ticks.in(words);
    }

    private void reference(Sheet sheet, RowsPlan plan) {
        if (scale != Scale.DIFFERENCE && scale != Scale.RATIO) {
            return;
        }
        Axis axis = plan.axis();
        double value = scale == Scale.RATIO ? 1 : 0;
        double x = axis.at(value);
        for (RowsPlan.Place place : plan.rows()) {
            if (place.row().instead().isEmpty()) {
                sheet.line(Ink.INK, 1, x, place.marksTop(), x, place.bottom());
            }
        }
        sheet.mark(RowMarks.SCALE, "reference", value, axis);
        // A word cut short on one side would leave the other to be guessed: what does not fit is left out.
        String lower = "← " + sides.lower();
        if (!sides.lower().isEmpty() && Lettering.width(lower, Sheet.SMALL) <= x - 8) {
            sheet.text(Ink.MUTED, Sheet.SMALL, Sheet.Anchor.END, x - 8, plan.top() - 8, lower);
        }
        String higher = sides.higher() + " →";
        if (!sides.higher().isEmpty() && Lettering.width(higher, Sheet.SMALL) <= sheet.width() - x - 8) {
            sheet.text(Ink.MUTED, Sheet.SMALL, Sheet.Anchor.START, x + 8, plan.top() - 8, higher);
        }
    }
}
