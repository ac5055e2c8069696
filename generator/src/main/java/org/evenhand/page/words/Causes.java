package org.evenhand.page.words;

import java.util.Map;
import org.evenhand.model.Instrument;
import org.evenhand.words.Words;

/** Causes of uncertainty, as measuring names them, in words for readers. */
public final class Causes {

    private static final String OF_RUN = ", run ";
    private static final String AS_STATED = " as stated";
    private static final String SAMPLING_STEP = "sampling step";

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
    public static String words(String cause, Map<String, Instrument> instruments, Words words) {
        String name = withoutRun(cause);
        int space = name.lastIndexOf(' ');
        Instrument instrument = space < 0 ? null : instruments.get(name.substring(0, space));
        if (instrument != null) {
            return words.say("cause." + name.substring(space + 1), Names.instrument(instrument));
        }
        int comma = name.lastIndexOf(", ");
        Instrument owner = comma < 0 ? null : instruments.get(name.substring(comma + 2));
        if (owner == null) {
            return ofNoInstrument(name, words);
        }
        return words.say("cause.from", ofNoInstrument(name.substring(0, comma), words), Names.instrument(owner));
    }

    /** "Sampling step", "Ambient as stated", or a name that the author gave. */
    private static String ofNoInstrument(String name, Words words) {
        int comma = name.lastIndexOf(", ");
        String what = comma < 0 ? name : name.substring(0, comma);
        if (what.equals(SAMPLING_STEP)) {
            return words.say("cause.sampling-step");
        }
        if (!what.endsWith(AS_STATED)) {
            return Names.label(name);
        }
        String stated = what.substring(0, what.length() - AS_STATED.length());
        return words.say("cause.as-stated", Names.label(stated)) + (comma < 0 ? "" : name.substring(comma));
    }
}
