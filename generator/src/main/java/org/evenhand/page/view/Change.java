package org.evenhand.page.view;

/**
 * An entry in the publication's history.
 *
 * @param date ISO 8601
 * @param page that changed
 * @param what changed
 * @param why it changed; empty for a first publication
 * @param effect on the answer; empty if none is recorded
 */
public record Change(String date, Link page, String what, String why, String effect) {}
