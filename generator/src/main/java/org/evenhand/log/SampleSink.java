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
     * One sample.
     *
     * @param timeS seconds since the beginning of the log; never less than that of the sample before
     * @param row a value for each column, in the method's units; NaN where none was taken. The array is used again
     *     for the next sample: copy what is to be kept
     */
    void sample(double timeS, double[] row);
}
