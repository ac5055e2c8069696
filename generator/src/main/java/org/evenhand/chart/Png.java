package org.evenhand.chart;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;

/**
 * Paints a layout as pixels and writes them as PNG: a palette of at most 256 colours, 8 bits, no filter. Pictures that are
 * no drawings of ours are written with all their colours.
 *
 * <p>Source: W3C PNG Specification, third edition.
 */
final class Png {

    private static final double PX_PER_METRE = 96 / 0.0254;

    /** White around the drawing, in CSS pixels: a picture stands alone, without the margins of a page. */
    static final int MARGIN = 12;

    private Png() {}

    static byte[] of(Layout layout, int width, int scale) {
        return encode(paint(layout, width, scale), (int) StrictMath.round(PX_PER_METRE * scale));
    }

    static PixelSize pixels(Layout layout, int width, int scale) {
        return new PixelSize((width + 2 * MARGIN) * scale, (layout.height(width) + 2 * MARGIN) * scale);
    }

    static BufferedImage paint(Layout layout, int width, int scale) {
        // Sets AWT up for a machine without fonts, before anything of it is used.
        Lettering.context();
        PixelSize size = pixels(layout, width, scale);
        BufferedImage image = new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Ink.PAPER.color());
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(scale, scale);
        g.translate(MARGIN, MARGIN);
        layout.paint(new Sheet(g, width, layout.height(width)));
        g.dispose();
        return image;
    }

    /** @param image of the type {@link BufferedImage#TYPE_INT_RGB} */
    static byte[] encode(BufferedImage image, int pxPerMetre) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        return ofPalette(pixels, width, height, pxPerMetre);
    }

    /** Every pixel as it is, {@code 0xRRGGBB}: by a palette if there are few colours, else in true colour. */
    static byte[] exact(int[] pixels, int width, int height) {
        int pxPerMetre = (int) StrictMath.round(PX_PER_METRE);
        boolean few = Arrays.stream(pixels).distinct().limit(257).count() <= 256;
        return few ? ofPalette(pixels, width, height, pxPerMetre) : inTrueColour(pixels, width, height, pxPerMetre);
    }

    private static byte[] inTrueColour(int[] pixels, int width, int height, int pxPerMetre) {
        int row = 1 + 3 * width;
        byte[] raw = new byte[height * row];
        byte[] above = new byte[3 * width];
        byte[] here = new byte[3 * width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int rgb = pixels[y * width + x];
                here[3 * x] = (byte) (rgb >> 16);
                here[3 * x + 1] = (byte) (rgb >> 8);
                here[3 * x + 2] = (byte) rgb;
            }
            PngFilter.put(here, above, raw, y * row);
            byte[] next = above;
            above = here;
            here = next;
        }
        return file(width, height, 2, pxPerMetre, new byte[0], Deflate.zlib(raw, row));
    }

    private static byte[] ofPalette(int[] pixels, int width, int height, int pxPerMetre) {
        Palette palette = Palette.of(pixels, width);
        int row = 1 + width;
        byte[] raw = new byte[height * row];
        for (int y = 0; y < height; y++) {
            // The first byte of a row names its filter: 0, none.
            int from = y * width;
            if (y > 0 && Arrays.equals(pixels, from, from + width, pixels, from - width, from)) {
                System.arraycopy(raw, (y - 1) * row, raw, y * row, row);
            } else {
                palette.indices(pixels, from, width, raw, y * row + 1);
            }
        }
        return file(width, height, 3, pxPerMetre, palette.bytes(), Deflate.zlib(raw, row));
    }

    /** @param colours the kind of colours: 2 for true colour, 3 for a palette */
    private static byte[] file(int width, int height, int colours, int pxPerMetre, byte[] palette, byte[] data) {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        png.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
        byte[] header = ByteBuffer.allocate(13)
                .putInt(width)
                .putInt(height)
                .put(new byte[] {8, (byte) colours, 0, 0, 0})
                .array();
        chunk(png, "IHDR", header);
        byte[] resolution = ByteBuffer.allocate(9)
                .putInt(pxPerMetre)
                .putInt(pxPerMetre)
                .put((byte) 1)
                .array();
        chunk(png, "pHYs", resolution);
        if (palette.length > 0) {
            chunk(png, "PLTE", palette);
        }
        chunk(png, "IDAT", data);
        chunk(png, "IEND", new byte[0]);
        return png.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream png, String type, byte[] data) {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(name);
        crc.update(data);
        png.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        png.writeBytes(name);
        png.writeBytes(data);
        png.writeBytes(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
    }
}
