package org.evenhand.chart;

import java.util.List;

/** Draws what lies on the axis in one row. */
final class RowMarks {

    /** Opacity of shaded ranges. */
    static final double SHADE = 0.18;

    /** The name of the axis in the list of marks. */
    static final String SCALE = "values";

    private static final double SIGN = 7;

    private RowMarks() {}

    /** What lies behind the marks: the band that counts as the same, the background of a sound. */
    static void shades(Sheet sheet, RowsPlan.Place place, Axis axis) {
        place.row().band().ifPresent(band -> {
            double from = axis.at(band.low());
            double to = axis.at(band.high());
            sheet.shade(Ink.MUTED, SHADE, from, place.marksTop(), to, place.bottom());
            sheet.mark(SCALE, "band low", band.low(), axis);
            sheet.mark(SCALE, "band high", band.high(), axis);
        });
        place.row().floor().ifPresent(floor -> {
            double edge = axis.at(floor);
            sheet.shade(Ink.MUTED, SHADE, axis.startPx(), place.marksTop(), edge, place.bottom());
            sheet.line(Ink.MUTED, 1, edge, place.marksTop(), edge, place.bottom());
            sheet.mark(SCALE, "floor", floor, axis);
        });
    }

    static void paint(Sheet sheet, Plot plot, RowsPlan.Place place, Axis axis) {
        Row row = place.row();
        Swarm swarm = place.swarm();
        // A single run is its own estimate: a second mark would only say it twice.
        boolean alone = row.dots().size() == 1
                && row.estimate().map(estimate -> estimate.interval().isEmpty()).orElse(false);
        boolean both = !row.dots().isEmpty() && row.estimate().isPresent() && !alone;
        double dotsTop = place.marksCentre() - (swarm.height() + (both ? 18 : 0)) / 2;
        double estimateAt = both ? dotsTop + swarm.height() + 13 : place.marksCentre();
        double right = swarm.paint(sheet, plot, SCALE, axis, dotsTop);
        if (row.estimate().isPresent() && !alone) {
            right = estimate(sheet, plot, row.estimate().get(), axis, estimateAt);
        }
        if (!row.caveat().isEmpty() && row.instead().isEmpty()) {
            plot.sign(Sign.CAVEAT, Ink.ACCENT, 10, right + 11, estimateAt);
        }
    }

    /** Returns the right end of the mark. */
    private static double estimate(Sheet sheet, Plot plot, Estimate estimate, Axis axis, double y) {
        double x = axis.at(estimate.value());
        double right = x + 5;
        if (estimate.interval().isPresent()) {
            Interval interval = estimate.interval().get();
            double low = axis.at(interval.low());
            right = axis.at(interval.high());
            plot.line(Ink.INK, 1.6, null, new double[] {low, right}, new double[] {y, y});
            plot.signs(Sign.STROKE, Ink.INK, 8, new double[] {low, right}, new double[] {y, y});
            sheet.mark(SCALE, "low", interval.low(), axis);
            sheet.mark(SCALE, "high", interval.high(), axis);
        }
        plot.sign(Sign.DIAMOND, Ink.INK, SIGN, x, y);
        sheet.mark(SCALE, "estimate", estimate.value(), axis);
        return right;
    }

    /** The text of a row without marks. */
    static void instead(Sheet sheet, RowsPlan.Place place, double left) {
        if (place.row().instead().isEmpty()) {
            return;
        }
        double room = sheet.width() - left - 8;
        List<String> lines = Lettering.wrap(place.row().instead(), Sheet.SMALL, room, 2);
        double y = place.marksCentre() - lines.size() * RowText.LINE / 2 + 12;
        for (String line : lines) {
            sheet.text(Ink.MUTED, Sheet.SMALL, Sheet.Anchor.START, left, y, line);
            y += RowText.LINE;
        }
    }
}
