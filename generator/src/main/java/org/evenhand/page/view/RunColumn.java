package org.evenhand.page.view;

/**
 * Head of one measurand's column.
 *
 * @param title of the measurand
 * @param unit symbol, empty for a pure number
 */
public record RunColumn(String title, String unit) {}
