package org.evenhand.measure;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a log looks like as a whole.
 *
 * @param samples how many it holds
 * @param firstS time of the first, in seconds since the beginning of the log
 * @param lastS time of the last
 * @param typicalStepS median of the first steps between samples, in seconds
 * @param longestStepS the longest step
 * @param longestStepFromS time of the sample before it; of the first if several are as long
 * @param columns what each column looks like, by name; only those that the log has and that hold samples
 */
public record LogFacts(
        long samples,
        double firstS,
        double lastS,
        double typicalStepS,
        double longestStepS,
        double longestStepFromS,
        SortedMap<String, ColumnFacts> columns) {

    /**
     * What a column looks like. Values are in the method's unit.
     *
     * @param samples how many of the log's samples have a value here
     * @param first value
     * @param last value
     * @param lowest value
     * @param highest value
     * @param mean over time, gaps bridged; the value itself if there is a single one
     * @param longestConstant the greatest number of successive equal values
     * @param longestConstantFromS time of the first of these, in seconds since the beginning of the log
     * @param longestConstantToS time of the last of these
     * @param longestAtLowest the greatest number of successive values equal to the lowest
     * @param longestAtHighest the same for the highest
     */
    public record ColumnFacts(
            long samples,
            double first,
            double last,
            double lowest,
            double highest,
            double mean,
            long longestConstant,
            double longestConstantFromS,
            double longestConstantToS,
            long longestAtLowest,
            long longestAtHighest) {}

    public LogFacts {
        columns = Collections.unmodifiableSortedMap(new TreeMap<>(columns));
    }

    /** From the first sample to the last, in seconds. */
    public double durationS() {
        return lastS - firstS;
    }

    /** The share of samples that are lacking, if they were meant to come at the typical step; at least 0. */
    public double shareMissing() {
        double meant = typicalStepS > 0 ? Math.rint(durationS() / typicalStepS) + 1 : samples;
        return Math.max(0, 1 - samples / meant);
    }

    /** The facts of a column; absent if the log has no sample of it. */
    public Optional<ColumnFacts> column(String name) {
        return Optional.ofNullable(columns.get(name));
    }
}
