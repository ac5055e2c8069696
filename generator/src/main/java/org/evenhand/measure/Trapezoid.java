package org.evenhand.measure;

import java.util.OptionalDouble;
import org.evenhand.log.Samples;
import org.evenhand.words.Phrase;

/**
 * The integral of a signal over time by the linear trapezoid, and with it the mean over time, integral ÷ duration.
 *
 * <p>Two samples at one time have no width between them and add nothing. A gap longer than the method allows is not
 * bridged: then there is no integral.
 */
final class Trapezoid implements Reducer {

    private final Signal signal;
    private final OptionalDouble maxGapS;
    private final boolean mean;
    private final Sum ofColumn = new Sum();
    private final Sum ofMinus = new Sum();
    private final TimeIntegral whole = new TimeIntegral();
    private double firstS;
    private double lastS;
    private double last;
    private double lastMinus;
    private double gapFromS = Double.NaN;
    private double gapToS;
    private long samples;

    /** @param mean whether the mean over time is wanted, and not the integral */
    Trapezoid(Signal signal, OptionalDouble maxGapS, boolean mean) {
        this.signal = signal;
        this.maxGapS = maxGapS;
        this.mean = mean;
    }

    @Override
    public void samples(Samples some) {
        if (signal.isWhole() && maxGapS.isEmpty()) {
            whole.add(some.timesS(), some.column(signal.column()), some.size());
            return;
        }
        for (int i = 0; i < some.size(); i++) {
            sample(some.timesS()[i], some, i);
        }
    }

    private void sample(double timeS, Samples some, int index) {
        double value = some.column(signal.column())[index];
        double minus = signal.minusOf(some, index);
        if (Double.isNaN(value) || Double.isNaN(minus)) {
            return;
        }
        if (samples++ == 0) {
            firstS = timeS;
        } else {
            double stepS = timeS - lastS;
            if (maxGapS.isPresent() && stepS > maxGapS.getAsDouble() && Double.isNaN(gapFromS)) {
                gapFromS = lastS;
                gapToS = timeS;
            }
            ofColumn.add(stepS * (last + value) / 2);
            ofMinus.add(stepS * (lastMinus + minus) / 2);
        }
        lastS = timeS;
        last = value;
        lastMinus = minus;
    }

    @Override
    public Reduced result() {
        boolean isWhole = signal.isWhole() && maxGapS.isEmpty();
        double durationS = isWhole ? whole.durationS() : lastS - firstS;
        if (!(durationS > 0)) {
            return Reduced.Refused.tooFewSamples();
        }
        if (!Double.isNaN(gapFromS)) {
            return new Reduced.Refused(
                    "log-gaps", Phrase.of("missing.gap", Phrase.rounded(gapFromS, 6), Phrase.rounded(gapToS, 6)));
        }
        double column = isWhole ? whole.value() : ofColumn.value();
        double minus = ofMinus.value();
        if (mean) {
            return Reduced.Figure.likeColumn((column - minus) / durationS, minus / durationS, 0);
        }
        return new Reduced.Figure(column - minus, column, minus, durationS, durationS, 0, 0, "");
    }
}
