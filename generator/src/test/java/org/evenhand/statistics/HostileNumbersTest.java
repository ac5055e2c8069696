package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Few, equal, tiny, huge and mixed values: whatever comes out is a finite number or absent. */
class HostileNumbersTest {

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void nothingThatLeavesIsInfiniteOrNotANumber(int seed) {
        Random random = new Random(seed);
        for (int study = 0; study < 300; study++) {
            int n = 1 + random.nextInt(7);
            double[] x = values(random, n);
            double[] y = values(random, n);
            Sample a = Sample.of(x);
            Sample b = Sample.of(y);
            requireFinite(a.mean(), a.median(), a.standardDeviation(), MedianInterval.of(a, 0.95), Grubbs.of(a, 0.05));
            IndependentMeans.of(a, b).ifPresent(HostileNumbersTest::requireFiniteContrast);
            PairedMeans.of(a, b).ifPresent(HostileNumbersTest::requireFiniteContrast);
            requireFinite(LineFit.of(x, y), LineFitThroughOrigin.of(x, y), LineFit.ofLogarithms(x, y));
            TheilSen.of(x, y).ifPresent(line -> requireFinite(line.slope(), line.intercept(), line.interval(0.95)));
            Autocorrelation.of(a).ifPresent(r -> requireFinite(r, r.effectiveSize()));
            if (n >= 2) {
                MannKendall trend = MannKendall.of(a);
                requireFinite(trend, trend.z(), trend.pTwoSided());
            }
            double[] times = DoubleStream.of(x).map(Math::abs).toArray();
            ApproachFit.of(times, y).ifPresent(fit -> requireFinite(fit, fit.remaining(), fit.timeConstantsSeen()));
            ApproachFit.throughZero(times, y).ifPresent(fit -> requireFinite(fit, fit.remaining()));
            survival(random, times);
        }
    }

    /** Values that share a random size, or each have their own, with zeros and repeats. */
    private static double[] values(Random random, int n) {
        double size = Math.pow(10, random.nextInt(41) - 20);
        double centre = random.nextInt(3) * size;
        int kind = random.nextInt(5);
        double[] values = new double[n];
        Arrays.setAll(values, i -> switch (kind) {
            case 0 -> centre;
            case 1 -> centre + size * 1e-9 * random.nextGaussian();
            case 2 -> random.nextInt(3) * size;
            case 3 -> Math.pow(10, random.nextInt(21) - 10) * random.nextGaussian();
            default -> centre + size * random.nextGaussian();
        });
        return values;
    }

    private static void survival(Random random, double[] times) {
        List<CensoredTime> all = DoubleStream.of(times)
                .mapToObj(time -> new CensoredTime(time, random.nextBoolean()))
                .toList();
        KaplanMeier curve = KaplanMeier.of(all);
        requireFinite(curve, curve.median(), curve.medianLow(0.95), curve.medianHigh(0.95));
        curve.steps().forEach(step -> requireFinite(step.standardUncertainty(), step.interval(0.95)));
        if (all.size() >= 2) {
            int half = all.size() / 2;
            requireFinite(LogRank.of(List.of(all.subList(0, half), all.subList(half, all.size()))));
        }
    }

    private static void requireFiniteContrast(Contrast contrast) {
        requireFinite(contrast.ratio(), contrast.ratioInterval(0.95), contrast.logRatio());
        requireFinite(Equivalence.ofRatio(contrast, 0.1, 0.05));
        contrast.difference().ifPresent(difference -> {
            requireFinite(difference, difference.interval(0.95), difference.pTwoSided(0), difference.tStatistic(0));
            requireFinite(difference.effectiveDegreesOfFreedom(), difference.pAbove(1), difference.pBelow(1));
            requireFinite(Equivalence.of(difference, new Interval(-1, 1), 0.05));
        });
    }

    private static void requireFinite(Object... results) {
        for (Object result : results) {
            if (result instanceof Double number) {
                assertTrue(Math.abs(number) <= Double.MAX_VALUE, () -> "not finite: " + number);
            } else if (result instanceof OptionalDouble number) {
                number.ifPresent(HostileNumbersTest::requireFinite);
            } else if (result instanceof Optional<?> value) {
                value.ifPresent(HostileNumbersTest::requireFinite);
            } else if (result instanceof Collection<?> values) {
                requireFinite(values.toArray());
            } else if (result instanceof Record value) {
                requireFinite(components(value));
            }
        }
    }

    private static Object[] components(Record value) {
        return Arrays.stream(value.getClass().getRecordComponents())
                .map(component -> read(component, value))
                .toArray();
    }

    private static Object read(RecordComponent component, Record value) {
        try {
            return component.getAccessor().invoke(value);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
