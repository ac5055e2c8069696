package org.evenhand.model;

import java.util.Optional;

/**
 * What a finding is about, so that it can be shown there and act there.
 *
 * @param study the study touched; absent if all of the publication is
 * @param comparison the comparison of that study; absent if all of it is touched
 * @param run the run of that study; absent if no single one is meant
 */
public record Subject(Optional<String> study, Optional<String> comparison, Optional<String> run) {

    public static final Subject PUBLICATION = new Subject(Optional.empty(), Optional.empty(), Optional.empty());

    public static Subject study(String study) {
        return new Subject(Optional.of(study), Optional.empty(), Optional.empty());
    }

    public static Subject comparison(String study, String comparison) {
        return new Subject(Optional.of(study), Optional.of(comparison), Optional.empty());
    }

    public static Subject run(String study, String run) {
        return new Subject(Optional.of(study), Optional.empty(), Optional.of(run));
    }
}
