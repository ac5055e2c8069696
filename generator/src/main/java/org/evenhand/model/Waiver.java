package org.evenhand.model;

import java.time.LocalDate;

/**
 * Somebody's word that a finding does not matter here.
 *
 * @param rule the rule that is waived
 * @param why the reason, printed in full on the page
 * @param by who takes responsibility
 * @param on when
 */
public record Waiver(String rule, String why, String by, LocalDate on) {}
