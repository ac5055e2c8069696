package org.evenhand.log;

import java.util.List;
import org.evenhand.quantity.Conversion;

/**
 * What the fields of a log's lines mean, as its header and the run say.
 *
 * @param fields how many a line has
 * @param timeField index of the field that holds the time
 * @param clock how the time is written
 * @param columns the names of the method's columns, the places of a row
 * @param uses by field: where its number goes; empty if it is of no interest. One field may feed several columns
 */
record Layout(int fields, int timeField, Clock clock, List<String> columns, Use[][] uses) {

    /** How times are written. */
    sealed interface Clock {}

    /**
     * As a number.
     *
     * @param toSeconds from the unit of the log
     * @param fromFirst whether the clock may start anywhere, so that times count from the first sample
     */
    record Elapsed(Conversion.Fast toSeconds, boolean fromFirst) implements Clock {}

    /** As a date and a time of day with an offset; times count from the first sample. */
    record Stamps() implements Clock {}

    /**
     * Where the number of a field goes.
     *
     * @param column index in the row
     * @param conversion to the method's unit; null if there is nothing to do
     * @param bit of the whole number; -1 if all of it is meant
     */
    record Use(int column, Conversion.Fast conversion, int bit) {}

    boolean isWanted(int field) {
        return field == timeField || uses[field].length > 0;
    }

    boolean hasStamps() {
        return clock instanceof Stamps;
    }
}
