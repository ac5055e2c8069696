package org.evenhand.check.rule;

import java.time.LocalDate;
import java.util.Optional;
import org.evenhand.compare.LevelRun;

/** The day on which a run began, by the clock on its wall. */
final class RunDay {

    private RunDay() {}

    /** Nothing if the run does not say when it began. */
    static Optional<LocalDate> of(LevelRun run) {
        return run.run().started().map(started -> started.toLocalDate());
    }
}
