package org.evenhand.check.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.evenhand.check.StudyView;
import org.evenhand.model.Condition;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Run;
import org.evenhand.quantity.Dimension;
import org.evenhand.quantity.Unit;

/** What measurands are made of: other measurands, and in the end columns and readings. */
final class Parts {

    static final Unit WATT = Unit.of("W");
    static final Unit JOULE = Unit.of("J");

    private static final Dimension VOLTAGE = Unit.of("V").dimension();
    private static final Dimension CURRENT = Unit.of("A").dimension();

    private Parts() {}

    /**
     * A column of the log, or a reading.
     *
     * @param name by which the run says what it was measured with
     * @param unit of its values
     */
    record Source(String name, Unit unit) {}

    /** The measurands that a study shows of a run, and all that they are derived from. */
    static List<Measurand> shown(StudyView study, Run run) {
        Set<Measurand> all = new LinkedHashSet<>();
        study.study().measurands().stream()
                .filter(id -> id.method().equals(run.method()))
                .forEach(id -> all.addAll(of(study.method(run), study.measurand(id))));
        return List.copyOf(all);
    }

    /** A measurand, and all that it is derived from. */
    static List<Measurand> of(Method method, Measurand measurand) {
        Set<Measurand> all = new LinkedHashSet<>();
        add(method, measurand, all);
        return List.copyOf(all);
    }

    private static void add(Method method, Measurand measurand, Set<Measurand> all) {
        if (measurand != null && all.add(measurand)) {
            measurand
                    .reduction()
                    .parts()
                    .forEach(part -> add(method, method.measurands().get(part), all));
        }
    }

    /** Where a measurand's values come from; nothing for one that is derived, or whose column the method lacks. */
    static Optional<Source> source(Method method, Measurand measurand) {
        Reduction reduction = measurand.reduction();
        if (reduction instanceof Reduction.Reading reading) {
            return Optional.of(new Source(reading.reading(), measurand.unit()));
        }
        return column(reduction)
                .flatMap(c -> Optional.ofNullable(method.records().get(c)).map(unit -> new Source(c, unit)));
    }

    private static Optional<String> column(Reduction reduction) {
        if (reduction instanceof Reduction.OfColumn ofColumn) {
            return Optional.of(ofColumn.column());
        }
        return reduction.watched().map(Condition::column);
    }

    /** The columns and readings of power or energy among the parts; and of voltage and current where those make power. */
    static List<Source> ofPower(Method method, List<Measurand> parts) {
        Set<Source> sources = new LinkedHashSet<>();
        for (Measurand part : parts) {
            source(method, part).filter(s -> isPower(s.unit())).ifPresent(sources::add);
            if (part.reduction() instanceof Reduction.Derived derived && isPower(part.unit())) {
                for (String id : derived.parts()) {
                    Optional.ofNullable(method.measurands().get(id))
                            .flatMap(m -> source(method, m))
                            .filter(s -> isElectric(s.unit()))
                            .ifPresent(sources::add);
                }
            }
        }
        return new ArrayList<>(sources);
    }

    private static boolean isPower(Unit unit) {
        return unit.dimension().equals(WATT.dimension()) || unit.dimension().equals(JOULE.dimension());
    }

    private static boolean isElectric(Unit unit) {
        return unit.dimension().equals(VOLTAGE) || unit.dimension().equals(CURRENT);
    }
}
