package org.evenhand.compare;

import java.util.Locale;

/** What n counts. */
public enum Counts {
    /** Repeats on one specimen: the figure speaks for that specimen only. */
    RUNS,
    /** Each specimen's mean is one value. */
    SPECIMENS;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
