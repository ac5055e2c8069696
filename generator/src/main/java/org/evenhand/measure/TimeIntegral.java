package org.evenhand.measure;

/** The integral of a column over time by the linear trapezoid, gaps bridged, its rounding errors summed as in {@link Sum}. */
final class TimeIntegral {

    private double sum;
    private double lost;
    private double firstS = Double.NaN;
    private double lastS = Double.NaN;
    private double last = Double.NaN;

    /**
     * Takes the next samples.
     *
     * @param values NaN where none was taken
     */
    void add(double[] timesS, double[] values, int count) {
        int i = 0;
        while (Double.isNaN(lastS) && i < count) {
            if (!Double.isNaN(values[i])) {
                firstS = timesS[i];
                lastS = timesS[i];
                last = values[i];
            }
            i++;
        }
        // What changes with each sample is held in the hand.
        double total = sum;
        double errors = lost;
        double beforeS = lastS;
        double before = last;
        for (; i < count; i++) {
            double value = values[i];
            if (Double.isNaN(value)) {
                continue;
            }
            double term = (timesS[i] - beforeS) * (before + value) / 2;
            double next = total + term;
            double added = next - total;
            errors += (total - (next - added)) + (term - added);
            total = next;
            beforeS = timesS[i];
            before = value;
        }
        sum = total;
        lost = errors;
        lastS = beforeS;
        last = before;
    }

    /** In the unit of the column times seconds. */
    double value() {
        return sum + lost;
    }

    /** From the first sample to the last; NaN if there is none. */
    double durationS() {
        return lastS - firstS;
    }
}
