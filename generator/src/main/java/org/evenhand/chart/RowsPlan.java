package org.evenhand.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;

/**
 * Where everything in a chart of rows goes at one width, in pixels. On a narrow sheet the texts of a row stand over its
 * marks instead of beside them.
 *
 * @param stacked whether texts stand over the marks
 * @param axis the value axis
 * @param top of the first row
 * @param rows from top to bottom
 */
record RowsPlan(boolean stacked, Axis axis, double top, List<Place> rows) {

    private static final int NARROW = 440;

    /**
     * A row.
     *
     * @param row what it shows
     * @param text its texts
     * @param swarm its dots
     * @param top its upper edge
     * @param marksTop upper edge of the marks' zone
     * @param bottom its lower edge, and that of the marks' zone
     * @param textCentre middle of the texts
     */
    record Place(Row row, RowText text, Swarm swarm, double top, double marksTop, double bottom, double textCentre) {

        double marksCentre() {
            return (marksTop + bottom) / 2;
        }
    }

    /** @param axisOver makes the axis between two pixels */
    static RowsPlan of(List<Row> rows, int width, double top, BiFunction<Double, Double, Axis> axisOver) {
        boolean stacked = width < NARROW;
        double leftMost = width * (stacked ? 0.58 : 0.3);
        double rightMost = width * (stacked ? 0.38 : 0.3);
        List<RowText> texts =
                rows.stream().map(row -> RowText.of(row, leftMost, rightMost)).toList();
        double left = texts.stream().mapToDouble(RowText::leftWidth).max().orElse(0) + 20;
        double right = texts.stream().mapToDouble(RowText::rightWidth).max().orElse(0);
        double plotRight = width - (right > 0 ? right + 20 : 14);
        Axis axis = axisOver.apply(
                (stacked ? 2 : left) + leftRoom(rows), (stacked ? width - 8 : plotRight) - rightRoom(rows));
        List<Place> places = new ArrayList<>();
        double y = top;
        for (int i = 0; i < rows.size(); i++) {
            Place place = place(rows.get(i), texts.get(i), Swarm.of(rows.get(i).dots(), axis), y, stacked);
            places.add(place);
            y = place.bottom();
        }
        return new RowsPlan(stacked, axis, top, List.copyOf(places));
    }

    private static Place place(Row row, RowText text, Swarm swarm, double top, boolean stacked) {
        double marks =
                swarm.height() + (row.estimate().isPresent() || !row.instead().isEmpty() ? 36 : 24);
        if (stacked) {
            double marksTop = top + text.height() + 10;
            return new Place(row, text, swarm, top, marksTop, marksTop + marks, top + 8 + text.height() / 2);
        }
        double height = Math.max(Math.max(marks, text.height() + 16), 48);
        return new Place(row, text, swarm, top, top, top + height, top + height / 2);
    }

    /** Room for an arrow to the left at the lowest value. */
    private static double leftRoom(List<Row> rows) {
        return has(rows, Dot.Bound.AT_MOST) ? 18 : 6;
    }

    /** Room for an arrow to the right, and for a warning sign after the last mark. */
    private static double rightRoom(List<Row> rows) {
        boolean caveats = rows.stream().anyMatch(row -> !row.caveat().isEmpty());
        return (has(rows, Dot.Bound.AT_LEAST) ? 16 : 6) + (caveats ? 14 : 0);
    }

    static boolean has(List<Row> rows, Dot.Bound bound) {
        return rows.stream().flatMap(row -> row.dots().stream()).anyMatch(dot -> dot.bound() == bound);
    }

    double bottom() {
        return rows.get(rows.size() - 1).bottom();
    }
}
