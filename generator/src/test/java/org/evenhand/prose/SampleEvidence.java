package org.evenhand.prose;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenhand.compare.Comparer;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.compare.Verdict;
import org.evenhand.measure.Contributions;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.measure.Measurements;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Measurand;
import org.evenhand.model.Reading;
import org.evenhand.model.Reduction;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.evenhand.model.Study;
import org.evenhand.quantity.Unit;
import org.evenhand.read.FolderReader;

/**
 * The sample's studies with figures of the size that their logs give. Readings are the sample's own; what comes from a log
 * is made up here, with a spread that depends on the run's place in the list alone, so that no log has to be read.
 */
final class SampleEvidence {

    private static final Map<String, Double> FROM_LOGS = Map.ofEntries(
            Map.entry("settled-rise@none", 61.0),
            Map.entry("settled-rise@spreader", 48.2),
            Map.entry("settled-rise@spreader and fan", 34.9),
            Map.entry("time-to-throttle@none", 12.4),
            Map.entry("share-throttled@none", 62.0),
            Map.entry("share-throttled@spreader", 0.0),
            Map.entry("share-throttled@spreader and fan", 0.0),
            Map.entry("energy@none", 5210.0),
            Map.entry("energy@spreader", 6105.0),
            Map.entry("energy@spreader and fan", 6480.0),
            Map.entry("energy@quillet-2", 4.310),
            Map.entry("energy@quillet-3", 3.402),
            Map.entry("mean-power@quillet-2", 4.31),
            Map.entry("mean-power@quillet-3", 3.402),
            Map.entry("delay@quillet-2", 412.0),
            Map.entry("delay@quillet-3", 405.0),
            Map.entry("frame-rate@short cable", 1.905),
            Map.entry("frame-rate@long cable", 1.901),
            Map.entry("input-voltage@short cable", 11.94),
            Map.entry("input-voltage@long cable", 11.60),
            Map.entry("frame-rate@1500 MHz", 1.622),
            Map.entry("frame-rate@1800 MHz", 1.903),
            Map.entry("frame-rate@2000 MHz", 2.081),
            Map.entry("frame-rate@2100 MHz", 2.166),
            Map.entry("energy-per-frame@1500 MHz", 3.31),
            Map.entry("energy-per-frame@1800 MHz", 3.52),
            Map.entry("energy-per-frame@2000 MHz", 3.88),
            Map.entry("energy-per-frame@2100 MHz", 4.11),
            Map.entry("highest-temperature@1800 MHz", 57.0),
            Map.entry("mean-power@old supply", 7.9),
            Map.entry("mean-power@new supply", 6.8),
            Map.entry("level@half", 28.4),
            Map.entry("level@full", 38.9));

    private final ResultsFolder folder = FolderReader.read(Path.of("../sample-results"));
    private final SortedMap<String, StudyEvidence> evidence = Comparer.compare(folder, measured());

    ResultsFolder folder() {
        return folder;
    }

    StudyResolver resolver(String study) {
        // The comparisons of the study of supplies are refused by the checks.
        return StudyResolver.of(
                folder,
                evidence.get(study),
                r -> study.equals("supply") ? Optional.of(Verdict.NOT_COMPARABLE) : r.verdict());
    }

    private Measurements measured() {
        SortedMap<String, SortedMap<String, MeasuredRun>> all = new TreeMap<>();
        for (Study study : folder.studies().values()) {
            SortedMap<String, MeasuredRun> runs = new TreeMap<>();
            for (Run run : study.runs()) {
                runs.put(
                        run.id(),
                        new MeasuredRun(
                                run,
                                values(study, run, runs.size()),
                                Optional.empty(),
                                Map.of(),
                                Map.of(),
                                Map.of(),
                                Map.of(),
                                Optional.empty(),
                                OptionalLong.empty(),
                                List.of()));
            }
            all.put(study.id(), runs);
        }
        return new Measurements(all, List.of());
    }

    private Map<String, RunValue> values(Study study, Run run, int place) {
        Map<String, RunValue> values = new LinkedHashMap<>();
        String level = run.levelOf(study.factor()).orElse("");
        for (Measurand measurand :
                folder.methods().get(run.method()).measurands().values()) {
            values.put(measurand.id(), value(measurand, run, level, place));
        }
        return values;
    }

    private static RunValue value(Measurand measurand, Run run, String level, int place) {
        Optional<Reading> reading = Optional.ofNullable(run.readings().get(name(measurand)));
        if (reading.isPresent() && reading.get() instanceof Reading.Measured measured) {
            return known(measured.quantity().in(measurand.unit()), measurand.unit());
        }
        if (reading.isPresent()) {
            return new RunValue.Noted(reading.get());
        }
        Double typical = FROM_LOGS.get(measurand.id() + "@" + level);
        if (typical == null) {
            return measurand.reduction() instanceof Reduction.TimeUntil
                    ? new RunValue.AtLeast(45, measurand.unit())
                    : new RunValue.Missing("log", org.evenhand.words.Phrase.of("missing.told", "not made up"));
        }
        double spread = typical == 405.0 || typical == 412.0 ? 0.06 : 0.004;
        return known(typical * (1 + spread * ((place * 7 % 5) - 2) / 2.0), measurand.unit());
    }

    private static String name(Measurand measurand) {
        if (measurand.reduction() instanceof Reduction.Reading r) {
            return r.reading();
        }
        if (measurand.reduction() instanceof Reduction.OnScale r) {
            return r.reading();
        }
        return measurand.reduction() instanceof Reduction.Observation r ? r.reading() : "";
    }

    private static RunValue known(double value, Unit unit) {
        return new RunValue.Known(value, unit, 0, Contributions.NONE);
    }
}
