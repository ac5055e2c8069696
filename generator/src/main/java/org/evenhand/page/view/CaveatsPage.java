package org.evenhand.page.view;

import java.util.List;

/**
 * Every caveat of the publication, by rule.
 *
 * @param frame the page's surroundings
 * @param groups by rule
 */
public record CaveatsPage(Frame frame, List<CaveatGroup> groups) {
    public CaveatsPage {
        groups = List.copyOf(groups);
    }
}
