package org.evenhand.chart;

/**
 * Where a value came to lie on the drawing, so that a test can hold the drawing against the data.
 *
 * @param scale which axis it lies on: marks of one scale can be compared with each other
 * @param what kind of mark, such as {@code run}, {@code estimate}, {@code low}, {@code high}
 * @param value in the unit of the axis
 * @param logarithmic whether the axis shows ratios
 * @param pixel coordinate along the axis
 */
public record Mark(String scale, String what, double value, boolean logarithmic, double pixel) {}
