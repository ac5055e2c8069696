package org.evenhand.page.view;

import java.util.List;

/**
 * All caveats of one rule.
 *
 * @param id as {@link Address#caveatGroup} forms it
 * @param title what it is called in words
 * @param rule its id; empty for what is no rule's
 * @param severity in a word; empty for what is no rule's
 * @param meaning what the rule finds, in a sentence; empty for none
 * @param explanation of the rule, section by section; may be empty
 * @param origin where its limit comes from; empty for none
 * @param places where it applies: the page, its status, what was found
 */
public record CaveatGroup(
        String id,
        String title,
        String rule,
        String severity,
        String meaning,
        List<ExplanationPart> explanation,
        String origin,
        List<Listed> places) {

    public CaveatGroup {
        explanation = List.copyOf(explanation);
        places = List.copyOf(places);
    }
}
