package org.evenhand.prose;

import java.util.Optional;

/** Tells where something stands on the site. */
@FunctionalInterface
public interface EvidenceAddress {

    /** The address of the very row, relative to the page that is being written. */
    String of(Target target);

    /**
     * With what the ids of the notes begin that stand behind the figures of a text; nothing if the text has to do without.
     *
     * <p>A note is opened by a button, so that it is reached without a script, from a keyboard and by touch.
     */
    default Optional<String> notes() {
        return Optional.empty();
    }
}
