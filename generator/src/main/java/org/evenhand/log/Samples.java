package org.evenhand.log;

/**
 * Some samples in the order of time, a column at a time: so that whoever reduces them runs through one array and not
 * from row to row. The arrays are used again for the next samples: copy what is to be kept, and change nothing.
 */
public final class Samples {

    /** As many as fit, with a handful of columns, into the fastest memory of a processor. */
    static final int MOST = 512;

    final double[] timesS = new double[MOST];
    final double[][] columns;
    int size;

    Samples(int columns) {
        this.columns = new double[columns][MOST];
    }

    /** How many there are; the arrays are longer. */
    public int size() {
        return size;
    }

    /** Seconds since the beginning of the log; none is less than the one before. */
    public double[] timesS() {
        return timesS;
    }

    /** The values of a column of the method, in its unit; NaN where none was taken. */
    public double[] column(int index) {
        return columns[index];
    }
}
