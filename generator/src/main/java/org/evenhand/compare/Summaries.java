package org.evenhand.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import org.evenhand.measure.Contributions;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;
import org.evenhand.model.Reading;
import org.evenhand.model.Reduction;
import org.evenhand.model.Study;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.Grubbs;
import org.evenhand.statistics.MedianInterval;
import org.evenhand.statistics.Sample;

/** Summarises each measurand of a study at each level. */
final class Summaries {

    private Summaries() {}

    static List<LevelSummary> of(Study study, List<LevelRun> runs, SortedMap<String, Method> methods) {
        List<LevelSummary> result = new ArrayList<>();
        for (MeasurandId id : study.measurands()) {
            Method method = methods.get(id.method());
            Measurand measurand = method.measurands().get(id.measurand());
            for (String level : study.levels()) {
                result.add(
                        measurand.isNumeric()
                                ? ofNumbers(runs, level, id, measurand)
                                : ofWords(runs, level, id, measurand, words(method, measurand)));
            }
        }
        return result;
    }

    private static LevelSummary ofNumbers(List<LevelRun> runs, String level, MeasurandId id, Measurand measurand) {
        LevelValues values = LevelValues.of(runs, level, id);
        Optional<Sample> sample = values.sample();
        Optional<Estimate> estimate = values.mean();
        Optional<Sample> ordered = sample.filter(s -> measurand.median());
        return new LevelSummary(
                level,
                id,
                measurand.unit(),
                values.units().size(),
                values.counts(),
                (int) values.censored(),
                (int) values.atMost(),
                values.centre(),
                sample.isPresent() ? sample.get().standardDeviation() : OptionalDouble.empty(),
                estimate,
                // Equal values of an instrument without stated limits would get an interval of no width.
                estimate.filter(e -> e.standardUncertainty() > 0).map(e -> e.interval(LevelSummary.CONFIDENCE)),
                values.contributions(),
                values.units().stream().map(LevelValues.Unit::value).toList(),
                Map.of(),
                sample.flatMap(s -> Grubbs.of(s, 0.05)).filter(Grubbs::outlier),
                ordered.map(s -> OptionalDouble.of(s.median())).orElse(OptionalDouble.empty()),
                ordered.flatMap(s -> MedianInterval.of(s, LevelSummary.CONFIDENCE))
                        .map(MedianInterval::interval),
                values.runs());
    }

    private static LevelSummary ofWords(
            List<LevelRun> runs, String level, MeasurandId id, Measurand measurand, List<Reading> words) {
        Map<Reading, Integer> counts = new LinkedHashMap<>();
        words.forEach(w -> counts.put(w, 0));
        List<String> ids = new ArrayList<>();
        for (LevelRun run : runs) {
            if (run.level().equals(level)
                    && run.run().counts()
                    && run.value(id).orElse(null) instanceof RunValue.Noted noted) {
                counts.merge(noted.reading(), 1, Integer::sum);
                ids.add(run.run().id());
            }
        }
        return new LevelSummary(
                level,
                id,
                measurand.unit(),
                ids.size(),
                Counts.RUNS,
                0,
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Contributions.NONE,
                List.of(),
                counts,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                ids);
    }

    private static List<Reading> words(Method method, Measurand measurand) {
        if (!(measurand.reduction() instanceof Reduction.OnScale onScale)) {
            return List.of(Reading.Observed.YES, Reading.Observed.PARTLY, Reading.Observed.NO);
        }
        List<String> scale = method.scales().get(onScale.scale());
        List<Reading> words = new ArrayList<>();
        for (int place = 0; place < scale.size(); place++) {
            words.add(new Reading.OnScale(scale.get(place), place));
        }
        return words;
    }
}
