package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bad input gets one clear message with its place, and the exit status of the design. */
class CheckCommandTest {

    private static final String RUN = "studies/plate/runs/none-1.json";
    private static final String LOG = "studies/plate/logs/none-1.csv";

    @TempDir
    private Path folder;

    private Given given;

    @BeforeEach
    void aSoundFolder() {
        given = Given.soundFolderIn(folder.resolve("results"));
    }

    private Called check() {
        return Called.with("check", given.root().toString());
    }

    @Test
    void aSoundFolderPassesWithoutAWord() {
        Called called = check().ended(0).says("1 study, 6 runs, 0 errors, 0 refusals, 0 caveats, 0 notes");
        assertEquals("", called.out());
    }

    @Test
    void aMissingFolderCannotBeUsed() {
        Called.with("check", folder.resolve("nowhere").toString()).ended(2).says("there is no such folder");
    }

    @Test
    void anEmptyFolderCannotBeUsed() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        Called.with("check", empty.toString())
                .ended(2)
                .says("publication.yaml: error: [file-unreadable] there is no publication.yaml");
    }

    @Test
    void aBinaryFileNamedJsonIsNoText() {
        given.writing(RUN, new byte[] {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, (byte) 0xFF});
        check().ended(1).says(RUN + ":1:1: error: [file-unreadable] this is not text in UTF-8");
    }

    @Test
    void aTruncatedJsonEndsWhereItEnds() {
        String whole = given.text(RUN);
        given.writing(RUN, whole.substring(0, whole.indexOf("\"started\"")));
        check().ended(1).says(RUN + ":7:", "error: [file-unreadable] this is not JSON");
    }

    @Test
    void aTabInYamlIsNamed() {
        given.replacing("items/quillet-3.yaml", "kind: small computer", "kind:\n\tsmall computer");
        check().ended(1)
                .says("items/quillet-3.yaml:4:1: error: [file-unreadable] a tab stands where YAML wants spaces");
    }

    @Test
    void aBareNumberWantsAUnit() {
        given.replacing(RUN, "\"ambient\": \"21.2 ± 0.5 °C\"", "\"ambient\": 21");
        Called called = check().ended(1)
                .says(RUN + ":9:14: error: [unit-missing] “21” has no unit", "fix: write the unit behind the number");
        assertTrue(called.out().contains("  \"ambient\": 21,\n" + " ".repeat(4 + 13) + "^~"), called.out());
    }

    @Test
    void aMisspeltUnitGetsTheNearestOne() {
        given.replacing("instruments/dc-meter-1.yaml", "resolution: 1 mW", "resolution: 5 mw");
        check().ended(1)
                .says(
                        "instruments/dc-meter-1.yaml:4:15: error: [unit-unknown] the unit “mw” is not known",
                        "did you mean “mW”? Capitals count");
    }

    @Test
    void aLogWithoutAColumnIsTold() {
        given.writing(
                LOG,
                given.text(LOG)
                        .replaceAll("(?m)^([^,]*,[^,]*,)[^,]*,([^,]*),", "$1$2,")
                        .replace("clock [MHz],power", "power"));
        check().ended(1).says(LOG + ":1:", "error: [");
    }

    @Test
    void aLogOfOneLineHoldsNoSamples() {
        given.writing(LOG, given.text(LOG).lines().findFirst().orElseThrow() + "\n");
        check().ended(1).says(LOG, "error: [file-unreadable]", "samples");
    }

    @Test
    void timesThatRunBackwardsAreFound() {
        given.replacing(LOG, "\n120,", "\n20,");
        check().ended(1).says(LOG + ":4:1: error: [log-time-broken]");
    }

    @Test
    void aRunOfAnUnknownItemIsTold() {
        given.replacing(RUN, "\"item\": \"quillet-3\"", "\"item\": \"quilet-3\"");
        check().ended(1)
                .says(
                        RUN + ":4:12: error: [reference-unresolved] there is no “quilet-3” in items/",
                        "did you mean “quillet-3”?");
    }

    @Test
    void allFaultsAreToldInOneGo() {
        given.replacing(RUN, "\"ambient\": \"21.2 ± 0.5 °C\"", "\"ambient\": 21")
                .replacing("items/quillet-3.yaml", "obtained: bought", "obtaned: bought")
                .replacing("methods/soak.md", "run-length: 45 min", "run-length: 45 W");
        check().ended(1).says("[unit-missing]", "[field-unknown]", "[unit-dimension]", "did you mean “obtained”?");
    }

    @Test
    void aFaultInARunDoesNotHideThoseInTheLogs() {
        given.replacing(RUN, "\"ambient\": \"21.2 ± 0.5 °C\"", "\"ambient\": 21")
                .replacing("studies/plate/logs/plate-1.csv", "power [W]", "power [mw]");
        check().ended(1).says(RUN + ":9:14: error: [unit-missing]", "plate-1.csv:1:39: error: [unit-unknown]");
    }

    @Test
    void onlyOneRuleIsShownOnRequest() {
        given.replacing(RUN, "\"ambient\": \"21.2 ± 0.5 °C\"", "\"ambient\": 21")
                .replacing("items/quillet-3.yaml", "obtained: bought", "obtaned: bought");
        Called called = Called.with("check", given.root().toString(), "--only", "field-unknown")
                .ended(1);
        assertTrue(called.out().contains("[field-unknown]"));
        assertTrue(!called.out().contains("[unit-missing]"));
    }

    @Test
    void aRuleThatDoesNotExistGetsTheNearestOne() {
        Called.with("check", given.root().toString(), "--only", "unit-mising")
                .ended(2)
                .says("there is no rule “unit-mising”; did you mean “unit-missing”?");
        Called.with("explain", "unit-mising").ended(2).says("did you mean “unit-missing”?");
    }

    @Test
    void aRuleIsExplained() {
        Called.with("explain", "ambient-spread")
                .ended(0)
                .says("ambient-spread (Surroundings, refuse)", "limit 2 K", "Why it matters", "How to waive it");
    }

    @Test
    void aMisspeltCommandGetsTheNearestOne() {
        Called.with("chek", "x").ended(2).says("check");
    }

    @Test
    void withoutACommandTheProgramSaysWhatThereIs() {
        Called.with().ended(2).says("check", "publish", "explain", "--help");
    }
}
