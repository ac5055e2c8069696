package org.evenhand.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.ComparisonResult.Contrasted;
import org.evenhand.compare.ComparisonResult.Survival;
import org.evenhand.compare.Verdict;
import org.evenhand.model.Comparison;
import org.evenhand.model.Reduction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where in the sample each kind of comparison, each verdict and each figure that reviewers ask for is to be seen. */
class SampleKindsTest {

    private static final CheckedFolder SAMPLE = FolderChecker.check(
            Path.of(System.getProperty("evenhand.root", "..")).resolve("sample-results"));

    private static ComparisonResult result(String study, String comparison) {
        return SAMPLE.studies().get(study).evidence().comparison(comparison).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "difference, heat-spreader, fan-rise",
        "ratio, heat-spreader, spreader-frames",
        "trend, raised-clock, speed-by-clock",
        "time-until, heat-spreader, throttle-onset",
        "proportion, raised-clock-yield, holds-raised",
        "failure-rate, night-run, night-failures",
        "geometric-mean, station-tasks, overall"
    })
    void eachKindOfComparisonHasAStudy(String kind, String study, String comparison) {
        assertEquals(kind, result(study, comparison).plan().kind().word());
    }

    @Test
    void noKindIsLeftOut() {
        TreeSet<String> shown = SAMPLE.studies().values().stream()
                .flatMap(s -> s.evidence().comparisons().stream())
                .map(c -> c.plan().kind().word())
                .collect(Collectors.toCollection(TreeSet::new));
        TreeSet<String> all = Arrays.stream(Comparison.Kind.values())
                .map(Comparison.Kind::word)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(all, shown);
    }

    @ParameterizedTest
    @CsvSource({
        "DIFFERS, heat-spreader, spreader-frames",
        "SAME_WITHIN_MARGIN, cable, cable-speed",
        "NOT_SHOWN, battery, delay",
        "NOT_COMPARABLE, supply, supply-power"
    })
    void eachVerdictIsToBeSeen(Verdict verdict, String study, String comparison) {
        assertEquals(Optional.of(verdict), SAMPLE.studies().get(study).verdict(result(study, comparison)));
    }

    @Test
    void oneDiffersButByLessThanItsMargin() {
        Contrasted voltage = (Contrasted) result("cable", "cable-voltage");
        assertTrue(voltage.differs());
        assertEquals(Optional.of(Verdict.SAME_WITHIN_MARGIN), voltage.verdict());
    }

    @Test
    void aMedianIsNotReached() {
        Survival onset = (Survival) result("heat-spreader", "throttle-onset");
        ComparisonResult.Curve spreader = onset.levels().stream()
                .filter(c -> c.level().equals("spreader"))
                .findFirst()
                .orElseThrow();
        assertTrue(spreader.curve().median().isEmpty());
        assertFalse(onset.levels().stream().allMatch(c -> c.curve().median().isEmpty()));
    }

    @Test
    void aLineHasItsExponentAndItsScalingEfficiency() {
        ComparisonResult.Trend speed = (ComparisonResult.Trend) result("raised-clock", "speed-by-clock");
        assertTrue(speed.exponent().isPresent());
        assertTrue(speed.efficiency().isPresent());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "rise above ambient, thermal-soak, settled-rise, settled",
        "time to throttle, thermal-soak, time-to-throttle, time-until",
        "share throttled, thermal-soak, share-throttled, share",
        "mean power, thermal-soak, mean-power, mean",
        "peak power, thermal-soak, peak-power, maximum",
        "energy per task, clock-sweep, energy-per-frame, quotient",
        "work per energy, thermal-soak, frames-per-energy, quotient",
        "score per clock, clock-sweep, frames-per-clock, quotient",
        "highest ambient without throttling, thermal-soak, highest-ambient, ambient-limit"
    })
    void whatAReviewerWantsToQuoteIsThereByName(String wanted, String method, String measurand, String reduce) {
        Reduction reduction = SAMPLE.folder()
                .methods()
                .get(method)
                .measurands()
                .get(measurand)
                .reduction();
        assertEquals(reduce, reduction.word(), wanted);
    }
}
