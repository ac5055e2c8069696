package org.evenhand.page.view;

/**
 * A part of the explanation of a rule.
 *
 * @param heading of the part
 * @param text flow content
 */
public record ExplanationPart(String heading, Markup text) {}
