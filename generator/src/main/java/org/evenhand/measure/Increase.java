package org.evenhand.measure;

import java.util.OptionalDouble;
import org.evenhand.log.Samples;
import org.evenhand.words.Phrase;

/**
 * By how much a counter rose, from sample to sample.
 *
 * <p>Where a counter that wraps at a stated value falls, it is taken to have started again from zero once. Where one
 * falls that does not wrap, it was reset, and how far it had come is not known.
 */
final class Increase implements Reducer {

    private final Signal signal;
    private final OptionalDouble wrapsAt;
    private final Sum sum = new Sum();
    private double last = Double.NaN;
    private long samples;
    private Reduced.Refused flaw;

    Increase(Signal signal, OptionalDouble wrapsAt) {
        this.signal = signal;
        this.wrapsAt = wrapsAt;
    }

    @Override
    public void samples(Samples some) {
        for (int i = 0; i < some.size(); i++) {
            sample(some.timesS()[i], some, i);
        }
    }

    private void sample(double timeS, Samples some, int index) {
        double value = signal.of(some, index);
        if (Double.isNaN(value) || flaw != null) {
            return;
        }
        if (wrapsAt.isPresent() && !(value >= 0 && value < wrapsAt.getAsDouble())) {
            flaw = new Reduced.Refused(
                    "implausible",
                    Phrase.of(
                            "missing.counter-outside",
                            Phrase.rounded(value, 9),
                            Phrase.rounded(wrapsAt.getAsDouble(), 9)));
        } else if (samples++ > 0) {
            double rise = value - last;
            if (rise < 0 && wrapsAt.isEmpty()) {
                flaw = new Reduced.Refused(
                        "implausible",
                        Phrase.of("missing.counter-falls", Phrase.rounded(last, 9), Phrase.rounded(value, 9)));
            }
            sum.add(rise < 0 ? rise + wrapsAt.orElse(0) : rise);
        }
        last = value;
    }

    @Override
    public Reduced result() {
        if (flaw != null) {
            return flaw;
        }
        if (samples < 2) {
            return Reduced.Refused.tooFewSamples();
        }
        // An offset is the same at both ends and cancels; the resolution counts once at each end.
        return new Reduced.Figure(sum.value(), sum.value(), 0, 0, Math.sqrt(2), 0, 0, "");
    }
}
