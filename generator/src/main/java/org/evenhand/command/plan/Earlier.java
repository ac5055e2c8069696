package org.evenhand.command.plan;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.evenhand.command.UnusableException;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.model.Limits;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Study;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.read.NearMiss;

/**
 * What a results folder already knows of the study that is planned.
 *
 * @param root the results folder
 * @param folder what it says
 * @param evidence the study's figures
 */
record Earlier(Path root, ResultsFolder folder, StudyEvidence evidence) {

    static Earlier of(Path root, String study, Limits limits) {
        if (!Files.isDirectory(root)) {
            throw new UnusableException("there is no folder " + root);
        }
        CheckedFolder checked = FolderChecker.check(root, Optional.empty(), limits);
        String id = study;
        if (id == null) {
            if (checked.studies().size() != 1) {
                throw new UnusableException("say which study with --study, one of: "
                        + String.join(", ", checked.studies().keySet()));
            }
            id = checked.studies().firstKey();
        }
        if (checked.folder().broken().contains(id)) {
            throw new UnusableException("the study “" + id + "” has faults; “evenhand check " + root + "” says which");
        }
        if (!checked.studies().containsKey(id)) {
            throw new UnusableException("there is no study “" + id + "” in " + root + "; "
                    + NearMiss.suggestion(id, checked.studies().keySet()));
        }
        return new Earlier(root, checked.folder(), checked.studies().get(id).evidence());
    }

    Study study() {
        return evidence.study();
    }

    Method method() {
        return folder.methods().get(study().methods().get(0));
    }

    /** The measurand of this name, or the study's first. */
    MeasurandId measurand(String name) {
        List<MeasurandId> numeric = study().measurands();
        if (name == null) {
            return numeric.get(0);
        }
        return numeric.stream()
                .filter(m -> m.measurand().equals(name) || (m.method() + "/" + m.measurand()).equals(name))
                .findFirst()
                .orElseThrow(() -> new UnusableException("the study has no measurand “" + name + "”; "
                        + NearMiss.suggestion(
                                name,
                                numeric.stream().map(MeasurandId::measurand).toList())));
    }

    /** The scatter of values within the levels, pooled over them. */
    Spread spread(MeasurandId measurand) {
        double sum = 0;
        int freedom = 0;
        int values = 0;
        int levels = 0;
        Unit unit = Unit.ONE;
        for (LevelSummary summary : evidence.summaries()) {
            boolean counts = summary.measurand().equals(measurand)
                    && summary.standardDeviation().isPresent()
                    && summary.censored() == 0;
            if (counts) {
                double deviation = summary.standardDeviation().getAsDouble();
                sum += (summary.n() - 1) * deviation * deviation;
                freedom += summary.n() - 1;
                values += summary.n();
                levels++;
                unit = summary.unit().ofDifference();
            }
        }
        return spread(
                sum, freedom, unit, measurand, values + " values at " + levels + (levels == 1 ? " level" : " levels"));
    }

    /** The scatter of the differences between two levels on one specimen. */
    Spread spreadOfPairs(MeasurandId measurand) {
        Map<String, List<Double>> first = bySpecimen(measurand, study().levels().get(0));
        Map<String, List<Double>> second =
                bySpecimen(measurand, study().levels().get(1));
        List<Double> differences = new ArrayList<>();
        first.forEach((specimen, values) -> {
            if (second.containsKey(specimen)) {
                differences.add(mean(second.get(specimen)) - mean(values));
            }
        });
        double mean = differences.isEmpty() ? 0 : mean(differences);
        double sum =
                differences.stream().mapToDouble(d -> (d - mean) * (d - mean)).sum();
        Unit unit = evidence.summaries().stream()
                .filter(s -> s.measurand().equals(measurand))
                .map(s -> s.unit().ofDifference())
                .findFirst()
                .orElse(Unit.ONE);
        return spread(sum, differences.size() - 1, unit, measurand, differences.size() + " pairs of specimens");
    }

    private Spread spread(double sum, int freedom, Unit unit, MeasurandId measurand, String of) {
        if (!(freedom >= 1 && sum > 0)) {
            // Of fewer than two there is no scatter; of equal values neither.
            throw new UnusableException("the study “" + study().id() + "” does not show how “" + measurand.measurand()
                    + "” scatters (" + of + "); give the spread with --spread");
        }
        Amount deviation = new Amount(Math.sqrt(sum / freedom), unit, false);
        return new Spread(deviation, OptionalInt.of(freedom), "of " + of + " in “" + study().id() + "”");
    }

    private Map<String, List<Double>> bySpecimen(MeasurandId measurand, String level) {
        Map<String, List<Double>> values = new TreeMap<>();
        for (LevelRun run : evidence.runs()) {
            OptionalDouble value = run.run().counts() && run.level().equals(level)
                    ? run.value(measurand).map(v -> v.number()).orElse(OptionalDouble.empty())
                    : OptionalDouble.empty();
            if (value.isPresent() && run.run().specimen().isPresent()) {
                values.computeIfAbsent(run.run().specimen().get(), s -> new ArrayList<>())
                        .add(value.getAsDouble());
            }
        }
        return values;
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).sum() / values.size();
    }

    /** The mean at the first level that has one: the base of percentages. */
    Optional<Quantity> mean(MeasurandId measurand) {
        return evidence.summaries().stream()
                .filter(s -> s.measurand().equals(measurand) && s.mean().isPresent())
                .findFirst()
                .map(s -> new Quantity(new java.math.BigDecimal(s.mean().getAsDouble()), Optional.empty(), s.unit()));
    }

    /** The longest time constant of the approaches that were fitted to earlier runs, in seconds: the median over runs. */
    OptionalDouble timeConstantS() {
        double[] constants = evidence.runs().stream()
                .flatMapToDouble(r -> r.measured().approaches().values().stream()
                        .filter(a -> a.timeConstantsSeen() >= 1)
                        .mapToDouble(a -> a.timeConstantS())
                        .max()
                        .stream())
                .sorted()
                .toArray();
        return constants.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(constants[constants.length / 2]);
    }

    /** The settings that all earlier runs share, beside the factor. */
    Map<String, String> commonSettings() {
        Map<String, String> common = new LinkedHashMap<>();
        study().runs().stream().findFirst().ifPresent(r -> common.putAll(r.settings()));
        common.remove(study().factor());
        study().runs()
                .forEach(r -> common.entrySet()
                        .removeIf(e -> !e.getValue().equals(r.settings().get(e.getKey()))));
        return common;
    }

    /** The item of the runs, if it is one. */
    Optional<String> item() {
        List<String> items =
                study().runs().stream().map(r -> r.item()).distinct().toList();
        List<String> all = items.isEmpty() ? List.copyOf(folder.items().keySet()) : items;
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }
}
