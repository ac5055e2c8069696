package org.evenhand.chart;

/** How large a picture is, in pixels. */
public record PixelSize(int width, int height) {}
