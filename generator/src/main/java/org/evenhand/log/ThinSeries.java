package org.evenhand.log;

import java.util.List;

/**
 * A column of a log, thinned for drawing: no more points than a chart can show, yet no peak lost.
 *
 * <p>Points are real samples in the order of time.
 *
 * @param timesS of the points, in seconds since the beginning of the log
 * @param values in the method's unit of the column; never NaN
 * @param isThinned whether samples were left out
 * @param gaps in the order of time
 */
public record ThinSeries(double[] timesS, double[] values, boolean isThinned, List<Gap> gaps) {

    /**
     * A stretch without samples that a line should not bridge.
     *
     * @param fromS time of the last sample before it
     * @param toS time of the first sample after it
     */
    public record Gap(double fromS, double toS) {}

    public ThinSeries {
        if (timesS.length != values.length) {
            throw new IllegalArgumentException(timesS.length + " times, " + values.length + " values");
        }
        timesS = timesS.clone();
        values = values.clone();
        gaps = List.copyOf(gaps);
    }

    @Override
    public double[] timesS() {
        return timesS.clone();
    }

    @Override
    public double[] values() {
        return values.clone();
    }

    /** Number of points. */
    public int size() {
        return timesS.length;
    }

    /** Seconds since the beginning of the log. */
    public double timeS(int index) {
        return timesS[index];
    }

    /** In the method's unit of the column; never NaN. */
    public double value(int index) {
        return values[index];
    }
}
