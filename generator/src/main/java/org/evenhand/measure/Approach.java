package org.evenhand.measure;

import java.util.Optional;
import org.evenhand.log.Samples;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.ApproachFit;
import org.evenhand.words.Phrase;

/**
 * The plateau of an exponential approach, fitted to block means of the signal.
 *
 * <p>A block is short against any time constant that can be told from the log, so that the means lie on the curve.
 */
final class Approach implements Reducer {

    private final Signal signal;
    private final Unit unit;
    private final BlockMeans blocks = new BlockMeans();
    private final Sum minus = new Sum();
    private long samples;
    private double firstS;

    Approach(Signal signal, Unit unit) {
        this.signal = signal;
        this.unit = unit;
    }

    @Override
    public void samples(Samples some) {
        for (int i = 0; i < some.size(); i++) {
            sample(some.timesS()[i], some, i);
        }
    }

    private void sample(double timeS, Samples some, int index) {
        double value = signal.of(some, index);
        if (Double.isNaN(value)) {
            return;
        }
        firstS = samples++ == 0 ? timeS : firstS;
        blocks.add(timeS - firstS, value);
        minus.add(signal.minusOf(some, index));
    }

    @Override
    public Reduced result() {
        if (samples == 0) {
            return Reduced.Refused.tooFewSamples();
        }
        Optional<ApproachFacts> facts = facts();
        if (facts.isEmpty()) {
            return new Reduced.Refused("not-settled", Phrase.of("missing.no-approach"));
        }
        ApproachFacts known = facts.get();
        if (!(known.timeConstantsSeen() >= 1)) {
            return new Reduced.Refused(
                    "plateau-far", Phrase.of("missing.too-short", Phrase.rounded(known.timeConstantsSeen(), 2)));
        }
        return Reduced.Figure.likeColumn(known.plateau(), minus.value() / samples, known.plateauUncertainty());
    }

    /** What was fitted; absent where no approach can be. */
    Optional<ApproachFacts> facts() {
        BlockSeries series = blocks.series();
        return ApproachFit.of(series.timesS(), series.means())
                .map(fit -> new ApproachFacts(
                        fit.finalValue().value(),
                        fit.finalValue().typeA(),
                        fit.timeConstant().value(),
                        fit.timeConstant().typeA(),
                        fit.remaining(),
                        fit.timeConstantsSeen(),
                        unit));
    }
}
