package org.evenhand.chart;

/**
 * Maps values to pixels along one direction.
 *
 * @param low value at the start, finite; positive on a logarithmic axis
 * @param high value at the end, above {@code low}
 * @param logarithmic whether equal ratios, rather than equal differences, have equal length
 * @param startPx pixel of {@code low}
 * @param endPx pixel of {@code high}; below {@code startPx} for an axis that runs upwards
 */
record Axis(double low, double high, boolean logarithmic, double startPx, double endPx) {

    Axis {
        if (!(low < high && Double.isFinite(low) && Double.isFinite(high) && (!logarithmic || low > 0))) {
            throw new IllegalArgumentException("no axis can run from " + low + " to " + high);
        }
    }

    /** The pixel of a value; NaN stays NaN. */
    double at(double value) {
        double share = logarithmic
                ? (StrictMath.log(value) - StrictMath.log(low)) / (StrictMath.log(high) - StrictMath.log(low))
                : (value - low) / (high - low);
        return startPx + share * (endPx - startPx);
    }

    /** The pixels of values, in their order. */
    double[] at(double[] values) {
        double[] pixels = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            pixels[i] = at(values[i]);
        }
        return pixels;
    }

    double lengthPx() {
        return Math.abs(endPx - startPx);
    }
}
