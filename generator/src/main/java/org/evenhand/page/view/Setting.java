package org.evenhand.page.view;

/**
 * One setting or circumstance over the runs of a study.
 *
 * @param name of the setting
 * @param values its value, or each level's
 * @param role "factor", "declared to change with the factor", "held", "not stated" and so on
 */
public record Setting(String name, String values, String role) {}
