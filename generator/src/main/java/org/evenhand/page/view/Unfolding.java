package org.evenhand.page.view;

import java.util.Optional;

/**
 * What other sites show where somebody pastes the address of a page.
 *
 * @param kind "website", or "article" for an answer
 * @param description of the page, with the worst caveat where it has one
 * @param published day of the first publication, ISO 8601; empty for a page that has none
 * @param modified day of the newest change, ISO 8601; empty for none
 * @param picture with its absolute address
 */
public record Unfolding(String kind, String description, String published, String modified, Optional<Picture> picture) {

    /** A page without a picture of its own. */
    public static Unfolding plain(String description) {
        return new Unfolding("website", description, "", "", Optional.empty());
    }
}
