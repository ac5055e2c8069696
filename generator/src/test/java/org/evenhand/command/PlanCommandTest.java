package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan's numbers are those of handbooks and other programs; its sheet and its prepared runs are fit to be used. */
class PlanCommandTest {

    @TempDir
    private Path place;

    private Given given;

    @BeforeEach
    void aSoundFolder() {
        given = Given.soundFolderIn(place.resolve("results"));
    }

    private String file(String name) {
        return place.resolve(name).toString();
    }

    private String text(String name) throws IOException {
        return Files.readString(place.resolve(name));
    }

    /** R 4.2.2: power.t.test(delta = 2, sd = 1, power = 0.8) gives 5.09, (0.5, 1) 63.77; paired (0.5, 0.8, power = 0.9) 28.89. */
    @Test
    void repeatsForADifferenceAreThoseOfAnotherProgram() {
        Called.with("plan", "--difference", "2 K", "--spread", "1 K").ended(0).says("6 at each level to find");
        Called.with("plan", "--difference", "0.5 W", "--spread", "1000 mW")
                .ended(0)
                .says("64 at each level");
        Called.with("plan", "--difference", "0.5 W", "--spread", "0.8 W", "--power", "90 %", "--pairs")
                .ended(0)
                .says("29 pairs");
    }

    /** From memory: 59 successes in a row for 95 % at 95 %; ln(0.025)/ln(0.95) = 71.9; −ln(0.05)/0.01 = 299.6. */
    @Test
    void sharesAndRatesAreThoseOfHandbooks() {
        Called.with("plan", "--at-least", "95 %")
                .ended(0)
                .says("59 trials, all of which succeed", "72 for the two-sided");
        Called.with("plan", "--at-least", "95 %", "--failures", "1").ended(0).says("93 trials with 1 failure");
        Called.with("plan", "--rate-below", "0.01 /h", "--run-length", "12 h")
                .ended(0)
                .says("300 h in all, with no failure", "25 runs of 12 h");
        // 0.05^(1/5) = 0.549; 0.025^(1/5) = 0.478; 3.00/60 h.
        Called.with("plan", "--runs", "5", "--run-length", "12 h")
                .ended(0)
                .says("at least 54.9 % do", "begins at 47.8 %", "below 0.050 1/h");
    }

    /** t(0.975; 4)/√5 = 2.776/2.236 = 1.24 standard deviations, from the table of t. */
    @Test
    void theOtherWayRoundItSaysWhatRepeatsCanShow() {
        Called.with("plan", "--runs", "5", "--spread", "1 K")
                .ended(0)
                .says("± 1.2 K (95 % interval)", "a difference of 2.0 K is found", "shown to be so within");
    }

    @Test
    void percentAndUnitsMeetAtATypicalValue() {
        Called.with("plan", "--difference", "10 %", "--spread", "1 K").ended(2).says("--mean");
        // 10 % of 20 K are the 2 K above.
        Called.with("plan", "--difference", "10 %", "--spread", "1 K", "--mean", "20 K")
                .ended(0)
                .says("Spread: 5.0 %", "6 at each level");
        // A difference of 3.6 °F is one of 2 K.
        Called.with("plan", "--difference", "3.6 °F", "--spread", "1 K")
                .ended(0)
                .says("6 at each level");
    }

    @Test
    void theSpreadIsTakenFromEarlierRuns() {
        Called.with("plan", "--from", given.root().toString(), "--measurand", "mean-power", "--difference", "1 %")
                .ended(0)
                .says("of 6 values at 2 levels in “plate”", "at each level", "4 degrees of freedom only");
    }

    @Test
    void theSheetHasEachLevelOnceInEachBlockAndSpecimensTakeTurns() throws IOException {
        sheet("sheet.md", "--runs", "6");
        List<String[]> rows = text("sheet.md")
                .lines()
                .filter(l -> l.matches("\\| \\d+ .*"))
                .map(l -> l.split(" *\\| *"))
                .toList();
        assertEquals(12, rows.size());
        for (int block = 0; block < 6; block++) {
            String[] first = rows.get(2 * block);
            String[] second = rows.get(2 * block + 1);
            assertNotEquals(first[5], second[5]);
            assertEquals(first[4], second[4]);
            assertEquals("A" + (block % 3 + 1), first[4]);
        }
        assertTrue(rows.stream().map(r -> r[3]).distinct().count() == 12, "run ids are unique");
        assertEquals(
                "plate-4",
                rows.stream().filter(r -> r[5].equals("plate")).findFirst().orElseThrow()[3]);
    }

    @Test
    void theSameSeedGivesTheSameOrderAndAnotherAnother() throws IOException {
        sheet("a.md", "--runs", "9");
        sheet("b.md", "--runs", "9");
        sheet("c.md", "--runs", "9", "--seed", "2");
        assertEquals(text("a.md"), text("b.md"));
        assertNotEquals(text("a.md").replace("seed 1", ""), text("c.md").replace("seed 2", ""));
        assertTrue(text("a.md").contains("from the seed 1"));
    }

    @Test
    void interleavedBlocksRunForthAndBack() throws IOException {
        Called.with("plan", "--runs", "2", "--levels", "a,b,c", "--order", "interleaved", "--sheet", file("s.md"))
                .ended(0);
        List<String> levels = text("s.md")
                .lines()
                .filter(l -> l.matches("\\| \\d+ .*"))
                .map(l -> l.split(" *\\| *")[5])
                .toList();
        assertEquals(List.of("a", "b", "c", "c", "b", "a"), levels);
    }

    @Test
    void theSheetTellsRestCautionsAndWhatToNote() throws IOException {
        sheet("sheet.md", "--runs", "3");
        String text = text("sheet.md");
        assertTrue(text.contains("Hot surface: let it cool"), text);
        assertTrue(text.contains("five time constants of"), text);
        assertTrue(text.contains("temperature of the room at the start"), text);
        assertTrue(text.contains("firmware = 2026-02-11"), text);
        assertTrue(text.contains("how long the run lasted (the method says 45 min)"), text);
    }

    @Test
    void thePageHasTheRunsOfTheSheetAndLoadsNothing() throws IOException {
        sheet("sheet.md", "--runs", "3");
        sheet("sheet.html", "--runs", "3");
        Document page = Jsoup.parse(text("sheet.html"));
        assertEquals(6, page.select("tbody tr").size());
        assertEquals(0, page.select("script, link, img").size());
        page.select("tbody tr")
                .forEach(row -> assertTrue(textOf("sheet.md")
                        .contains("| " + row.child(2).text() + " | "
                                + row.child(3).text() + " | " + row.child(4).text() + " |")));
    }

    private String textOf(String name) {
        try {
            return text(name);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void hostileLevelsStayTextOnTheSheet() throws IOException {
        Called.with(
                        "plan",
                        "--runs",
                        "2",
                        "--levels",
                        "<b>x</b>,y|z",
                        "--sheet",
                        file("s.html"),
                        "--sheet",
                        file("s.md"))
                .ended(0);
        assertEquals(0, Jsoup.parse(text("s.html")).select("b").size());
        assertTrue(text("s.md").contains("y\\|z") && text("s.md").contains("\\<b\\>"), text("s.md"));
    }

    @Test
    void preparedRunsAreNotTakenForRealUntilTheyAreFilledIn() throws IOException {
        String root = given.root().toString();
        Called.with("plan", "--from", root, "--runs", "3", "--prepare").ended(0).says("move it from planned/ to runs/");
        assertEquals(
                "",
                Called.with("check", root)
                        .ended(0)
                        .says("6 runs, 0 errors, 0 refusals, 0 caveats, 0 notes")
                        .out());
        Path planned = given.root().resolve("studies/plate/planned/plate-4.json");
        assertEquals(6, files(planned.getParent()));
        Path moved = given.root().resolve("studies/plate/runs/plate-4.json");
        Files.move(planned, moved);
        given.writing("studies/plate/logs/plate-4.csv", given.text("studies/plate/logs/plate-3.csv"));
        Called.with("check", root).ended(1).says("plate-4.json", "[field-missing] no value stands here");
        String filled = Files.readString(moved)
                .replace("\"started\" : \"\"", "\"started\" : \"2026-03-05T09:14:00Z\"")
                .replace("\"length\" : \"\"", "\"length\" : \"45 min\"")
                .replace("\"ambient\" : \"\"", "\"ambient\" : \"21.8 ± 0.5 °C\"")
                .replace("\"rested\" : \"\"", "\"rested\" : \"12 h\"")
                .replace("\"outcome\" : \"\"", "\"outcome\" : \"completed\"");
        Files.writeString(moved, filled);
        assertFalse(Called.with("check", root).out().contains("runs/plate-4.json: error"));
        assertFalse(Called.with("check", root).out().contains("[field-missing]"));
    }

    private static long files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.count();
        }
    }

    private void sheet(String name, String... options) {
        Stream<String> call = Stream.concat(
                Stream.of("plan", "--from", given.root().toString(), "--sheet", file(name)), Stream.of(options));
        Called.with(call.toArray(String[]::new)).ended(0);
    }

    @Test
    void nothingIsWrittenOver() throws IOException {
        Files.writeString(place.resolve("s.md"), "mine");
        Called.with("plan", "--runs", "2", "--levels", "a,b", "--sheet", file("s.md"))
                .ended(2)
                .says("is there already");
        assertEquals("mine", text("s.md"));
    }

    @Test
    void whatCannotBeUsedIsSaidInOneLine() {
        String root = given.root().toString();
        Called.with("plan").ended(2).says("--difference", "--runs");
        Called.with("plan", "--difference", "1 K").ended(2).says("--spread", "--from");
        Called.with("plan", "--difference", "1", "--spread", "1 K").ended(2).says("--difference");
        Called.with("plan", "--difference", "1 W", "--spread", "1 K").ended(2).says("does not convert");
        Called.with("plan", "--difference", "0 K", "--spread", "1 K").ended(2).says("larger than nothing");
        Called.with("plan", "--difference", "-1 K", "--spread", "1 K").ended(2).says("larger than nothing");
        Called.with("plan", "--runs", "1", "--spread", "1 K").ended(2).says("from 2 to 10000");
        Called.with("plan", "--at-least", "100 %").ended(2).says("between 0 % and 100 %");
        Called.with("plan", "--at-least", "5 W").ended(2).says("is a share");
        Called.with("plan", "--share-within", "60 %").ended(2).says("below 50 %");
        Called.with("plan", "--rate-below", "1 h").ended(2).says("failures per time");
        Called.with("plan", "--from", root, "--study", "plat", "--runs", "3")
                .ended(2)
                .says("did you mean “plate”?");
        Called.with("plan", "--from", root, "--measurand", "mean-powr", "--runs", "3")
                .ended(2)
                .says("did you mean “mean-power”?");
        Called.with("plan", "--runs", "3", "--sheet", file("s.md")).ended(2).says("--levels");
        Called.with("plan", "--runs", "3", "--levels", "a,b", "--sheet", file("s.pdf"))
                .ended(2)
                .says(".md or .html");
        Called.with("plan", "--runs", "3", "--levels", "a,b", "--prepare")
                .ended(2)
                .says("--from");
        Called.with("plan", "--order", "sorted", "--runs", "3").ended(2).says("random or interleaved");
        Called.with("plan", "--diference", "1 K").ended(2).says("--difference");
        Called.with("plan", "--difference", "1e-9 K", "--spread", "1 K", "--levels", "a,b", "--sheet", file("s.md"))
                .ended(2)
                .says("more than anybody can do");
        Called.with("plan", "--help").ended(0).says("Example: evenhand plan", "\"5 %\"");
    }
}
