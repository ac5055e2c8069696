package org.evenhand.measure;

import java.util.Arrays;

/** Averages a series in blocks as it comes; when the blocks run out, two by two become one. */
final class BlockMeans {

    /** Always between half of this and this once there were so many samples. */
    static final int MOST_BLOCKS = 256;

    private final double[] times = new double[MOST_BLOCKS];
    private final double[] means = new double[MOST_BLOCKS];
    private int blocks;
    private long perBlock = 1;
    private long inBlock;
    private double timeSum;
    private double valueSum;

    void add(double[] timesS, double[] values, int count) {
        long left = perBlock - inBlock;
        double sumOfTimes = timeSum;
        double sumOfValues = valueSum;
        for (int i = 0; i < count; i++) {
            double value = values[i];
            if (Double.isNaN(value)) {
                continue;
            }
            sumOfTimes += timesS[i];
            sumOfValues += value;
            if (--left == 0) {
                end(sumOfTimes, sumOfValues);
                left = perBlock;
                sumOfTimes = 0;
                sumOfValues = 0;
            }
        }
        inBlock = perBlock - left;
        timeSum = sumOfTimes;
        valueSum = sumOfValues;
    }

    void add(double timeS, double value) {
        if (Double.isNaN(value)) {
            return;
        }
        timeSum += timeS;
        valueSum += value;
        if (++inBlock == perBlock) {
            end(timeSum, valueSum);
            inBlock = 0;
            timeSum = 0;
            valueSum = 0;
        }
    }

    private void end(double sumOfTimes, double sumOfValues) {
        times[blocks] = sumOfTimes / perBlock;
        means[blocks++] = sumOfValues / perBlock;
        if (blocks == MOST_BLOCKS) {
            for (int i = 0; i < blocks / 2; i++) {
                times[i] = (times[2 * i] + times[2 * i + 1]) / 2;
                means[i] = (means[2 * i] + means[2 * i + 1]) / 2;
            }
            blocks /= 2;
            perBlock *= 2;
        }
    }

    BlockSeries series() {
        int size = blocks + (inBlock > 0 ? 1 : 0);
        double[] outTimes = Arrays.copyOf(times, size);
        double[] outMeans = Arrays.copyOf(means, size);
        if (inBlock > 0) {
            outTimes[blocks] = timeSum / inBlock;
            outMeans[blocks] = valueSum / inBlock;
        }
        return new BlockSeries(perBlock, outTimes, outMeans);
    }
}
