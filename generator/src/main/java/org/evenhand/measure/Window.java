package org.evenhand.measure;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Autocorrelation;
import org.evenhand.statistics.MannKendall;
import org.evenhand.statistics.Sample;
import org.evenhand.statistics.TheilSen;

/**
 * What is to be known of the samples of a window, in one pass and in fixed memory.
 *
 * <p>Sums are taken about the first sample, so that they lose no digits to a large mean. The sums of neighbours give
 * r₁ with the full denominator: Σ(yᵢ − m)(yᵢ₊₁ − m) = Σdᵢdᵢ₊₁ − d̄(2Σd − d₁ − dₙ) + (n − 1)d̄². Theil–Sen slope and
 * Mann–Kendall test compare all pairs, and so are taken of block means.
 */
final class Window {

    private final BlockMeans blocks = new BlockMeans();
    private final Sum deviations = new Sum();
    private final Sum squares = new Sum();
    private final Sum neighbours = new Sum();
    private final Sum times = new Sum();
    private final Sum timeSquares = new Sum();
    private final Sum timeDeviations = new Sum();
    private final Sum minus = new Sum();
    private long samples;
    private double firstS;
    private double first;
    private double lastDeviation;

    void add(double timeS, double value, double taken) {
        if (samples++ == 0) {
            firstS = timeS;
            first = value;
        }
        double t = timeS - firstS;
        double d = value - first;
        if (samples > 1) {
            neighbours.add(lastDeviation * d);
        }
        deviations.add(d);
        squares.add(d * d);
        times.add(t);
        timeSquares.add(t * t);
        timeDeviations.add(t * d);
        minus.add(taken);
        lastDeviation = d;
        blocks.add(timeS, value);
    }

    long samples() {
        return samples;
    }

    double meanOfMinus() {
        return minus.value() / samples;
    }

    /** Standard uncertainty of the mean; the samples are worth fewer where neighbours resemble each other. */
    double uncertaintyOfMean() {
        double variance = Math.max(0, squareSum()) / (samples - 1);
        return Math.sqrt(variance / effectiveSamples());
    }

    SettledFacts facts(double windowS, double allowedDrift, Unit unit) {
        double n = samples;
        double timeMean = times.value() / n;
        double timeVariation = timeSquares.value() - n * timeMean * timeMean;
        double slope = timeVariation > 0 ? (timeDeviations.value() - timeMean * deviations.value()) / timeVariation : 0;
        double drift = slope * windowS;
        BlockSeries series = blocks.series();
        return new SettledFacts(
                windowS,
                samples,
                first + deviations.value() / n,
                drift,
                allowedDrift,
                lag1(),
                effectiveSamples(),
                TheilSen.of(series.timesS(), series.means())
                        .map(fit -> OptionalDouble.of(fit.slope() * windowS))
                        .orElse(OptionalDouble.empty()),
                MannKendall.of(Sample.of(series.means())).pTwoSided(),
                Math.abs(drift) < allowedDrift,
                unit);
    }

    private double squareSum() {
        double sum = deviations.value();
        return squares.value() - sum * sum / samples;
    }

    private OptionalDouble lag1() {
        double variation = squareSum();
        if (!(variation > 0)) {
            return OptionalDouble.empty();
        }
        double mean = deviations.value() / samples;
        double products = neighbours.value()
                - mean * (2 * deviations.value() - lastDeviation) // the first deviation is zero
                + (samples - 1) * mean * mean;
        return OptionalDouble.of(products / variation);
    }

    private double effectiveSamples() {
        OptionalDouble lag1 = lag1();
        Optional<Autocorrelation> autocorrelation = lag1.isPresent()
                ? Optional.of(new Autocorrelation((int) Math.min(samples, Integer.MAX_VALUE), lag1.getAsDouble()))
                : Optional.empty();
        return autocorrelation.map(Autocorrelation::effectiveSize).orElse((double) samples);
    }
}
