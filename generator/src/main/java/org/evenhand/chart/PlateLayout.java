package org.evenhand.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Words above and below a chart. */
record PlateLayout(Optional<Layout> inner, List<Plate.Line> above, List<Plate.Line> below) implements Layout {

    private static final double LEADING = 1.4;

    /** Between the words and the chart, and between one line's words and the next's, in pixels. */
    private static final double GAP = 14;

    private static final double BETWEEN = 4;

    @Override
    public int height(int width) {
        int chart = inner.map(layout -> layout.height(width)).orElse(0);
        double gaps = inner.isPresent() ? GAP * 2 : GAP;
        return (int) Math.ceil(height(above, width) + chart + gaps + height(below, width));
    }

    private static double height(List<Plate.Line> lines, int width) {
        double height = 0;
        for (Plate.Line line : lines) {
            height += broken(line, width).size() * line.style().sizePx() * LEADING + BETWEEN;
        }
        return height;
    }

    @Override
    public void paint(Sheet sheet) {
        double y = words(sheet, above, 0) + GAP;
        if (inner.isPresent()) {
            int height = inner.get().height(sheet.width());
            sheet.inset(Math.round(y), height, inner.get()::paint);
            y = Math.round(y) + height + GAP;
        }
        words(sheet, below, y);
    }

    /** Sets lines from {@code top} down and returns where they end. */
    private static double words(Sheet sheet, List<Plate.Line> lines, double top) {
        double y = top;
        for (Plate.Line line : lines) {
            double size = line.style().sizePx();
            for (String part : broken(line, sheet.width())) {
                sheet.text(line.style().ink(), size, Sheet.Anchor.START, 0, y + size, part);
                y += size * LEADING;
            }
            y += BETWEEN;
        }
        return y;
    }

    private static List<String> broken(Plate.Line line, int width) {
        double size = line.style().sizePx();
        List<String> words = new ArrayList<>();
        for (String word : line.text().split(" ")) {
            words.addAll(pieces(word, size, width));
        }
        return Lettering.wrap(String.join(" ", words), size, width, Integer.MAX_VALUE);
    }

    /** A word as it is, unless a line cannot hold it, as may be with an address. */
    private static List<String> pieces(String word, double size, int width) {
        List<String> pieces = new ArrayList<>();
        String rest = word;
        while (Lettering.width(rest, size) > width) {
            int end = rest.length();
            while (end > 1 && Lettering.width(rest.substring(0, end), size) > width) {
                end = rest.offsetByCodePoints(end, -1);
            }
            pieces.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        pieces.add(rest);
        return pieces;
    }
}
