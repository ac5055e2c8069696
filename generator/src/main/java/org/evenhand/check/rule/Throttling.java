package org.evenhand.check.rule;

import java.util.Collections;
import java.util.Optional;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Condition;
import org.evenhand.model.Measurand;
import org.evenhand.model.Reduction;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** Whether a run was held back below the clock that it was set to. */
final class Throttling {

    private static final String CLOCK = "clock";

    /** Of the clock that was set; what is below was not meant. */
    private static final double SHARE_KEPT = 0.95;

    private Throttling() {}

    /** What the log tells; nothing if it does not tell. A run without a clock has nothing that could drop. */
    static Optional<Boolean> of(StudyView study, LevelRun run) {
        boolean asked = false;
        for (Measurand measurand : study.method(run.run()).measurands().values()) {
            if (measurand.reduction().watched().filter(Condition::isDrop).isPresent()) {
                RunValue value = run.measured().value(measurand.id());
                boolean until = measurand.reduction() instanceof Reduction.TimeUntil;
                if (value instanceof RunValue.Known known && (until || known.value() > 0)) {
                    return Optional.of(true);
                }
                asked |= value instanceof RunValue.Known || value instanceof RunValue.AtLeast;
            }
        }
        return asked ? Optional.of(false) : byClock(study, run);
    }

    private static Optional<Boolean> byClock(StudyView study, LevelRun run) {
        String set = run.run().settings().get(CLOCK);
        Unit unit = study.method(run.run()).records().get(CLOCK);
        if (set == null && unit == null) {
            return Optional.of(false);
        }
        Optional<Course> course = unit == null ? Optional.empty() : Course.of(study, run, CLOCK, unit);
        if (set == null || course.isEmpty()) {
            return Optional.empty();
        }
        try {
            double least = SHARE_KEPT * Quantity.parse(set, unit).in(unit);
            return Optional.of(Collections.min(course.get().means()) < least);
        } catch (MisreadException e) {
            return Optional.empty();
        }
    }
}
