package org.evenhand.model;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import org.evenhand.quantity.Accuracy;
import org.evenhand.quantity.Quantity;

/**
 * What produces readings or columns of a log.
 *
 * @param id its name in files and addresses
 * @param name as readers know it
 * @param reads what it measures, in words
 * @param boundary where it measures power, if it does
 * @param resolution the smallest change that shows
 * @param accuracy the limits of error that its maker states
 * @param range that it can show
 * @param calibrated when it was last calibrated
 * @param calibrationValid for how long that holds
 * @param weighting the frequency weighting of a sound level meter
 * @param notes in Markdown
 * @param places where the fields stand
 */
public record Instrument(
        String id,
        Optional<String> name,
        String reads,
        Optional<Boundary> boundary,
        Optional<Quantity> resolution,
        Optional<Accuracy> accuracy,
        Optional<Range> range,
        Optional<LocalDate> calibrated,
        Optional<Period> calibrationValid,
        Optional<String> weighting,
        Optional<String> notes,
        Places places) {

    /** The lowest and the highest that an instrument can show; both in units of one kind. */
    public record Range(Quantity lowest, Quantity highest) {}
}
