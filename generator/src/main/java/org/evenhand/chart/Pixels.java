package org.evenhand.chart;

/** How large a picture is, in pixels. */
public record Pixels(int width, int height) {}
