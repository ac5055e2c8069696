/**
 * Draws charts.
 *
 * <p>Enters: a {@link org.evenhand.chart.Figure}, a small record of plain numbers and labels that says what is to be
 * shown. Leaves: a {@link org.evenhand.chart.Chart}, an SVG drawing that may be put into a page as it is, or the same
 * drawing as PNG. The bytes depend on the figure alone: not on locale, time zone, installed fonts or Java release.
 */
package org.evenhand.chart;
