package org.evenhand.compare;

import java.util.List;
import java.util.Optional;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Study;

/**
 * All figures of a study.
 *
 * @param study the question
 * @param runs that it looks at, its own and those of others, completed or not, in the order of their ids
 * @param summaries by measurand, then level, in the study's order
 * @param comparisons in the study's order
 */
public record StudyEvidence(
        Study study, List<LevelRun> runs, List<LevelSummary> summaries, List<ComparisonResult> comparisons) {

    public StudyEvidence {
        runs = List.copyOf(runs);
        summaries = List.copyOf(summaries);
        comparisons = List.copyOf(comparisons);
    }

    public Optional<ComparisonResult> comparison(String id) {
        return comparisons.stream().filter(c -> c.plan().id().equals(id)).findFirst();
    }

    public Optional<LevelSummary> summary(String level, MeasurandId measurand) {
        return summaries.stream()
                .filter(s -> s.level().equals(level) && s.measurand().equals(measurand))
                .findFirst();
    }

    public Optional<LevelRun> run(String id) {
        return runs.stream().filter(r -> r.run().id().equals(id)).findFirst();
    }
}
