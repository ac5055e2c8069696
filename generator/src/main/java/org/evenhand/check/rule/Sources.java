package org.evenhand.check.rule;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Reduction;

/** The columns and readings that the numbers of a study come from. */
final class Sources {

    private static final String AMBIENT = "ambient";

    private Sources() {}

    /** Those of one run, sorted; a column that its log lacks is not among them, nor is a judgement. */
    static Set<String> of(StudyView study, LevelRun run) {
        Set<String> sources = new TreeSet<>();
        Stream.concat(
                        study.study().measurands().stream(),
                        study.study().comparisons().stream().flatMap(c -> c.measurand().stream()))
                .forEach(id -> sources.addAll(of(study, run, id)));
        return sources;
    }

    /** Those of one measurand of one run; none if the run's method does not yield it. */
    static Set<String> of(StudyView study, LevelRun run, MeasurandId id) {
        Set<String> sources = new TreeSet<>();
        if (id.method().equals(run.run().method())) {
            add(study, run, id.measurand(), sources, 0);
        }
        return sources;
    }

    private static void add(StudyView study, LevelRun run, String id, Set<String> sources, int depth) {
        Map<String, Measurand> measurands = study.method(run.run()).measurands();
        Reduction reduction = measurands.get(id).reduction();
        if (reduction instanceof Reduction.Reading reading) {
            if (run.run().readings().containsKey(reading.reading())) {
                sources.add(reading.reading());
            }
        } else if (reduction instanceof Reduction.OfColumn ofColumn) {
            addColumn(run, ofColumn.column(), sources);
            ofColumn.minus().ifPresent(minus -> addColumn(run, minus, sources));
        } else if (reduction.watched().isPresent()) {
            addColumn(run, reduction.watched().get().column(), sources);
        } else if (depth < measurands.size()) {
            reduction.parts().forEach(part -> add(study, run, part, sources, depth + 1));
        }
    }

    private static void addColumn(LevelRun run, String column, Set<String> sources) {
        boolean logged = run.measured()
                .log()
                .map(log -> log.columns().containsKey(column))
                .orElse(false);
        if (logged || column.equals(AMBIENT) && run.run().instruments().containsKey(AMBIENT)) {
            sources.add(column);
        }
    }
}
