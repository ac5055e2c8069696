package org.evenhand.chart;

/**
 * A finished picture of pixels.
 *
 * @param png its file
 * @param width in pixels
 * @param height in pixels
 */
public record Raster(byte[] png, int width, int height) {

    /**
     * Pixels as PNG, each as it is; the same bytes on every machine.
     *
     * @param rgb row by row from the top, each {@code 0xRRGGBB}
     */
    public static Raster of(int[] rgb, int width, int height) {
        return new Raster(Png.exact(rgb, width, height), width, height);
    }
}
