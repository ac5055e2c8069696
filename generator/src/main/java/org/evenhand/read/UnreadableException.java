package org.evenhand.read;

import org.evenhand.model.Place;

/** A file that cannot be turned into a tree: where reading stopped, why, and what to do. */
final class UnreadableException extends Exception {

    private static final long serialVersionUID = 1L;

    private final String rule;
    private final transient Place place;
    private final String remedy;

    UnreadableException(String rule, Place place, String message, String remedy) {
        super(message, null, false, false);
        this.rule = rule;
        this.place = place;
        this.remedy = remedy;
    }

    void reportTo(Faults faults) {
        faults.add(rule, place, getMessage(), remedy);
    }
}
