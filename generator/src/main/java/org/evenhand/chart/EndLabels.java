package org.evenhand.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Labels at the right ends of lines, moved apart where they would touch. */
final class EndLabels {

    private static final double LINE = 14;
    private static final double GAP = 8;

    private record Label(double x, double y, String text) {}

    private final List<Label> labels = new ArrayList<>();

    /** A label for a line that ends at the given place; an empty one is left out. */
    void add(double x, double y, String text) {
        if (!text.isEmpty()) {
            labels.add(new Label(x, y, text));
        }
    }

    /** Room that labels need at the right of a plot. */
    static double room(List<String> texts, double most) {
        double widest = 0;
        for (String text : texts) {
            widest = Math.max(widest, Lettering.width(text, Sheet.SMALL));
        }
        return widest == 0 ? 12 : Math.min(widest, most) + GAP + 2;
    }

    /** Writes the labels: those of lines that reach {@code right} beside the plot, the others where the line ends. */
    void paint(Sheet sheet, double right, double top, double bottom) {
        List<Label> beside = new ArrayList<>();
        for (Label label : labels) {
            boolean reaches = label.x() > right - 4;
            if (reaches || label.x() + GAP + Lettering.width(label.text(), Sheet.SMALL) > right) {
                beside.add(new Label(right, label.y(), label.text()));
            } else {
                double baseline = Math.min(label.y() + 4, bottom - 5);
                sheet.text(Ink.INK, Sheet.SMALL, Sheet.Anchor.START, label.x() + GAP, baseline, label.text());
            }
        }
        column(sheet, beside, right, top, bottom);
    }

    private static void column(Sheet sheet, List<Label> beside, double right, double top, double bottom) {
        beside.sort(Comparator.comparingDouble(Label::y));
        double[] at = new double[beside.size()];
        for (int i = 0; i < at.length; i++) {
            double wanted = Math.max(beside.get(i).y() + 4, top + 8);
            at[i] = i == 0 ? wanted : Math.max(wanted, at[i - 1] + LINE);
        }
        for (int i = at.length - 1; i >= 0; i--) {
            double lowest = i == at.length - 1 ? bottom + 4 : at[i + 1] - LINE;
            at[i] = Math.min(at[i], lowest);
        }
        for (int i = 0; i < at.length; i++) {
            Label label = beside.get(i);
            String text = Lettering.shorten(label.text(), Sheet.SMALL, sheet.width() - right - GAP);
            if (Math.abs(at[i] - 4 - label.y()) > 5) {
                sheet.line(Ink.MUTED, 0.6, right + 1, label.y(), right + GAP - 1, at[i] - 4);
            }
            sheet.text(Ink.INK, Sheet.SMALL, Sheet.Anchor.START, right + GAP, at[i], text);
        }
    }
}
