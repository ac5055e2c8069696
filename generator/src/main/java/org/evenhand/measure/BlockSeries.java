package org.evenhand.measure;

/**
 * A series of means over equal numbers of samples, short enough to compute with.
 *
 * @param samplesPerBlock how many samples each mean is of; the last may have fewer
 * @param timesS mean time of each block, in seconds since the beginning of the log; rising
 * @param means of each block, in the unit of the column
 */
public record BlockSeries(long samplesPerBlock, double[] timesS, double[] means) {

    public BlockSeries {
        if (timesS.length != means.length) {
            throw new IllegalArgumentException(timesS.length + " times, " + means.length + " means");
        }
        timesS = timesS.clone();
        means = means.clone();
    }

    public int size() {
        return means.length;
    }

    @Override
    public double[] timesS() {
        return timesS.clone();
    }

    @Override
    public double[] means() {
        return means.clone();
    }

    public double timeS(int block) {
        return timesS[block];
    }

    public double mean(int block) {
        return means[block];
    }
}
