package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A first results folder is sound from the first moment, whatever names it is given. */
class StartCommandTest {

    @TempDir
    private Path place;

    private String dir() {
        return place.resolve("mine").toString();
    }

    @Test
    void whatItWritesPassesWithoutAFinding() {
        Called.with("start", dir()).ended(0).says("made up", "evenhand check " + dir(), "evenhand publish " + dir());
        Called check =
                Called.with("check", dir()).ended(0).says("1 study, 6 runs, 0 errors, 0 refusals, 0 caveats, 0 notes");
        assertEquals("", check.out());
    }

    @Test
    void itSaysThatTheRunsAreMadeUp() throws IOException {
        Called.with("start", dir()).ended(0);
        assertTrue(Files.readString(place.resolve("mine/publication.yaml")).contains("\ninvented: true\n"));
        String run = Files.readString(place.resolve("mine/studies/first-question/runs/none-1.json"));
        assertTrue(run.contains("A made-up example"), run);
    }

    @Test
    void itsComparisonHasAVerdict() {
        Called.with("start", dir()).ended(0);
        CheckedFolder checked = FolderChecker.check(place.resolve("mine"));
        ComparisonResult rise = checked.studies()
                .get("first-question")
                .evidence()
                .comparison("spreader-rise")
                .orElseThrow();
        // The model behind the logs: plateaus of 30 K and of 24 K.
        assertEquals(Verdict.DIFFERS, rise.verdict().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "none, fan",
                "1.8 GHz, 2.0 GHz, 2.4 GHz",
                "yes, no",
                "a: b, \"c\" # d",
                "\u98a8\u6247, \u7121\u3057",
                "plate & fan, plate / fan",
                "a, b, c, d, e, f"
            })
    void levelsMayBeAnyText(String levels) {
        Called.with("start", dir(), "--levels", levels).ended(0);
        Called check = Called.with("check", dir()).ended(0).says("0 errors, 0 refusals, 0 caveats, 0 notes");
        assertEquals("", check.out());
    }

    @Test
    void namesMayHoldQuotesAndColons() {
        Called.with(
                        "start",
                        dir(),
                        "--title",
                        "Trials: the \"first\" # year",
                        "--publisher",
                        "Ann's {lab}",
                        "--item",
                        "- Quillet: 3*",
                        "--question",
                        "100 % sure? \\ [yes](x)",
                        "--factor",
                        "Fan speed",
                        "--yes")
                .ended(0);
        Called.with("check", dir()).ended(0).says("0 errors, 0 refusals, 0 caveats, 0 notes");
        CheckedFolder checked = FolderChecker.check(place.resolve("mine"));
        assertEquals(
                "Trials: the \"first\" # year",
                checked.folder().publication().orElseThrow().title());
        assertEquals("- Quillet: 3*", checked.folder().items().get("quillet-3").name());
        assertEquals(
                "fan-speed", checked.folder().studies().get("first-question").factor());
    }

    @Test
    void anOccupiedFolderIsRefusedAndLeftAlone() throws IOException {
        Files.createDirectories(place.resolve("mine"));
        Files.writeString(place.resolve("mine/diary.txt"), "private");
        Called.with("start", dir()).ended(2).says("is not empty");
        assertEquals(1, filesIn(place.resolve("mine")).size());
        Called.with("start", place.resolve("mine/diary.txt").toString())
                .ended(2)
                .says("is a file");
    }

    @Test
    void anEmptyFolderIsTaken() throws IOException {
        Files.createDirectories(place.resolve("mine"));
        Called.with("start", dir()).ended(0);
    }

    @Test
    void oneLevelIsTooFewAndTwoAlikeAreRefused() {
        Called.with("start", dir(), "--levels", "none").ended(2).says("two to 6 levels");
        Called.with("start", dir(), "--levels", "none,none").ended(2).says("the same");
        Called.with("start", dir(), "--factor", "item").ended(2).says("--factor cooling");
        assertFalse(Files.exists(place.resolve("mine")));
    }

    @Test
    void twoFoldersOfTheSameNamesAreTheSameBytes() throws IOException {
        Called.with("start", dir()).ended(0);
        Called.with("start", place.resolve("yours").toString()).ended(0);
        assertEquals(filesIn(place.resolve("mine")), filesIn(place.resolve("yours")));
    }

    @Test
    void helpHasAnExampleAndAMisspeltOptionGetsTheNearestOne() {
        Called.with("start", "--help").ended(0).says("Example: evenhand start my-results");
        Called.with("start", dir(), "--titel", "x").ended(2).says("--title");
        Called.with("start").ended(2).says("DIR");
    }

    private static SortedMap<String, String> filesIn(Path root) throws IOException {
        SortedMap<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                texts.put(root.relativize(file).toString(), Files.readString(file));
            }
        }
        return texts;
    }
}
