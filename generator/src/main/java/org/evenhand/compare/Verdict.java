package org.evenhand.compare;

import java.util.Locale;

/** What may be said of a comparison. */
public enum Verdict {
    /** The interval excludes no effect, after Holm over the study's comparisons. */
    DIFFERS,
    /** Two one-sided tests: the 90 % interval lies within the stated margin. */
    SAME_WITHIN_MARGIN,
    /** Neither is shown by these runs. */
    NOT_SHOWN,
    /** The two sides may not be compared. */
    NOT_COMPARABLE;

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
