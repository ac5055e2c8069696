package org.evenhand.prose;

import java.util.Optional;

/** Tells where on the site a picture stands that a text names. */
@FunctionalInterface
public interface PictureAddress {

    /** Shows none: in their place stands what is to be seen in them. */
    PictureAddress NONE = reference -> Optional.empty();

    /** Nothing if it is not shown. */
    Optional<Shown> of(PictureReference reference);

    /**
     * A picture as a page shows it.
     *
     * @param href from the page
     * @param width in pixels
     * @param height in pixels
     */
    record Shown(String href, int width, int height) {}
}
