package org.evenhand.log;

import java.util.List;

/**
 * A column of a log, thinned for drawing: no more points than a chart can show, yet no peak lost.
 *
 * <p>Points are real samples in the order of time.
 */
public final class ThinSeries {

    private final double[] timesS;
    private final double[] values;
    private final boolean thinned;
    private final List<Gap> gaps;

    /**
     * A stretch without samples that a line should not bridge.
     *
     * @param fromS time of the last sample before it
     * @param toS time of the first sample after it
     */
    public record Gap(double fromS, double toS) {}

    ThinSeries(double[] timesS, double[] values, boolean thinned, List<Gap> gaps) {
        this.timesS = timesS;
        this.values = values;
        this.thinned = thinned;
        this.gaps = List.copyOf(gaps);
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

    /** Whether samples were left out. */
    public boolean isThinned() {
        return thinned;
    }

    /** In the order of time. */
    public List<Gap> gaps() {
        return gaps;
    }
}
