package org.evenhand.measure;

/**
 * Whether a sample fulfils a condition.
 *
 * @param column index in the row
 * @param below whether the column must be below the threshold; above it, if not. Equal is neither
 * @param threshold in the unit of the column
 */
record Criterion(int column, boolean below, double threshold) {

    boolean isUnknown(double[] row) {
        return Double.isNaN(row[column]);
    }

    boolean holds(double[] row) {
        return below ? row[column] < threshold : row[column] > threshold;
    }
}
