package org.evenhand.page.words;

import java.util.Locale;
import org.evenhand.model.Boundary;
import org.evenhand.model.Instrument;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.words.Words;

/** Names of fields, settings and quantities as pages write them. */
public final class Names {

    private static final String PERCENTAGE_POINTS = Unit.of("percentage points").symbol();

    private Names() {}

    /** A setting, column or reading within a sentence: "core voltage" for core-voltage. */
    public static String setting(String id) {
        return id.replace('-', ' ');
    }

    /** The same at the beginning of a line: "Core voltage". */
    public static String label(String id) {
        String words = setting(id);
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A quantity as it was written, with a true minus sign, no-break spaces and the decimal marker of the language: "21.4 ± 0.5 °C". */
    public static String quantity(Quantity quantity, Words words) {
        return words.number(spaced(quantity.toString()));
    }

    /**
     * The value of a setting: a quantity gets its no-break space, minus sign and decimal marker, a word stays as it is. So does
     * a number without a unit, which may be a version.
     */
    public static String value(String written, Words words) {
        return written.indexOf(' ') > 0 && isQuantity(written) ? words.number(spaced(written)) : spaced(written);
    }

    /** Whether a level is a number, with a unit or without. */
    static boolean isQuantity(String level) {
        try {
            Quantity.parseCount(level);
            return true;
        } catch (MisreadException e) {
            return false;
        }
    }

    /** The symbol of a unit, or the words that stand for one. */
    public static String unit(String symbol, Words words) {
        return symbol.equals(PERCENTAGE_POINTS) ? words.say("figure.percentage-points") : symbol;
    }

    private static String spaced(String written) {
        if (!written.matches("[-\u2212]?\\d.*")) {
            return written;
        }
        // A date begins with a digit too, and has no space.
        return written.replaceFirst("^-(?=\\d)", "\u2212").replace(" ", Figures.NO_BREAK_SPACE);
    }

    /** An instrument's name, else its id as words. */
    public static String instrument(Instrument instrument) {
        return instrument.name().orElse(label(instrument.id()));
    }

    /** Where along the supply a power is measured. */
    public static String boundary(Boundary boundary, Words words) {
        return words.say(
                "record.boundary-" + boundary.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
