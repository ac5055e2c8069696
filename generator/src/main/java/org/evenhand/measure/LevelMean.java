package org.evenhand.measure;

import org.evenhand.log.Samples;

/** The energetic mean of levels in decibels, 10 lg of the mean of 10^(L/10) over the samples. */
final class LevelMean implements Reducer {

    private final Signal signal;
    private final Sum powers = new Sum();
    private long samples;

    LevelMean(Signal signal) {
        this.signal = signal;
    }

    @Override
    public void samples(Samples some) {
        for (int i = 0; i < some.size(); i++) {
            sample(some.timesS()[i], some, i);
        }
    }

    private void sample(double timeS, Samples some, int index) {
        double levelDb = signal.of(some, index);
        if (!Double.isNaN(levelDb)) {
            powers.add(StrictMath.pow(10, levelDb / 10));
            samples++;
        }
    }

    @Override
    public Reduced result() {
        double mean = powers.value() / samples;
        return samples == 0 || !(mean > 0) || Double.isInfinite(mean)
                ? Reduced.Refused.tooFewSamples()
                : Reduced.Figure.likeColumn(10 * StrictMath.log10(mean), 0, 0);
    }
}
