package org.evenhand.measure;

import java.util.OptionalDouble;
import org.evenhand.log.Samples;
import org.evenhand.statistics.TypeB;

/**
 * The time of the first sample from which a condition holds for its whole dwell.
 *
 * <p>The event lies between that sample and the one before, so the time is known to ± one sampling step. An event that
 * did not happen is right-censored at the last sample; if the condition held at the end, though not yet for its dwell,
 * then at the sample since which it does, for the event may have begun there. A gap longer than the method allows
 * breaks the dwell.
 */
final class Until implements Reducer {

    private final Criterion criterion;
    private final double dwellS;
    private final OptionalDouble maxGapS;
    private double sinceS = Double.NaN;
    private double stepS;
    private double previousS = Double.NaN;
    private boolean found;

    Until(Criterion criterion, double dwellS, OptionalDouble maxGapS) {
        this.criterion = criterion;
        this.dwellS = dwellS;
        this.maxGapS = maxGapS;
    }

    @Override
    public void samples(Samples some) {
        for (int i = 0; i < some.size(); i++) {
            sample(some.timesS()[i], some, i);
        }
    }

    private void sample(double timeS, Samples some, int index) {
        if (found || criterion.isUnknown(some, index)) {
            return;
        }
        boolean gap = maxGapS.isPresent() && timeS - previousS > maxGapS.getAsDouble();
        if (!criterion.holds(some, index)) {
            sinceS = Double.NaN;
        } else {
            if (Double.isNaN(sinceS) || gap) {
                sinceS = timeS;
                stepS = Double.isNaN(previousS) ? 0 : timeS - previousS;
            }
            found = timeS - sinceS >= dwellS;
        }
        previousS = timeS;
    }

    @Override
    public Reduced result() {
        if (Double.isNaN(previousS)) {
            return Reduced.Refused.tooFewSamples();
        }
        if (found) {
            return Reduced.Figure.withOwn(sinceS, TypeB.rectangular(stepS), "sampling step");
        }
        return new Reduced.Beyond(Double.isNaN(sinceS) ? previousS : sinceS);
    }
}
