package org.evenhand.page.view;

/**
 * A hazard of the method.
 *
 * @param hazard in a word or two
 * @param text what to mind when repeating the test
 */
public record Caution(String hazard, String text) {}
