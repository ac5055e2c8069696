package org.evenhand.model;

import java.util.Optional;

/**
 * What a finding is about, so that it can be shown there and act there.
 *
 * @param study the study touched; absent if all of the publication is
 * @param comparison the comparison of that study; absent if all of it is touched
 * @param run the run of that study; absent if no single one is meant
 * @param measurand the one measurand whose figures are touched; absent if all are
 */
public record Subject(
        Optional<String> study, Optional<String> comparison, Optional<String> run, Optional<MeasurandId> measurand) {

    public static final Subject PUBLICATION =
            new Subject(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public static Subject study(String study) {
        return new Subject(Optional.of(study), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public static Subject comparison(String study, String comparison) {
        return new Subject(Optional.of(study), Optional.of(comparison), Optional.empty(), Optional.empty());
    }

    public static Subject run(String study, String run) {
        return new Subject(Optional.of(study), Optional.empty(), Optional.of(run), Optional.empty());
    }

    /** The same, but for the figures of one measurand alone. */
    public Subject on(MeasurandId one) {
        return new Subject(study, comparison, run, Optional.of(one));
    }

    /** Whether the figures of a measurand are touched. */
    public boolean touches(MeasurandId one) {
        return measurand.isEmpty() || measurand.get().equals(one);
    }
}
