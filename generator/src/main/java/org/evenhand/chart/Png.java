package org.evenhand.chart;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * Paints a layout as pixels and writes them as PNG: a palette of at most 256 colours, 8 bits, no filter.
 *
 * <p>Source: W3C PNG Specification, third edition.
 */
final class Png {

    private static final double PX_PER_METRE = 96 / 0.0254;

    /** White around the drawing, in CSS pixels: a picture stands alone, without the margins of a page. */
    static final int MARGIN = 12;

    private Png() {}

    static Raster of(Layout layout, int width, int scale) {
        BufferedImage image = paint(layout, width, scale);
        byte[] png = encode(image, (int) StrictMath.round(PX_PER_METRE * scale));
        return new Raster(png, image.getWidth(), image.getHeight());
    }

    static BufferedImage paint(Layout layout, int width, int scale) {
        // Sets AWT up for a machine without fonts, before anything of it is used.
        Lettering.context();
        int height = layout.height(width);
        BufferedImage image = new BufferedImage(
                (width + 2 * MARGIN) * scale, (height + 2 * MARGIN) * scale, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Ink.PAPER.color());
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(scale, scale);
        g.translate(MARGIN, MARGIN);
        layout.paint(new Sheet(g, width, height));
        g.dispose();
        return image;
    }

    static byte[] encode(BufferedImage image, int pxPerMetre) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] pixels = image.getRGB(0, 0, width, height, null, 0, width);
        Palette palette = Palette.of(pixels);
        int row = 1 + width;
        byte[] raw = new byte[height * row];
        for (int y = 0; y < height; y++) {
            // The first byte of a row names its filter: 0, none.
            palette.indices(pixels, y * width, width, raw, y * row + 1);
        }
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        png.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
        byte[] header = ByteBuffer.allocate(13)
                .putInt(width)
                .putInt(height)
                .put(new byte[] {8, 3, 0, 0, 0})
                .array();
        chunk(png, "IHDR", header);
        byte[] resolution = ByteBuffer.allocate(9)
                .putInt(pxPerMetre)
                .putInt(pxPerMetre)
                .put((byte) 1)
                .array();
        chunk(png, "pHYs", resolution);
        chunk(png, "PLTE", palette.bytes());
        chunk(png, "IDAT", Deflate.zlib(raw, row));
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
