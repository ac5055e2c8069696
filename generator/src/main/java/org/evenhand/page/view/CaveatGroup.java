package org.evenhand.page.view;

import java.util.List;

/**
 * All caveats of one rule.
 *
 * @param id as {@link Address#caveatGroup} forms it
 * @param rule its id
 * @param meaning for the reader
 * @param origin where its limit comes from; empty for none
 * @param places where it applies: the page, its status, what was found
 */
public record CaveatGroup(String id, String rule, String meaning, String origin, List<Listed> places) {
    public CaveatGroup {
        places = List.copyOf(places);
    }
}
