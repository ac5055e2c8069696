package org.evenhand.page.view;

import java.util.Optional;

/**
 * What must travel with a figure. Shown beside the figure, under it on a narrow screen.
 *
 * @param rule id of the rule that found it; empty for the author's own note
 * @param text one sentence
 * @param more to the finding or the rule
 */
public record Caveat(String rule, String text, Optional<Link> more) {
    /** A finding of a rule, with the place on this site that says more. */
    public static Caveat of(String rule, String text, Link more) {
        return new Caveat(rule, text, Optional.of(more));
    }
    /** The author's own note. */
    public static Caveat note(String text) {
        return new Caveat("", text, Optional.empty());
    }
}
