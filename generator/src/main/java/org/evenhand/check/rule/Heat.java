package org.evenhand.check.rule;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.LogFacts.ColumnFacts;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/** How hot that gets which is tested. */
final class Heat {

    static final Unit KELVIN = Unit.of("K");

    private Heat() {}

    /** The columns of a method that hold temperatures of what is tested: all but the ambient one. */
    static List<String> columns(Method method) {
        return method.records().entrySet().stream()
                .filter(e ->
                        e.getValue().kind() == UnitKind.POINT && !e.getKey().equals(Ambient.COLUMN))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Whether a unit is one of temperature, or of a difference of temperatures. */
    static boolean isUnit(Unit unit) {
        return unit.dimension().equals(KELVIN.dimension());
    }

    /** Whether a measurand is a rise above the ambient temperature: made so from the log, or noted as a difference. */
    static boolean isRise(Measurand measurand) {
        if (measurand.reduction() instanceof Reduction.OfColumn of) {
            return isUnit(measurand.unit())
                    && of.minus().filter(Ambient.COLUMN::equals).isPresent();
        }
        return measurand.reduction() instanceof Reduction.Reading
                && isUnit(measurand.unit())
                && measurand.unit().kind() == UnitKind.DIFFERENCE;
    }

    /**
     * Which field is missing to tell how a run started, where neither a log nor a word says it. Nothing is missing where how
     * long it rested is noted for readers to judge, or where the log is there but broken, which has been said already.
     */
    static Optional<String> missingOfStart(StudyView study, LevelRun run) {
        boolean noted = run.run().circumstances().containsKey("rested");
        boolean broken = run.run().log().isPresent() && run.measured().log().isEmpty();
        if (noted || broken) {
            return Optional.empty();
        }
        return Optional.of(Ambient.atStart(study, run).isEmpty() ? Ambient.COLUMN : "rested");
    }

    /** How far a column's first sample was above the ambient temperature, in K; nothing if either is not known. */
    static OptionalDouble aboveAmbientAtStartK(StudyView study, LevelRun run, String column) {
        OptionalDouble ambient = Ambient.atStart(study, run);
        Unit unit = study.method(run.run()).records().get(column);
        Optional<ColumnFacts> facts = Ambient.facts(run, column);
        if (ambient.isEmpty() || facts.isEmpty() || !unit.convertsTo(Ambient.CELSIUS)) {
            return OptionalDouble.empty();
        }
        double first = unit.to(Ambient.CELSIUS).fast().apply(facts.get().first());
        return OptionalDouble.of(first - ambient.getAsDouble());
    }
}
