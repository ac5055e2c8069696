package org.evenhand.measure;

import org.evenhand.log.Samples;

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
    public void samples(Samples some) {
        for (int i = 0; i < some.size(); i++) {
            sample(some.timesS()[i], some, i);
        }
    }

    private void sample(double timeS, Samples some, int index) {
        double value = signal.of(some, index);
        boolean better = greatest ? value > extreme : value < extreme;
        if (better || (Double.isNaN(extreme) && !Double.isNaN(value))) {
            extreme = value;
            minus = signal.minusOf(some, index);
        }
    }

    @Override
    public Reduced result() {
        return Double.isNaN(extreme) ? Reduced.Refused.tooFewSamples() : Reduced.Figure.likeColumn(extreme, minus, 0);
    }
}
