package org.evenhand.measure;

import org.evenhand.log.Samples;
import org.evenhand.statistics.TypeB;

/**
 * The share of time during which a condition holds.
 *
 * <p>What a sample says holds until the next, so that a sample weighs by the step that follows it, and the last not at
 * all. Each change happened somewhere within a step, and adds that much uncertainty.
 */
final class Share implements Reducer {

    private final Criterion criterion;
    private final Sum held = new Sum();
    private double firstS = Double.NaN;
    private double previousS;
    private boolean holds;
    private double variance;

    Share(Criterion criterion) {
        this.criterion = criterion;
    }

    @Override
    public void samples(Samples some) {
        for (int i = 0; i < some.size(); i++) {
            sample(some.timesS()[i], some, i);
        }
    }

    private void sample(double timeS, Samples some, int index) {
        if (criterion.isUnknown(some, index)) {
            return;
        }
        boolean now = criterion.holds(some, index);
        if (Double.isNaN(firstS)) {
            firstS = timeS;
        } else {
            double stepS = timeS - previousS;
            held.add(holds ? stepS : 0);
            double u = now == holds ? 0 : TypeB.rectangular(stepS);
            variance += u * u;
        }
        previousS = timeS;
        holds = now;
    }

    @Override
    public Reduced result() {
        double durationS = previousS - firstS;
        return durationS > 0
                ? Reduced.Figure.withOwn(held.value() / durationS, Math.sqrt(variance) / durationS, "sampling step")
                : Reduced.Refused.tooFewSamples();
    }
}
