package org.evenhand.model;

import java.util.Locale;

/** What a finding does to what is published. Ordered from the gravest to the slightest. */
public enum Severity {
    /** The study is not published; its page says why. */
    WITHHOLD("error"),
    /** The comparison gets the verdict not-comparable; both sides are still shown. */
    REFUSE("error"),
    /** Travels with the figure wherever it goes. */
    CAVEAT("warning"),
    /** Shown among the findings. */
    NOTE("note");

    private final String level;

    Severity(String level) {
        this.level = level;
    }

    /** The level of the same weight in SARIF 2.1.0, 3.27.10. */
    public String level() {
        return level;
    }

    /** As it is written: "withhold". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
