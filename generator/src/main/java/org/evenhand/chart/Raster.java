package org.evenhand.chart;

/**
 * A finished picture of pixels.
 *
 * @param png its file
 * @param width in pixels
 * @param height in pixels
 */
public record Raster(byte[] png, int width, int height) {}
