package org.evenhand.check.rule;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.measure.RunValue;
import org.evenhand.model.MeasurandId;

/** The runs behind a summary, one by one. */
final class Repeats {

    private Repeats() {}

    /** Those with a known value, in the order in which they were made; those without a date come first. */
    static List<LevelRun> inOrder(StudyView study, LevelSummary summary) {
        return study.countingRuns().stream()
                .filter(r -> r.level().equals(summary.level()))
                .filter(r -> r.value(summary.measurand()).orElse(null) instanceof RunValue.Known)
                .sorted(Comparator.comparing(Repeats::started)
                        .thenComparing(r -> r.run().id()))
                .toList();
    }

    static double[] values(List<LevelRun> runs, MeasurandId measurand) {
        return runs.stream()
                .mapToDouble(r -> r.value(measurand).orElseThrow().number().orElseThrow())
                .toArray();
    }

    private static Instant started(LevelRun run) {
        return run.run().started().map(java.time.OffsetDateTime::toInstant).orElse(Instant.MIN);
    }
}
