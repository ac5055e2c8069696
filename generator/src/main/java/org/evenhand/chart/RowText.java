package org.evenhand.chart;

import java.util.List;
import org.evenhand.quantity.Figures;

/** The texts of a row, broken into lines: label and caveat at the left, figure and verdict at the right. */
record RowText(List<String> label, List<String> caveat, List<String> figure, List<String> verdict) {

    static final double LINE = 16;

    private static final double SIGN = 16;

    /** Breaks the texts of a row to columns of the given widths in pixels. */
    static RowText of(Row row, double leftPx, double rightPx) {
        return new RowText(
                Lettering.wrap(row.label(), Sheet.TEXT, leftPx, 3),
                broken(row.caveat(), leftPx - SIGN, 3),
                figure(row.figure(), rightPx),
                broken(row.verdict(), rightPx, 2));
    }

    /** A figure keeps to one line with its unit; where the unit would be cut short it takes a line of its own. */
    private static List<String> figure(String text, double width) {
        List<String> lines = broken(text, width, 2);
        int unit = text.lastIndexOf(Figures.NO_BREAK_SPACE);
        boolean cut = unit >= 0 && lines.stream().anyMatch(line -> line.endsWith("…"));
        return cut ? broken(text.substring(0, unit) + " " + text.substring(unit + 1), width, 2) : lines;
    }

    private static List<String> broken(String text, double width, int lines) {
        return text.isEmpty() ? List.of() : Lettering.wrap(text, Sheet.SMALL, width, lines);
    }

    private static double widest(List<String> lines, double size) {
        return lines.stream()
                .mapToDouble(line -> Lettering.width(line, size))
                .max()
                .orElse(0);
    }

    double leftWidth() {
        double note = caveat.isEmpty() ? 0 : widest(caveat, Sheet.SMALL) + SIGN;
        return Math.max(widest(label, Sheet.TEXT), note);
    }

    double rightWidth() {
        return Math.max(widest(figure, Sheet.SMALL), widest(verdict, Sheet.SMALL));
    }

    double height() {
        return Math.max(label.size() + caveat.size(), figure.size() + verdict.size()) * LINE;
    }

    /** Writes both columns, centred on a height. */
    void paint(Sheet sheet, double centre) {
        double y = centre - (label.size() + caveat.size()) * LINE / 2 + 12;
        for (String line : label) {
            sheet.text(Ink.INK, Sheet.TEXT, Sheet.Anchor.START, 0, y, line);
            y += LINE;
        }
        if (!caveat.isEmpty()) {
            sheet.sign(Sign.CAVEAT, Ink.ACCENT, 6, y - 4, 10);
        }
        for (String line : caveat) {
            sheet.text(Ink.ACCENT, Sheet.SMALL, Sheet.Anchor.START, SIGN, y, line);
            y += LINE;
        }
        y = centre - (figure.size() + verdict.size()) * LINE / 2 + 12;
        for (String line : figure) {
            sheet.text(Ink.INK, Sheet.SMALL, Sheet.Anchor.END, sheet.width(), y, line);
            y += LINE;
        }
        for (String line : verdict) {
            sheet.text(Ink.MUTED, Sheet.SMALL, Sheet.Anchor.END, sheet.width(), y, line);
            y += LINE;
        }
    }
}
