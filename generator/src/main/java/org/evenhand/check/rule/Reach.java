package org.evenhand.check.rule;

import java.util.Collection;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;

/** Which figures of a study a fault reaches: a poor power meter spoils no temperature. */
final class Reach {

    private Reach() {}

    /** The measurands that are made of one of a run's method, itself among them. */
    static Set<MeasurandId> of(StudyView study, LevelRun run, Measurand part) {
        Method method = study.method(run.run());
        return where(study, run, id -> Parts.of(method, study.measurand(id)).contains(part));
    }

    /** The measurands whose values of a run come from a column or reading. */
    static Set<MeasurandId> of(StudyView study, LevelRun run, String source) {
        return where(study, run, id -> Sources.of(study, run, id).contains(source));
    }

    /** The measurands whose values of some of the runs come from a column or reading that fits. */
    static Set<MeasurandId> of(StudyView study, Collection<LevelRun> runs, BiPredicate<LevelRun, String> source) {
        return runs.stream()
                .flatMap(run ->
                        where(
                                study,
                                run,
                                id -> Sources.of(study, run, id).stream().anyMatch(s -> source.test(run, s)))
                                .stream())
                .collect(Collectors.toSet());
    }

    private static Set<MeasurandId> where(StudyView study, LevelRun run, Predicate<MeasurandId> condition) {
        return Stream.concat(
                        study.study().measurands().stream(),
                        study.study().comparisons().stream().flatMap(c -> c.measurand().stream()))
                .filter(id -> id.method().equals(run.run().method()))
                .filter(condition)
                .collect(Collectors.toSet());
    }
}
