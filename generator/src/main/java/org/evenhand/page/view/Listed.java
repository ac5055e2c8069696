package org.evenhand.page.view;

/**
 * A line of a list of pages: a study that uses a method, a run of an item.
 *
 * @param page it leads to
 * @param date ISO 8601; empty for none
 * @param state status or outcome
 * @param text a short summary; empty for none
 */
public record Listed(Link page, String date, String state, String text) {}
