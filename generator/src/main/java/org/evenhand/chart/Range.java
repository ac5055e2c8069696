package org.evenhand.chart;

/** Gathers the values that an axis has to show. */
final class Range {

    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    /** Takes a value in; one that is not finite is passed over. */
    Range include(double value) {
        if (Double.isFinite(value)) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return this;
    }

    Range include(Interval interval) {
        return include(interval.low()).include(interval.high());
    }

    Range include(Estimate estimate) {
        estimate.interval().ifPresent(this::include);
        return include(estimate.value());
    }

    /** Widens the range evenly until it spans this much; one that holds nothing stays so. */
    Range atLeast(double span) {
        double lack = span - (high - low);
        if (low <= high && lack > 0) {
            low -= lack / 2;
            high += lack / 2;
        }
        return this;
    }

    /** An axis over all values with some room at both ends; a single value gets a range around it. */
    Axis linear(double startPx, double endPx) {
        if (!(low <= high)) {
            return new Axis(0, 1, false, startPx, endPx);
        }
        double room = (high - low) * 0.05;
        if (!(room > 0)) {
            room = low == 0 ? 1 : Math.abs(low) * 0.1;
        }
        return new Axis(low - room, high + room, false, startPx, endPx);
    }

    /** A logarithmic axis with 1 in the middle, so that twice and half lie equally far from it. */
    Axis aroundOne(double startPx, double endPx) {
        double reach = StrictMath.log(1.02);
        if (low <= high && low > 0) {
            reach = Math.max(reach, Math.max(Math.abs(StrictMath.log(low)), Math.abs(StrictMath.log(high))));
        }
        double end = StrictMath.exp(reach * 1.08);
        return new Axis(1 / end, end, true, startPx, endPx);
    }
}
