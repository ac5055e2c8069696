package org.evenhand.chart;

/**
 * A finished drawing.
 *
 * @param svg one {@code svg} element, without XML declaration; its ids begin with the id of the caption
 * @param title what the chart shows, in a few words, as plain text
 * @param description the text alternative, as plain text
 * @param width natural width in CSS pixels
 * @param height natural height in CSS pixels
 */
public record Chart(String svg, String title, String description, int width, int height) {}
