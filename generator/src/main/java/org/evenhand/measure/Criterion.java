package org.evenhand.measure;

import org.evenhand.log.Samples;

/**
 * Whether a sample fulfils a condition.
 *
 * @param column index in the row
 * @param below whether the column must be below the threshold; above it, if not. Equal is neither
 * @param threshold in the unit of the column
 */
record Criterion(int column, boolean below, double threshold) {

    boolean isUnknown(Samples some, int index) {
        return Double.isNaN(some.column(column)[index]);
    }

    boolean holds(Samples some, int index) {
        double value = some.column(column)[index];
        return below ? value < threshold : value > threshold;
    }
}
