package org.evenhand.compare;

import java.util.Optional;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.measure.RunValue;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Run;

/**
 * A run as a study sees it.
 *
 * @param measured the run and its values
 * @param level of the study's factor
 */
public record LevelRun(MeasuredRun measured, String level) {

    public Run run() {
        return measured.run();
    }

    /** Its value of a measurand; nothing if its method does not yield it. */
    public Optional<RunValue> value(MeasurandId id) {
        return run().method().equals(id.method())
                ? Optional.ofNullable(measured.values().get(id.measurand()))
                : Optional.empty();
    }

    /** What the run was made on: item and specimen. */
    String specimen() {
        return run().item() + "/" + run().specimen().orElse("");
    }
}
