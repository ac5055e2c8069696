package org.evenhand.page.words;

import java.util.Map;
import org.evenhand.model.Instrument;

/** Causes of uncertainty, as measuring names them, in words for readers. */
public final class Causes {

    private static final String OF_RUN = ", run ";

    private Causes() {}

    /** Whether the cause is one run's alone, and not common to all that share an instrument. */
    public static boolean isOfOneRun(String cause) {
        return cause.contains(OF_RUN);
    }

    /** The name of a cause without the run that it belongs to. */
    public static String withoutRun(String cause) {
        int run = cause.indexOf(OF_RUN);
        return run < 0 ? cause : cause.substring(0, run);
    }

    /** "Limits of error, part of the reading: Direct-current power meter" for "dc-meter-1 gain". */
    public static String words(String cause, Map<String, Instrument> instruments) {
        String name = withoutRun(cause);
        int space = name.lastIndexOf(' ');
        Instrument instrument = space < 0 ? null : instruments.get(name.substring(0, space));
        if (instrument != null) {
            String part = name.substring(space + 1);
            return switch (part) {
                        case "gain" -> "Limits of error, part of the reading";
                        case "offset" -> "Limits of error, fixed part";
                        case "resolution" -> "Resolution";
                        default -> Names.label(part);
                    }
                    + ": " + Names.instrument(instrument);
        }
        int comma = name.lastIndexOf(", ");
        Instrument owner = comma < 0 ? null : instruments.get(name.substring(comma + 2));
        return Names.label(owner == null ? name : name.substring(0, comma) + ": " + Names.instrument(owner));
    }
}
