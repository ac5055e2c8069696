package org.evenhand.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.evenhand.measure.Contributions;
import org.evenhand.measure.RunValue;
import org.evenhand.model.MeasurandId;
import org.evenhand.statistics.CensoredTime;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.Sample;

/**
 * The values of one measurand at one level, put together so that each counts once.
 *
 * <p>With two or more specimens at the level each specimen's mean is one value; with one specimen each run is.
 *
 * @param counts what a value stands for
 * @param units the values, in the order of their names
 * @param runs the ids of the runs that take part
 */
record LevelValues(Counts counts, List<Unit> units, List<String> runs) {

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
        List<Unit> units = new ArrayList<>();
        byKey.forEach((k, values) -> units.add(mean(k, values)));
        List<String> ids = runs.stream().map(r -> r.run().id()).toList();
        return new LevelValues(counts, List.copyOf(units), ids);
    }

    private static Unit mean(String key, List<RunValue> values) {
        double sum = 0;
        boolean censored = false;
        boolean atMost = false;
        Contributions contributions = Contributions.NONE;
        for (RunValue value : values) {
            if (value instanceof RunValue.Known known) {
                sum += known.value();
                contributions = contributions.plus(known.contributions());
            } else if (value instanceof RunValue.AtLeast atLeast) {
                sum += atLeast.bound();
                censored = true;
            } else if (value instanceof RunValue.AtMost bounded) {
                sum += bounded.bound();
                atMost = true;
            }
        }
        return new Unit(key, sum / values.size(), censored, atMost, contributions.scaled(1.0 / values.size()));
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
        for (Unit unit : units) {
            sum = sum.plus(unit.contributions());
        }
        return units.isEmpty() ? sum : sum.scaled(1.0 / units.size());
    }

    /** The sample, where every value was observed and there is any. */
    Optional<Sample> sample() {
        return isEmpty() || censored() > 0 || atMost() > 0 ? Optional.empty() : Optional.of(Sample.of(values()));
    }

    /** The mean with both parts of its uncertainty, where there are repeats. */
    Optional<Estimate> mean() {
        return sample().flatMap(Estimate::ofMean)
                .map(e -> e.withTypeB(contributions().combined()));
    }
}
