package org.evenhand.page.view;

/**
 * A dated change to a published answer.
 *
 * @param id as {@link Address#revision} forms it
 * @param date ISO 8601
 * @param what changed
 * @param why it changed
 * @param effect on the answer; empty if none is recorded
 */
public record Revision(String id, String date, String what, String why, String effect) {}
