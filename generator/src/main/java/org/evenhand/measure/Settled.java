package org.evenhand.measure;

import java.util.Arrays;
import java.util.Optional;
import org.evenhand.log.Samples;
import org.evenhand.quantity.Unit;
import org.evenhand.words.Phrase;

/**
 * The mean over the last window, if the fitted slope has died down.
 *
 * <p>The samples of the last window are kept in a ring; if there are more than {@link #MOST_KEPT}, the log is read
 * again once it is known where the window begins.
 */
final class Settled implements Reducer {

    static final int MOST_KEPT = 1 << 16;

    private final Signal signal;
    private final Criteria criteria;
    private double[] times = new double[256];
    private double[] values = new double[256];
    private double[] taken = new double[256];
    private int head;
    private int size;
    private double firstS = Double.NaN;
    private double lastS = Double.NaN;
    private boolean overflown;
    private final Window window = new Window();
    private boolean summed;
    private Optional<SettledFacts> known = Optional.empty();

    /**
     * When a signal counts as settled.
     *
     * @param windowS length of the window, in seconds
     * @param allowedDrift within the window, in the unit of a difference of the signal
     * @param unit of the signal
     */
    record Criteria(double windowS, double allowedDrift, Unit unit) {}

    Settled(Signal signal, Criteria criteria) {
        this.signal = signal;
        this.criteria = criteria;
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
        firstS = Double.isNaN(firstS) ? timeS : firstS;
        lastS = timeS;
        while (size > 0 && times[head] < timeS - criteria.windowS) {
            head = (head + 1) & (times.length - 1);
            size--;
        }
        if (size == times.length) {
            grow();
        }
        int at = (head + size) & (times.length - 1);
        times[at] = timeS;
        values[at] = value;
        taken[at] = signal.minusOf(some, index);
        size++;
    }

    private void grow() {
        if (size == MOST_KEPT) {
            // Those kept no longer reach back to the beginning of the window; only the last matters now.
            overflown = true;
            head = (head + size / 2) & (times.length - 1);
            size /= 2;
            return;
        }
        times = unrolled(times);
        values = unrolled(values);
        taken = unrolled(taken);
        head = 0;
    }

    private double[] unrolled(double[] ring) {
        double[] larger = Arrays.copyOf(Arrays.copyOfRange(ring, head, ring.length), 2 * ring.length);
        System.arraycopy(ring, 0, larger, ring.length - head, head);
        return larger;
    }

    @Override
    public Optional<Reducer> again() {
        boolean incomplete = overflown && times[head] > lastS - criteria.windowS;
        return incomplete ? Optional.of(new Again()) : Optional.empty();
    }

    @Override
    public Reduced result() {
        if (!summed) {
            for (int i = 0; i < size; i++) {
                int at = (head + i) & (times.length - 1);
                window.add(times[at], values[at], taken[at]);
            }
            summed = true;
        }
        Optional<SettledFacts> found = facts();
        if (found.isEmpty()) {
            return new Reduced.Refused("not-settled", Phrase.of("missing.window", Phrase.rounded(criteria.windowS, 6)));
        }
        SettledFacts facts = found.get();
        if (!facts.settled()) {
            return new Reduced.Refused(
                    "not-settled",
                    Phrase.of(
                            "missing.drifts",
                            Phrase.rounded(facts.drift(), 3),
                            criteria.unit.ofDifference().symbol(),
                            Phrase.rounded(criteria.windowS, 6),
                            Phrase.rounded(criteria.allowedDrift, 3)));
        }
        return Reduced.Figure.likeColumn(facts.mean(), window.meanOfMinus(), window.uncertaintyOfMean());
    }

    /** Of the window, once the samples are all there; absent if the log does not fill it. */
    Optional<SettledFacts> facts() {
        boolean filled = lastS - firstS >= criteria.windowS && window.samples() >= 3;
        if (known.isEmpty() && filled) {
            known = Optional.of(window.facts(criteria.windowS, criteria.allowedDrift, criteria.unit));
        }
        return known;
    }

    /** Sums the window from its beginning, which the first pass has found. */
    private final class Again implements Reducer {

        Again() {
            size = 0;
            times = new double[1];
            values = new double[1];
            taken = new double[1];
        }

        @Override
        public void samples(Samples some) {
            for (int i = 0; i < some.size(); i++) {
                sample(some.timesS()[i], some, i);
            }
        }

        private void sample(double timeS, Samples some, int index) {
            double value = signal.of(some, index);
            if (timeS >= lastS - criteria.windowS && !Double.isNaN(value)) {
                window.add(timeS, value, signal.minusOf(some, index));
            }
        }

        @Override
        public Reduced result() {
            return Settled.this.result();
        }
    }
}
