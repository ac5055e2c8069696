package org.evenhand.page.view;

/**
 * One source of the uncertainty of one run's value.
 *
 * @param measurand whose value
 * @param unit of the uncertainty, empty for a pure number
 * @param source where it comes from
 * @param uncertainty standard uncertainty that it brings
 * @param share of the variance, as a percentage
 */
public record RunSource(String measurand, String unit, String source, String uncertainty, String share) {}
