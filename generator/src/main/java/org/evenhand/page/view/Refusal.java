package org.evenhand.page.view;

import java.util.Optional;

/**
 * A comparison that was refused, and why.
 *
 * @param id as {@link Address#comparison} forms it if it has no row of its own; else empty
 * @param comparison what was asked for
 * @param why in one or two sentences, with value and limit
 * @param rule that refused it
 */
public record Refusal(String id, String comparison, String why, Optional<Link> rule) {}
