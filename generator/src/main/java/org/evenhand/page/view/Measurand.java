package org.evenhand.page.view;

/**
 * A quantity that a method yields.
 *
 * @param id as {@link Address#measurand} forms it
 * @param title its name
 * @param unit symbol
 * @param reduction how it is got from the log, in words
 * @param better {@code lower}, {@code higher} or empty
 */
public record Measurand(String id, String title, String unit, String reduction, String better) {}
