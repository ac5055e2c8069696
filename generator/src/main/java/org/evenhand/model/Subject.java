package org.evenhand.model;

import java.util.Collection;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What a finding is about, so that it can be shown there and act there.
 *
 * @param study the study touched; absent if all of the publication is
 * @param comparison the comparison of that study; absent if all of it is touched
 * @param run the run of that study; absent if no single one is meant
 * @param measurands those whose figures are touched; empty if all are
 */
public record Subject(
        Optional<String> study, Optional<String> comparison, Optional<String> run, SortedSet<MeasurandId> measurands) {

    public Subject {
        measurands = Collections.unmodifiableSortedSet(new TreeSet<>(measurands));
    }

    private static final SortedSet<MeasurandId> NONE = Collections.emptySortedSet();

    public static final Subject PUBLICATION = new Subject(Optional.empty(), Optional.empty(), Optional.empty(), NONE);

    public static Subject study(String study) {
        return new Subject(Optional.of(study), Optional.empty(), Optional.empty(), NONE);
    }

    public static Subject comparison(String study, String comparison) {
        return new Subject(Optional.of(study), Optional.of(comparison), Optional.empty(), NONE);
    }

    public static Subject run(String study, String run) {
        return new Subject(Optional.of(study), Optional.empty(), Optional.of(run), NONE);
    }

    /** The same, but for the figures of one measurand alone. */
    public Subject on(MeasurandId one) {
        return on(Set.of(one));
    }

    /** The same, but for the figures of some measurands alone; for those of all if none is given. */
    public Subject on(Collection<MeasurandId> some) {
        return new Subject(study, comparison, run, new TreeSet<>(some));
    }

    /** Whether the figures of a measurand are touched. */
    public boolean touches(MeasurandId one) {
        return measurands.isEmpty() || measurands.contains(one);
    }
}
