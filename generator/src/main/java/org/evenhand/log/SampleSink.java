package org.evenhand.log;

import java.util.List;

/** Takes the samples of a log, in the order of time. */
public interface SampleSink {

    /**
     * Told once before the first sample.
     *
     * @param columns the columns that the method records, in its order: the places of a row
     * @param present whether each of them is in this log; the values of one that is not are all NaN
     */
    void begin(List<String> columns, boolean[] present);

    /**
     * The next samples.
     *
     * @param some at least one; those of an earlier call came before them
     */
    void samples(Samples some);
}
