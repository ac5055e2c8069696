package org.evenhand.measure;

/** The greatest or the least sample of a signal; the first of equals. */
final class Extreme implements Reducer {

    private final Signal signal;
    private final boolean greatest;
    private double extreme = Double.NaN;
    private double minus;

    Extreme(Signal signal, boolean greatest) {
        this.signal = signal;
        this.greatest = greatest;
    }

    @Override
    public void sample(double timeS, double[] row) {
        double value = signal.of(row);
        boolean better = greatest ? value > extreme : value < extreme;
        if (better || (Double.isNaN(extreme) && !Double.isNaN(value))) {
            extreme = value;
            minus = signal.minusOf(row);
        }
    }

    @Override
    public Reduced result() {
        return Double.isNaN(extreme) ? Reduced.Refused.tooFewSamples() : Reduced.Figure.likeColumn(extreme, minus, 0);
    }
}
