package org.evenhand.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.evenhand.compare.ComparisonResult.Contrasted;
import org.evenhand.compare.ComparisonResult.Survival;
import org.evenhand.statistics.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What must hold of every study, tried on drawn ones, from the files to the figures. */
class PropertiesTest {

    private static final int STUDIES = 60;

    @TempDir
    private Path folder;

    private interface Property {
        void holds(Trial trial, Random random) throws IOException;
    }

    private static void ofEach(long seed, Property property) throws IOException {
        Random random = new Random(seed);
        for (int i = 0; i < STUDIES; i++) {
            property.holds(Trial.drawn(random), random);
        }
    }

    @Test
    void the_order_in_which_files_are_written_changes_nothing() throws IOException {
        ofEach(1, (trial, random) -> {
            StudyEvidence one = trial.evidence(folder);
            StudyEvidence other = trial.shuffled(random).evidence(folder);
            assertEquals(one.summaries(), other.summaries());
            assertEquals(one.comparisons(), other.comparisons());
        });
    }

    @Test
    void the_order_of_the_runs_changes_no_figure_beyond_rounding() throws IOException {
        ofEach(2, (trial, random) -> {
            List<Trial.Row> renamed = new ArrayList<>();
            List<Trial.Row> shuffled = trial.shuffled(random).runs();
            for (int i = 0; i < shuffled.size(); i++) {
                renamed.add(shuffled.get(i).withId("r" + i));
            }
            StudyEvidence one = trial.evidence(folder);
            StudyEvidence other = trial.with(renamed).evidence(folder);
            same(contrast(one, "difference"), contrast(other, "difference"), 1);
            same(contrast(one, "ratio"), contrast(other, "ratio"), 1);
            assertEquals(medians(one), medians(other));
        });
    }

    @Test
    void another_unit_changes_nothing_but_the_unit() throws IOException {
        ofEach(3, (trial, random) -> {
            StudyEvidence one = trial.evidence(folder);
            String written = List.of("J", "kJ", "mWh", "Wh").get(random.nextInt(4));
            String given = List.of("J", "kJ", "mWh", "Wh").get(random.nextInt(4));
            StudyEvidence other = trial.in(written, given).evidence(folder);
            same(contrast(one, "difference"), contrast(other, "difference"), Trial.joules(given));
            same(contrast(one, "ratio"), contrast(other, "ratio"), 1);
        });
    }

    @Test
    void the_interval_of_the_ratio_holds_one_exactly_when_that_of_the_difference_holds_zero() throws IOException {
        int[] seen = new int[3];
        ofEach(4, (trial, random) -> {
            StudyEvidence evidence = trial.evidence(folder);
            Optional<Interval> ratio = contrast(evidence, "ratio").interval();
            Optional<Interval> difference = contrast(evidence, "difference").interval();
            if (ratio.isEmpty()) {
                seen[2]++;
                return; // the base cannot be told from zero, or nothing scatters
            }
            boolean none = difference.orElseThrow().contains(0);
            assertEquals(none, ratio.get().contains(1), trial.toString());
            seen[none ? 0 : 1]++;
        });
        assertTrue(seen[0] > 10 && seen[1] > 5 && seen[2] > 0, seen[0] + " without, " + seen[1] + " with a difference");
    }

    @Test
    void swapping_the_sides_negates_a_difference_and_inverts_a_ratio() throws IOException {
        ofEach(5, (trial, random) -> {
            StudyEvidence one = trial.evidence(folder);
            StudyEvidence other = trial.with(
                            trial.runs().stream().map(Trial.Row::onTheOtherSide).toList())
                    .evidence(folder);
            Contrasted difference = contrast(one, "difference");
            Contrasted negated = contrast(other, "difference");
            near(difference.estimate(), scaled(negated.estimate(), -1));
            assertEquals(difference.interval().isPresent(), negated.interval().isPresent());
            if (difference.interval().isPresent()) {
                near(
                        difference.interval().get().low(),
                        -negated.interval().get().high());
                near(
                        difference.interval().get().high(),
                        -negated.interval().get().low());
            }
            near(difference.p(), negated.p());
            Contrasted ratio = contrast(one, "ratio");
            Contrasted inverted = contrast(other, "ratio");
            // Where either base cannot be told from zero, that side alone has no interval.
            if (ratio.interval().isPresent() && inverted.interval().isPresent()) {
                near(ratio.estimate().getAsDouble() * inverted.estimate().getAsDouble(), 1);
                near(ratio.interval().get().low() * inverted.interval().get().high(), 1);
                near(ratio.interval().get().high() * inverted.interval().get().low(), 1);
                // With both ratios tested, Holm adjusts within the same family on both sides.
                assertEquals(difference.verdict(), negated.verdict());
                assertEquals(ratio.verdict(), inverted.verdict());
            }
        });
    }

    @Test
    void watching_for_longer_without_an_event_never_shortens_a_median() throws IOException {
        ofEach(6, (trial, random) -> {
            List<Double> before = medians(trial.evidence(folder));
            Trial longer = trial.with(trial.runs().stream()
                    .map(r -> r.censored() ? r.withTime(r.timeS() + random.nextInt(60)) : r)
                    .toList());
            List<Double> after = medians(longer.evidence(folder));
            assertEquals(before.size(), after.size());
            for (int i = 0; i < before.size(); i++) {
                assertTrue(after.get(i) >= before.get(i), before + " before, " + after + " after: " + longer);
            }
        });
    }

    private static Contrasted contrast(StudyEvidence evidence, String id) {
        return (Contrasted) evidence.comparison(id).orElseThrow();
    }

    /** One median a level; one that was not reached is longer than any. */
    private static List<Double> medians(StudyEvidence evidence) {
        return ((Survival) evidence.comparison("lasting").orElseThrow())
                .levels().stream()
                        .map(c -> c.curve().median().orElse(Double.POSITIVE_INFINITY))
                        .toList();
    }

    /** @param unit in which the other is given, in units of the one */
    private static void same(Contrasted one, Contrasted other, double unit) {
        near(one.estimate(), scaled(other.estimate(), unit));
        near(one.p(), other.p());
        near(one.degreesOfFreedom(), other.degreesOfFreedom());
        assertEquals(one.verdict(), other.verdict());
        assertEquals(one.interval().isPresent(), other.interval().isPresent());
        if (one.interval().isPresent()) {
            near(one.interval().get().low(), unit * other.interval().get().low());
            near(one.interval().get().high(), unit * other.interval().get().high());
        }
    }

    private static OptionalDouble scaled(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(factor * value.getAsDouble()) : value;
    }

    private static void near(OptionalDouble one, OptionalDouble other) {
        assertEquals(one.isPresent(), other.isPresent());
        if (one.isPresent()) {
            near(one.getAsDouble(), other.getAsDouble());
        }
    }

    private static void near(double one, double other) {
        assertEquals(one, other, 1e-9 * Math.max(1, Math.abs(one)));
    }
}
