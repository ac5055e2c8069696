package org.evenhand.model;

import java.time.LocalDate;

/**
 * One change of a published answer.
 *
 * @param on when
 * @param what changed
 * @param why it changed
 */
public record Revision(LocalDate on, String what, String why) {}
