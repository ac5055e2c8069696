package org.evenhand.model;

import java.util.Map;
import java.util.Optional;
import org.evenhand.quantity.Quantity;

/**
 * Who publishes, and under which terms.
 *
 * @param title of the site
 * @param publisher a person, club or laboratory
 * @param baseUrl where the site will stand, ending in "/"
 * @param licence an SPDX identifier
 * @param language an IETF language tag
 * @param invented whether the data are made up, which every page then says
 * @param contact how to report an error
 * @param about a few words for the front page, in Markdown
 * @param tolerances limits that replace the rules' defaults, by their names
 * @param places where the fields stand
 */
public record Publication(
        String title,
        String publisher,
        String baseUrl,
        String licence,
        String language,
        boolean invented,
        Optional<String> contact,
        Optional<String> about,
        Map<String, Quantity> tolerances,
        Places places) {

    public Publication {
        tolerances = Map.copyOf(tolerances);
    }
}
