package org.evenhand.model;

/** What became of a rule at one place, where it did not simply pass. */
public enum Outcome {
    FOUND("found"),
    /** A field is missing without which the rule cannot tell; absent data is never a pass. */
    NOT_CHECKABLE("not checkable"),
    /** Found, and waived by somebody who says why. */
    WAIVED("waived");

    private final String word;

    Outcome(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
