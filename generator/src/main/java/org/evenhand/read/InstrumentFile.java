package org.evenhand.read;

import java.util.Locale;
import org.evenhand.model.Boundary;
import org.evenhand.model.Instrument;
import org.evenhand.quantity.Accuracy;
import org.evenhand.quantity.MisreadException;

/** instruments/ID.yaml: what produces readings or columns of a log. */
final class InstrumentFile {

    static final Shape SHAPE = Shape.of("an instrument")
            .optional("$schema", Scalars.TEXT, "the address of this schema, for editors")
            .required("instrument", Scalars.ID_TEXT, "its name in files and addresses; the file is named alike")
            .optional("name", Scalars.TEXT, "its name as readers know it")
            .required("reads", Scalars.TEXT, "what it measures: power, temperature, sound level …")
            .optional(
                    "boundary",
                    Scalars.choice("mains", "dc-input", "board-rail", "on-chip"),
                    "where along the supply it measures power")
            .optional("resolution", Scalars.QUANTITY_OR_COUNT, "the smallest change that shows")
            .optional("accuracy", Scalars.ACCURACY, "the limits of error: 0.5 % of reading + 10 mW")
            .optional("range", Ranges.ofAnyUnit(), "the lowest and the highest that it can show: -40 °C to 105 °C")
            .optional("calibrated", Scalars.DATE, "when it was last calibrated")
            .optional("calibration-valid", Scalars.PERIOD_TEXT, "for how long that holds: 12 months")
            .optional("weighting", Scalars.choice("A", "C", "Z"), "the frequency weighting of a sound level meter")
            .optional("notes", Scalars.TEXT, "anything else, in Markdown");

    private InstrumentFile() {}

    static Instrument bind(Fields f) {
        return new Instrument(
                f.text("instrument"),
                f.optionalText("name"),
                f.text("reads"),
                f.optional("boundary", InstrumentFile::boundary),
                f.optionalQuantity("resolution"),
                f.optional("accuracy", InstrumentFile::accuracy),
                f.optional("range", InstrumentFile::range),
                f.optionalDate("calibrated"),
                f.optional("calibration-valid", Scalars::period),
                f.optionalText("weighting"),
                f.optionalText("notes"),
                f.places());
    }

    private static Boundary boundary(String word) {
        return Boundary.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private static Instrument.Range range(String text) {
        try {
            return new Instrument.Range(Ranges.lowest(text), Ranges.highest(text));
        } catch (MisreadException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Accuracy accuracy(String text) {
        try {
            return Accuracy.parse(text);
        } catch (MisreadException e) {
            throw new IllegalStateException(e);
        }
    }
}
