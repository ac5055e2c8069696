package org.evenhand.page.words;

import org.evenhand.model.Origin;

/** Whose figures these are, as a mark beside them. */
public final class Origins {

    private Origins() {}

    /** Empty for what was measured here. */
    public static String mark(Origin origin) {
        return switch (origin) {
            case MEASURED -> "";
            case STATED -> "stated";
            case EXTERNAL -> "external";
            case ESTIMATED -> "estimated";
        };
    }

    /** What the mark means, in a sentence; empty for what was measured here. */
    public static String meaning(Origin origin) {
        return switch (origin) {
            case MEASURED -> "";
            case STATED -> "Stated by the maker, not measured here.";
            case EXTERNAL -> "Measured by another laboratory.";
            case ESTIMATED -> "Estimated, not measured.";
        };
    }
}
