package org.evenhand.page.view;

import java.util.List;

/**
 * What was published, changed and withdrawn.
 *
 * @param frame the page's surroundings
 * @param feed the same as Atom
 * @param changes newest first
 */
public record ChangesPage(Frame frame, Link feed, List<Change> changes) {
    public ChangesPage {
        changes = List.copyOf(changes);
    }
}
