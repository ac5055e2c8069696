package org.evenhand.measure;

import java.util.Optional;
import org.evenhand.log.Samples;

/** Turns the samples of a log into a number as they come. */
interface Reducer {

    /** Takes the next samples. */
    void samples(Samples some);

    /** What came of it; called once, after the last sample. */
    Reduced result();

    /** One that must see the log again from the start, and whose result then counts; asked after the last sample. */
    default Optional<Reducer> again() {
        return Optional.empty();
    }
}
