package org.evenhand.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.evenhand.model.Outcome;
import org.evenhand.model.Severity;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The sample has the findings that it is meant to have, and no others. */
class SampleFindingsTest {

    private static final Path EXPECTED = Path.of("src/test/resources/sample-findings.txt");
    private static CheckedFolder checked;

    @BeforeAll
    static void theSample() {
        checked = FolderChecker.check(Path.of("../sample-results"));
    }

    /** {@code -Devenhand.renew=true} writes them anew; read the difference before committing it. */
    @Test
    void theFindingsAreThoseListed() throws IOException {
        String found =
                checked.findings().stream().map(f -> RuleCase.line(f) + "\n").collect(Collectors.joining());
        if (Boolean.getBoolean("evenhand.renew")) {
            Files.writeString(EXPECTED, found);
        }
        assertEquals(Files.readString(EXPECTED), found);
    }

    @Test
    void onlyTheImperfectStudyHasMoreThanNotesAndTheCaveatsItsTextSpeaksOf() {
        List<String> others = checked.findings().stream()
                .filter(f -> f.outcome() != Outcome.WAIVED && f.severity() != Severity.NOTE)
                .filter(f -> !f.subject().study().orElse("").equals("supply"))
                .map(RuleCase::line)
                .toList();
        // That the clock did not drop with a spreader is what the study found; in warmer air nothing was tried, as it
        // says.
        assertEquals(
                List.of(
                        "methods/thermal-soak.md:67:3 caveat ambient-extrapolated",
                        "studies/heat-spreader/runs/spreader-1.json:12:11 caveat censored",
                        "studies/heat-spreader/runs/spreader-and-fan-1.json:12:11 caveat censored"),
                others);
    }

    @Test
    void nothingOfTheSampleIsWithheldOrNotCheckable() {
        assertEquals(
                List.of(),
                checked.findings().stream()
                        .filter(f -> f.withholds() || f.outcome() == Outcome.NOT_CHECKABLE)
                        .toList());
    }

    @Test
    void checkingTwiceFindsTheSameInTheSameOrder() {
        assertEquals(
                checked.findings(),
                FolderChecker.check(Path.of("../sample-results")).findings());
    }
}
