package org.evenhand.check.rule;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.LogFacts.ColumnFacts;
import org.evenhand.quantity.Unit;

/** The ambient temperature of a run: what its log says, else what is stated. */
final class Ambient {

    static final Unit CELSIUS = Unit.of("°C");

    /** The column that tells it. */
    static final String COLUMN = "ambient";

    private Ambient() {}

    /** In °C, the mean over the run; nothing if it is neither logged nor stated. */
    static OptionalDouble of(StudyView study, LevelRun run) {
        OptionalDouble logged = inCelsius(study, run, COLUMN, facts(run, COLUMN).map(ColumnFacts::mean));
        return logged.isPresent() ? logged : stated(run);
    }

    /** In °C, at the first sample if it is logged, else as stated; nothing if it is neither. */
    static OptionalDouble atStart(StudyView study, LevelRun run) {
        OptionalDouble logged = inCelsius(study, run, COLUMN, facts(run, COLUMN).map(ColumnFacts::first));
        return logged.isPresent() ? logged : stated(run);
    }

    /** Its course, in °C; nothing if it is not logged. */
    static Optional<Course> course(StudyView study, LevelRun run) {
        return Course.of(study, run, COLUMN, CELSIUS);
    }

    static OptionalDouble stated(LevelRun run) {
        return run.run().ambient().isPresent()
                ? OptionalDouble.of(run.run().ambient().get().in(CELSIUS))
                : OptionalDouble.empty();
    }

    static Optional<ColumnFacts> facts(LevelRun run, String column) {
        return run.measured().log().flatMap(log -> log.column(column));
    }

    private static OptionalDouble inCelsius(StudyView study, LevelRun run, String column, Optional<Double> value) {
        Unit unit = study.method(run.run()).records().get(column);
        return value.isPresent() && unit != null && unit.convertsTo(CELSIUS)
                ? OptionalDouble.of(unit.to(CELSIUS).fast().apply(value.get()))
                : OptionalDouble.empty();
    }
}
