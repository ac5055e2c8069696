package org.evenhand.prose;

import java.util.List;

/** Finds the figure that an address in prose means. */
@FunctionalInterface
public interface EvidenceResolver {

    /**
     * Resolves an address.
     *
     * @param address with its scheme, without the choice of a form: {@code evidence:level/none/energy}
     * @return the figure, or why there is none
     */
    Resolution resolve(String address);

    /** The language of the text, as an IETF tag. */
    default String language() {
        return "en";
    }

    /** Names of levels of the study: no quantities, though they may look like some. */
    default List<String> levels() {
        return List.of();
    }

    /** Names of items and the like, which may hold numbers. */
    default Names names() {
        return Names.NONE;
    }

    /** Found, or not. */
    sealed interface Resolution {}

    /** The figure meant. */
    record Found(Evidence evidence) implements Resolution {}

    /**
     * Nothing stands at the address.
     *
     * @param message what is wrong with it
     * @param remedy what may have been meant
     */
    record Missing(String message, String remedy) implements Resolution {}
}
