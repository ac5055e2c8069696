package org.evenhand.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.evenhand.quantity.Quantity;

/**
 * A comparison that a study plans to make.
 *
 * @param id its name within the study
 * @param kind what is computed
 * @param measurand which is compared; absent for a geometric mean
 * @param level the level in question; absent where all levels take part
 * @param against the level that is the base; absent where there is none
 * @param sameWithin the margin within which a difference does not matter
 * @param pairedBy the setting, or "specimen", by which runs form pairs
 * @param duration the longer time for which a failure rate is to be turned into a chance
 * @param of the ratio comparisons that a geometric mean combines
 */
public record Comparison(
        String id,
        Kind kind,
        Optional<MeasurandId> measurand,
        Optional<String> level,
        Optional<String> against,
        Optional<Quantity> sameWithin,
        Optional<String> pairedBy,
        Optional<Quantity> duration,
        List<String> of) {

    /** What a comparison computes. */
    public enum Kind {
        DIFFERENCE,
        RATIO,
        TREND,
        TIME_UNTIL,
        PROPORTION,
        FAILURE_RATE,
        GEOMETRIC_MEAN;

        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public Comparison {
        of = List.copyOf(of);
    }
}
