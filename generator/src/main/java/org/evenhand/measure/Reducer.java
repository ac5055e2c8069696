package org.evenhand.measure;

import java.util.Optional;

/** Turns the samples of a log into a number as they come. */
interface Reducer {

    /**
     * Takes one sample.
     *
     * @param timeS never less than the one before
     * @param row the values of all columns, NaN where none was taken; not to be kept
     */
    void sample(double timeS, double[] row);

    /** What came of it; called once, after the last sample. */
    Reduced result();

    /** One that must see the log again from the start, and whose result then counts; asked after the last sample. */
    default Optional<Reducer> again() {
        return Optional.empty();
    }
}
