package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Finding;
import org.evenhand.model.MeasurandId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Logs of twenty shapes become runs that can be read. Their samples are made by one rule,
 * 22.4 °C + 30 K · (1 − e^(−t / 240 s)) each 30 s (each 2 min in those that cross a change of summer time, each 2 s in
 * the one without times), twelve of them: the highest is 44.8 °C.
 */
class TakeInCommandTest {

    private static final Path FOREIGN = Path.of("src/test/resources/foreign");

    @TempDir
    private Path place;

    private Path root;

    @BeforeEach
    void aFolderWithoutRuns() {
        root = Given.copyOf(FOREIGN.resolve("results"), place.resolve("results"))
                .root();
    }

    private static Path log(String name) {
        return FOREIGN.resolve("logs").resolve(name);
    }

    private Called takeIn(String log, String... options) {
        List<String> arguments = new ArrayList<>(List.of("take-in", log(log).toString(), "--to", root.toString()));
        arguments.addAll(List.of("--ambient", "21.4 ± 0.5 °C", "--yes"));
        arguments.addAll(List.of(options));
        return Called.with(arguments.toArray(String[]::new));
    }

    /** A run that nothing withholds; that several of these logs hold the same samples, which is a fault, is meant here. */
    private LevelRun taken(String run) {
        CheckedFolder checked = FolderChecker.check(root);
        List<Finding> faults = checked.findings().stream()
                .filter(Finding::withholds)
                .filter(f -> f.place().file().contains("/" + run + "."))
                .filter(f -> !f.rule().equals("data-duplicated"))
                .toList();
        assertEquals(List.of(), faults);
        return checked.studies().get("plate").evidence().run(run).orElseThrow();
    }

    private static double peak(LevelRun run) {
        return run.value(new MeasurandId("soak", "peak")).orElseThrow().number().orElseThrow();
    }

    private static double lengthS(LevelRun run) {
        return run.measured().log().orElseThrow().durationS();
    }

    @ParameterizedTest
    @CsvSource({
        "none-A1.csv, none-a1, 330",
        "none-A2.csv, none-a2, 330",
        "none-A3.csv, none-a3, 330",
        "plate-A1.tsv, plate-a1, 330",
        "plate-A2.csv, plate-a2, 330",
        "plate-A3.csv, plate-a3, 330"
    })
    void levelAndSpecimenAreReadOutOfTheNameOfTheFile(String log, String run, double lengthS) {
        takeIn(log).ended(0).says("read out of the file's name: specimen A");
        LevelRun taken = taken(run);
        assertEquals(44.8, peak(taken), 0.051);
        assertEquals(lengthS, lengthS(taken), 1e-9);
        assertEquals(log.substring(0, log.indexOf('-')), taken.level());
        assertEquals(
                log.substring(log.indexOf('-') + 1, log.indexOf('.')),
                taken.run().specimen().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({
        "repeated.csv, 330",
        "partial.csv, 330",
        "zone-east.csv, 330",
        "zone-utc.csv, 330",
        "spring.csv, 1320",
        "autumn.csv, 1320",
        "midnight.txt, 330",
        "cells.csv, 330",
        "quoted.csv, 330",
        "windows.csv, 330",
        "epoch.csv, 330"
    })
    void everyShapeIsTakenIn(String log, double lengthS) {
        takeIn(log, "--setting", "cooling=plate", "--specimen", "A2", "--zone", "Europe/Paris")
                .ended(0);
        LevelRun taken = taken(log.substring(0, log.indexOf('.')));
        assertEquals(44.8, peak(taken), 0.051);
        assertEquals(lengthS, lengthS(taken), 1e-9);
        assertEquals(12, taken.measured().log().orElseThrow().samples());
    }

    @Test
    void theOriginalIsKeptToTheLastByte() throws IOException {
        takeIn("plate-A2.csv").ended(0).says("moved the units from a line of their own into the header");
        Path logs = root.resolve("studies/plate/logs");
        assertArrayEquals(
                Files.readAllBytes(log("plate-A2.csv")), Files.readAllBytes(logs.resolve("plate-a2.original.csv")));
        assertTrue(
                Files.readString(logs.resolve("plate-a2.csv")).startsWith("time [s],temperature [°C],power [mW]\n0,"));
        String run = Files.readString(root.resolve("studies/plate/runs/plate-a2.json"));
        assertTrue(run.contains("which is kept as plate-a2.original.csv. The clean log differs: moved the units"), run);
    }

    @Test
    void aLogThatCanBeReadIsOnlyCopied() throws IOException {
        takeIn("none-A3.csv").ended(0);
        Path logs = root.resolve("studies/plate/logs");
        assertArrayEquals(Files.readAllBytes(log("none-A3.csv")), Files.readAllBytes(logs.resolve("none-a3.csv")));
        String run = Files.readString(root.resolve("studies/plate/runs/none-a3.json"));
        assertTrue(run.contains("\"decimal\" : \",\"") && run.contains("\"separator\" : \";\""), run);
    }

    @Test
    void aLogWithinTheFolderIsReferredTo() throws IOException {
        Path inside = root.resolve("studies/plate/logs/none-A1.csv");
        Files.createDirectories(inside.getParent());
        Files.copy(log("none-A1.csv"), inside);
        Called.with("take-in", inside.toString(), "--to", root.toString(), "--ambient", "21 °C", "--yes")
                .ended(0);
        assertTrue(Files.readString(root.resolve("studies/plate/runs/none-a1.json"))
                .contains("../logs/none-A1.csv"));
        assertFalse(Files.exists(root.resolve("studies/plate/logs/none-a1.csv")));
        assertEquals(44.8, peak(taken("none-a1")), 0.051);
    }

    @Test
    void aCompressedLogIsTakenInAsItIs() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
            gzip.write(Files.readAllBytes(log("none-A1.csv")));
        }
        Path packed = place.resolve("none-A1.csv.gz");
        Files.write(packed, bytes.toByteArray());
        Called.with("take-in", packed.toString(), "--to", root.toString(), "--ambient", "21 °C", "--yes")
                .ended(0);
        assertEquals(44.8, peak(taken("none-a1")), 0.051);
    }

    @Test
    void twoZonesTellTheSameMoment() {
        takeIn("zone-east.csv", "--setting", "cooling=none", "--specimen", "A2").ended(0);
        takeIn("zone-utc.csv", "--setting", "cooling=none", "--specimen", "A2").ended(0);
        assertEquals(
                taken("zone-east").run().started().orElseThrow().toInstant(),
                taken("zone-utc").run().started().orElseThrow().toInstant());
    }

    @Test
    void theHourThatComesTwiceIsCountedOnce() {
        takeIn("autumn.csv", "--setting", "cooling=none", "--zone", "Europe/Paris")
                .ended(0)
                .says("2026-10-25T02:50+02:00");
        takeIn("autumn.csv", "--setting", "cooling=none", "--run", "again")
                .ended(2)
                .says("autumn.csv, line 7: the clock goes back from 2026-10-25T02:58 to 2026-10-25T02:00", "--zone");
    }

    @Test
    void aJumpOfAnHourIsPointedOut() {
        takeIn("spring.csv", "--setting", "cooling=none")
                .ended(0)
                .says("line 7: the clock jumps", "if summer time began");
    }

    @Test
    void flagsAreBitsOfAStatusWord() {
        takeIn("flags.csv", "--setting", "cooling=none").ended(0).says("not found: clock, power, energy, throttled");
        takeIn(
                        "flags.csv",
                        "--setting",
                        "cooling=none",
                        "--run",
                        "mapped",
                        "--specimen",
                        "A2",
                        "--map",
                        "throttled=status:2")
                .ended(0)
                .says("status, bit 2");
        LevelRun taken = taken("mapped");
        var flag = taken.measured().log().orElseThrow().column("throttled").orElseThrow();
        // Bit 2 is set in the samples 9 to 12; in those before, or in bits 16 and 18, it is not.
        assertEquals(0, flag.lowest());
        assertEquals(1, flag.highest());
        assertEquals(4, flag.longestAtHighest());
    }

    @Test
    void aCounterThatStartsAgainIsPointedOut() {
        takeIn("plate-A3.csv").ended(0).says("µJ, from its name", "from 4292967296 to 26036000 in line 4", "wraps-at");
    }

    @Test
    void guessedUnitsAreMarkedAndCanBeSet() {
        takeIn("plate-A1.tsv").ended(0).says("m°C, guessed from its magnitude: check it", "kHz, guessed");
        takeIn("plate-A1.tsv", "--run", "set", "--map", "temperature=t_soc [m°C]")
                .ended(0)
                .says("m°C, as you said");
        assertEquals(44.815, peak(taken("set")), 1e-9);
    }

    @Test
    void aLogWithoutTimesNeedsTheirStep() {
        takeIn("columns.txt", "--setting", "cooling=none").ended(2).says("no column of times", "--step");
        takeIn("columns.txt", "--setting", "cooling=none", "--step", "2 s", "--specimen", "A2")
                .ended(0);
        assertEquals(22, lengthS(taken("columns")), 1e-9);
    }

    @Test
    void aShareOfUserTimeIsNotTakenForMicroseconds() throws IOException {
        Path log = place.resolve("load.txt");
        Files.writeString(log, " r us sy temp\n 1 55 5 40.1\n 2 99 1 41.2\n 1 98 2 42.0\n");
        Called.with("take-in", log.toString()).ended(2).says("no column of times");
    }

    /** As procps' vmstat(8) writes it with -t and -n: one title over a date and a time, and lines of titles in between. */
    @Test
    void aDateAndATimeUnderOneTitleAreOneColumn() throws IOException {
        String titles = "procs -----memory---- ----timestamp------\n r   swpd   free                  UTC\n";
        StringBuilder log = new StringBuilder(titles);
        for (int second = 10; second < 50; second++) {
            log.append(second == 30 ? titles : "");
            log.append(" 1  %d  204628  2026-03-02 09:14:%d%n".formatted(second, second));
        }
        Path file = Files.writeString(place.resolve("board.txt"), log);
        Called.with("take-in", file.toString())
                .ended(0)
                .says("board.txt: 40 samples in 39 s, 4 columns")
                .says("UTC")
                .says("left out the header where it is repeated, in lines 23, 24");
    }

    @Test
    void startsOfSeveralLogsAreNotTheSame() {
        Called.with("take-in", "a.csv", "b.csv", "--to", root.toString(), "--started", "2026-03-02T09:14:00Z")
                .ended(2)
                .says("one by one");
    }

    @Test
    void aLogWithoutHeaderNeedsAMapping() {
        takeIn("bare.csv", "--setting", "cooling=none")
                .ended(1)
                .says("stands in the way", "[field-missing] the log has no column “temperature”", "--map");
        assertFalse(Files.exists(root.resolve("studies/plate/runs")));
        takeIn("bare.csv", "--setting", "cooling=none", "--specimen", "A2", "--map", "temperature=column-2")
                .ended(0);
        assertEquals(44.8, peak(taken("bare")), 0.051);
    }

    @Test
    void severalLogsAreTakenInAtOnce() {
        Called.with(
                        "take-in",
                        log("none-A1.csv").toString(),
                        log("none-A2.csv").toString(),
                        log("plate-A1.tsv").toString(),
                        "--to",
                        root.toString(),
                        "--ambient",
                        "21.4 °C",
                        "--instrument",
                        "temperature=die-sensor",
                        "--yes")
                .ended(0);
        for (String run : List.of("none-a1", "none-a2", "plate-a1")) {
            assertEquals(44.8, peak(taken(run)), 0.051);
        }
    }

    @Test
    void oneRunServesAsPatternForAnother() {
        takeIn("none-A1.csv", "--setting", "firmware=1.0", "--instrument", "temperature=die-sensor")
                .ended(0);
        takeIn("plate-A2.csv", "--like", "none-a1").ended(0);
        LevelRun taken = taken("plate-a2");
        assertEquals("1.0", taken.run().settings().get("firmware"));
        assertEquals("plate", taken.level());
        assertEquals("die-sensor", taken.run().instruments().get("temperature"));
    }

    @Test
    void whatALogCannotTellIsSaid() {
        Called.with("take-in", log("epoch.csv").toString(), "--to", root.toString(), "--yes")
                .ended(0)
                .says("the log cannot tell:", "--setting \"cooling=none\"", "--specimen", "--ambient", "--instrument");
    }

    @Test
    void withoutAFolderItOnlyLooks() {
        Called.with("take-in", log("plate-A2.csv").toString())
                .ended(0)
                .says("12 samples in 330 s, 3 columns", "“;”", "Nothing is written");
    }

    @Test
    void withoutConsentNothingIsWritten() {
        Called.with("take-in", log("none-A1.csv").toString(), "--to", root.toString())
                .ended(2)
                .says("nothing is written; --yes writes this run as shown");
        assertFalse(Files.exists(root.resolve("studies/plate/runs")));
    }

    @Test
    void nothingIsWrittenOver() {
        takeIn("none-A1.csv").ended(0);
        takeIn("none-A1.csv").ended(2).says("is there already", "--run");
    }

    @Test
    void whatCannotBeUsedIsSaidInOneLine() throws IOException {
        takeIn("nowhere.csv").ended(2).says("there is no file");
        takeIn("none-A1.csv", "--study", "plat").ended(2).says("did you mean “plate”?");
        takeIn("none-A1.csv", "--item", "quilet-3").ended(2).says("did you mean “quillet-3”?");
        takeIn("none-A1.csv", "--specimen", "A9").ended(2).says("did you mean");
        takeIn("none-A1.csv", "--setting", "cooling=plte").ended(2).says("did you mean “plate”?");
        takeIn("none-A1.csv", "--map", "temprature=x").ended(2).says("did you mean “temperature”?");
        takeIn("none-A1.csv", "--map", "temperature=temperatur").ended(2).says("did you mean “temperature”?");
        takeIn("none-A1.csv", "--map", "temperature=temperature [°C] [W]").ended(2);
        takeIn("none-A1.csv", "--ambient", "21").ended(2).says("--ambient");
        takeIn("none-A1.csv", "--zone", "Paris").ended(2).says("Europe/Paris");
        takeIn("none-A1.csv", "--started", "yesterday").ended(2).says("offset from UTC");
        takeIn("none-A1.csv", "--like", "x").ended(2).says("no run “x”");
        takeIn("none-A1.csv", "--stp", "1 s").ended(2).says("--step");
        Path picture = place.resolve("picture.csv");
        Files.write(picture, new byte[] {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A, 0, 0});
        Called.with("take-in", picture.toString()).ended(2).says("is no text");
        Path empty = place.resolve("empty.csv");
        Files.writeString(empty, "");
        Called.with("take-in", empty.toString()).ended(2).says("is no table");
        Called.with("take-in", "--help").ended(0).says("Example: evenhand take-in");
    }
}
