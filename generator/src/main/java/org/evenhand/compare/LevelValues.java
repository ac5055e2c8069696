package org.evenhand.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.evenhand.measure.Contributions;
import org.evenhand.measure.RunValue;
import org.evenhand.model.MeasurandId;
import org.evenhand.quantity.UnitKind;
import org.evenhand.statistics.CensoredTime;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.Sample;
import org.evenhand.statistics.SoundLevel;

/**
 * The values of one measurand at one level, put together so that each counts once.
 *
 * <p>With two or more specimens at the level each specimen's mean is one value; with one specimen each run is.
 * Decibels are averaged by their energy, everything else by its value.
 *
 * @param counts what a value stands for
 * @param units the values, in the order of their names
 * @param runs the ids of the runs that take part
 * @param decibels whether the values are levels
 */
record LevelValues(Counts counts, List<Unit> units, List<String> runs, boolean decibels) {

    /**
     * One value that counts once.
     *
     * @param key the specimen or run it belongs to, or the pair
     * @param value the mean of its runs; the mean of what is known of them if one is censored
     * @param censored whether the value is only known to be larger
     * @param atMost whether the value is only known to be smaller
     * @param contributions of the instruments to its uncertainty
     */
    record Unit(String key, double value, boolean censored, boolean atMost, Contributions contributions) {}

    static LevelValues of(List<LevelRun> runs, String level, MeasurandId measurand) {
        List<LevelRun> taking = takingPart(runs, level, measurand);
        long specimens = taking.stream().map(LevelRun::specimen).distinct().count();
        Counts counts = specimens >= 2 ? Counts.SPECIMENS : Counts.RUNS;
        Function<LevelRun, String> key = counts == Counts.SPECIMENS
                ? LevelRun::specimen
                : r -> r.run().study() + "/" + r.run().id();
        return grouped(taking, measurand, counts, key);
    }

    /** The values by the key that makes pairs of two levels. */
    static LevelValues paired(List<LevelRun> runs, String level, MeasurandId measurand, String pairedBy) {
        List<LevelRun> taking = takingPart(runs, level, measurand).stream()
                .filter(r -> r.run().levelOf(pairedBy).isPresent())
                .toList();
        Counts counts = pairedBy.equals("specimen") ? Counts.SPECIMENS : Counts.RUNS;
        return grouped(taking, measurand, counts, r -> r.run().levelOf(pairedBy).orElseThrow());
    }

    private static List<LevelRun> takingPart(List<LevelRun> runs, String level, MeasurandId measurand) {
        return runs.stream()
                .filter(r -> r.level().equals(level) && r.run().counts())
                .filter(r -> r.value(measurand).filter(LevelValues::isNumber).isPresent())
                .toList();
    }

    private static boolean isNumber(RunValue value) {
        return value instanceof RunValue.Known || value instanceof RunValue.AtLeast || value instanceof RunValue.AtMost;
    }

    private static LevelValues grouped(
            List<LevelRun> runs, MeasurandId measurand, Counts counts, Function<LevelRun, String> key) {
        Map<String, List<RunValue>> byKey = new LinkedHashMap<>();
        runs.forEach(r -> byKey.computeIfAbsent(key.apply(r), k -> new ArrayList<>())
                .add(r.value(measurand).orElseThrow()));
        boolean decibels = byKey.values().stream().flatMap(List::stream).anyMatch(LevelValues::isLevel);
        List<Unit> units = new ArrayList<>();
        byKey.forEach((k, values) -> units.add(mean(k, values, decibels)));
        List<String> ids = runs.stream().map(r -> r.run().id()).toList();
        return new LevelValues(counts, List.copyOf(units), ids, decibels);
    }

    private static boolean isLevel(RunValue value) {
        return value instanceof RunValue.Known known && known.unit().kind() == UnitKind.LEVEL
                || value instanceof RunValue.AtMost atMost && atMost.unit().kind() == UnitKind.LEVEL;
    }

    private static Unit mean(String key, List<RunValue> values, boolean decibels) {
        double[] numbers = values.stream().mapToDouble(LevelValues::number).toArray();
        double[] weights = weights(numbers, decibels);
        Contributions contributions = Contributions.NONE;
        for (int i = 0; i < weights.length; i++) {
            if (values.get(i) instanceof RunValue.Known known) {
                contributions = contributions.plus(known.contributions().scaled(weights[i]));
            }
        }
        return new Unit(
                key,
                mean(numbers, decibels),
                values.stream().anyMatch(RunValue.AtLeast.class::isInstance),
                values.stream().anyMatch(RunValue.AtMost.class::isInstance),
                contributions);
    }

    /** What is known of a value: itself, or its bound. */
    private static double number(RunValue value) {
        if (value instanceof RunValue.AtLeast atLeast) {
            return atLeast.bound();
        }
        return value instanceof RunValue.AtMost atMost
                ? atMost.bound()
                : value.number().orElseThrow();
    }

    private static double mean(double[] numbers, boolean decibels) {
        double sum = 0;
        for (double number : decibels ? SoundLevel.linearisedDb(numbers) : numbers) {
            sum += number;
        }
        return sum / numbers.length;
    }

    /** How much the mean changes with each value. */
    private static double[] weights(double[] numbers, boolean decibels) {
        if (decibels) {
            return SoundLevel.energyShares(numbers);
        }
        double[] equal = new double[numbers.length];
        Arrays.fill(equal, 1.0 / numbers.length);
        return equal;
    }

    boolean isEmpty() {
        return units.isEmpty();
    }

    long censored() {
        return units.stream().filter(Unit::censored).count();
    }

    /** How many are only known to be smaller. */
    long atMost() {
        return units.stream().filter(Unit::atMost).count();
    }

    double[] values() {
        return units.stream().mapToDouble(Unit::value).toArray();
    }

    /** The units as times, for a survival curve. */
    List<CensoredTime> times() {
        return units.stream()
                .map(u -> u.censored() ? CensoredTime.censored(u.value()) : CensoredTime.event(u.value()))
                .toList();
    }

    /** The instruments' contributions to the mean. */
    Contributions contributions() {
        Contributions sum = Contributions.NONE;
        if (!isEmpty()) {
            double[] weights = weights(values(), decibels);
            for (int i = 0; i < weights.length; i++) {
                sum = sum.plus(units.get(i).contributions().scaled(weights[i]));
            }
        }
        return sum;
    }

    /** The sample, where every value was observed and there is any. */
    Optional<Sample> sample() {
        return isEmpty() || censored() > 0 || atMost() > 0 ? Optional.empty() : Optional.of(Sample.of(values()));
    }

    /** The sample whose mean and scatter are those of the level's mean: the values themselves, or linearised decibels. */
    private Optional<Sample> averaged() {
        return sample().map(s -> decibels ? Sample.of(SoundLevel.linearisedDb(s.values())) : s);
    }

    /** The mean, also of a single value. */
    OptionalDouble centre() {
        return averaged().map(s -> OptionalDouble.of(s.mean())).orElse(OptionalDouble.empty());
    }

    /** The mean with both parts of its uncertainty, where there are repeats. */
    Optional<Estimate> mean() {
        return averaged()
                .flatMap(Estimate::ofMean)
                .map(e -> e.withTypeB(contributions().combined()));
    }
}
