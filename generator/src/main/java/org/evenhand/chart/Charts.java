package org.evenhand.chart;

import java.util.List;
import org.evenhand.words.Words;

/** Draws figures: their numbers in the decimal marker of a language, and what they say by themselves in its words. */
public final class Charts {

    /** Width in CSS pixels that suits a column of text. */
    public static final int COLUMN = 600;

    private Charts() {}

    /**
     * Draws a figure as SVG.
     *
     * @param width natural width in CSS pixels, at least 280; the height follows from the figure
     * @throws IllegalArgumentException if the width is smaller
     */
    public static Chart svg(Figure figure, Caption caption, int width, Words words) {
        Layout layout = figure.layout(words);
        int height = layout.height(checked(width));
        SvgGraphics g = new SvgGraphics(caption.id());
        layout.paint(new Sheet(g, width, height));
        return new Chart(g.document(caption, width, height), caption.title(), caption.description(), width, height);
    }

    /**
     * Draws a figure as a file of SVG that stands alone, on white with the margin of {@link #png}.
     *
     * @param width width of the drawing in CSS pixels, at least 280; the margins are added
     * @throws IllegalArgumentException if the width is smaller
     */
    public static Chart file(Figure figure, Caption caption, int width, Words words) {
        Layout layout = figure.layout(words);
        int height = layout.height(checked(width));
        int fullWidth = width + 2 * Png.MARGIN;
        int fullHeight = height + 2 * Png.MARGIN;
        SvgGraphics g = new SvgGraphics(caption.id());
        new Sheet(g, fullWidth, fullHeight).shade(Ink.PAPER, 1, 0, 0, fullWidth, fullHeight);
        g.translate(Png.MARGIN, Png.MARGIN);
        layout.paint(new Sheet(g, width, height));
        return new Chart(
                g.document(caption, fullWidth, fullHeight),
                caption.title(),
                caption.description(),
                fullWidth,
                fullHeight);
    }

    /**
     * Draws a figure as PNG on white, in the colours of print. Of more than 256 colours the rarer ones, such as come of
     * smooth edges, are drawn in the nearest of the others.
     *
     * @param width width of the drawing in CSS pixels, at least 280, as for {@link #svg}; a white margin of 12 is added
     * @param scale pixels of the picture in one CSS pixel: 1 or 2 for a screen, 3 (288 dpi) for print
     * @throws IllegalArgumentException if the width is smaller, or the scale is not 1 to 4
     */
    public static byte[] png(Figure figure, int width, int scale, Words words) {
        if (!(scale >= 1 && scale <= 4)) {
            throw new IllegalArgumentException("a picture has 1 to 4 pixels in a CSS pixel, not " + scale);
        }
        return Png.of(figure.layout(words), checked(width), scale);
    }

    /** How large the picture is that {@link #png} draws, margins and all, without drawing it. */
    public static PixelSize pixels(Figure figure, int width, int scale, Words words) {
        return Png.pixels(figure.layout(words), checked(width), scale);
    }

    /** Where the marks of {@link #svg} lie, in the order drawn. */
    public static List<Mark> marks(Figure figure, int width, Words words) {
        Layout layout = figure.layout(words);
        int height = layout.height(checked(width));
        Sheet sheet = Sheet.marked(new SvgGraphics("marks"), width, height);
        layout.paint(sheet);
        return sheet.marks();
    }

    private static int checked(int width) {
        if (width >= 280) {
            return width;
        }
        throw new IllegalArgumentException("a chart needs a width of at least 280 px, not " + width);
    }
}
