package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.evenhand.read.Sha256;
import org.evenhand.site.Manifest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A results folder becomes a site, all or nothing, the same wherever it is made. */
class PublishCommandTest {

    @TempDir
    private Path folder;

    private Given given;
    private Path site;

    @BeforeEach
    void aSoundFolder() {
        given = Given.soundFolderIn(folder.resolve("results"));
        site = folder.resolve("site");
    }

    private Called publish() {
        return Called.with("publish", given.root().toString(), "--to", site.toString());
    }

    @Test
    void theFirstThingSaidIsWhereToLook() {
        Called called = publish().ended(0).says("1 answer published with 0 caveats, 0 studies withheld");
        assertEquals(site.resolve("index.html") + "\n", called.out());
        assertTrue(Files.exists(site.resolve("index.html")));
    }

    @Test
    void theManifestNamesEveryFileButItself() throws IOException {
        publish().ended(0);
        SortedMap<String, String> found = digests(site);
        found.remove(Manifest.FILE);
        assertEquals(found, Manifest.of(site).digests());
    }

    @Test
    void aGoodStudyIsPublishedBesideABrokenOne() throws IOException {
        given.withASecondStudy()
                .replacing("studies/copy/runs/none-1.json", "\"length\": \"45 min\"", "\"length\": \"45\"");
        publish().ended(1).says("1 answer published", "1 study withheld", "[unit-missing]");
        assertTrue(Files.exists(site.resolve("answers/plate/evidence.json")));
        assertFalse(Files.exists(site.resolve("answers/copy/evidence.json")));
        String why = Files.readString(site.resolve("answers/copy/index.html"));
        assertTrue(why.contains("unit-missing"), why);
    }

    @Test
    void theSameFolderGivesTheSameBytesInAnotherLocaleZoneAndPlace() throws IOException {
        publish().ended(0);
        SortedMap<String, String> first = digests(site);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kolkata"));
            given = Given.soundFolderIn(folder.resolve("else where/results ü"));
            site = folder.resolve("else where/site");
            publish().ended(0);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
        assertEquals(first, digests(site));
    }

    @Test
    void publishingAgainChangesNothing() throws IOException {
        publish().ended(0);
        SortedMap<String, String> first = digests(site);
        publish().ended(0);
        assertEquals(first, digests(site));
    }

    @Test
    void aFileOfSomebodyElseStays() throws IOException {
        publish().ended(0);
        Files.writeString(site.resolve("CNAME"), "results.example.org\n");
        publish().ended(0);
        assertEquals("results.example.org\n", Files.readString(site.resolve("CNAME")));
    }

    @Test
    void aFolderOfSomebodyElseIsRefused() throws IOException {
        Files.createDirectories(site);
        Files.writeString(site.resolve("letter.txt"), "dear");
        publish().ended(2).says("none of them says that it is a site of ours");
        assertEquals("dear", Files.readString(site.resolve("letter.txt")));
    }

    @Test
    void theResultsFolderIsNoPlaceForASite() {
        site = given.root();
        publish().ended(2).says("cannot stand within each other");
        site = given.root().resolve("site");
        publish().ended(2).says("cannot stand within each other");
        site = given.root().getParent();
        publish().ended(2).says("cannot stand within each other");
    }

    @Test
    void withoutAPublicationTheFormerSiteStays() throws IOException {
        publish().ended(0);
        SortedMap<String, String> first = digests(site);
        given.replacing("publication.yaml", "licence: CC-BY-4.0\n", "");
        publish().ended(2).says("publication.yaml:1:1: error: [field-missing]");
        assertEquals(first, digests(site));
    }

    @Test
    void aFinalFigureDoesNotMoveInSilence() throws IOException {
        publish().ended(0);
        warmer("studies/plate/logs/none-1.csv");
        publish().ended(1).says("[change-unrecorded]", "level/none/settled-rise: 47.0 K, now");
        publish().ended(1).says("[change-unrecorded]");
        Called.with("check", given.root().toString(), "--against", site.toString())
                .ended(1)
                .says("plate: level/none/settled-rise: 47.0 K, now", "plate: plate-rise: ");
        given.replacing(
                "studies/plate/study.md",
                "status: final",
                "status: final\nrevisions:\n  - { on: 2026-04-02, what: A log was read anew., why: A probe had slipped. }");
        publish().ended(0);
        assertFalse(Files.exists(site.resolve("answers/plate/former")));
    }

    @Test
    void aFormerAnswerThatCannotBeReadIsNoPass() throws IOException {
        publish().ended(0);
        Files.writeString(site.resolve("answers/plate/evidence.json"), "{ cut");
        Called.with("check", given.root().toString(), "--against", site.toString())
                .ended(0)
                .says("not checkable: [change-unrecorded]", "1 not checkable");
    }

    @Test
    void aPublishedComparisonDoesNotVanishInSilence() {
        given.replacing(
                "studies/plate/study.md",
                "  plate-rise:",
                "  plate-power: { as: ratio, measurand: mean-power, level: plate, against: none }\n  plate-rise:");
        publish().ended(0);
        given.replacing(
                "studies/plate/study.md",
                "  plate-power: { as: ratio, measurand: mean-power, level: plate, against: none }\n",
                "");
        publish().ended(1).says("[change-unrecorded]", "plate-power: 0.9947", "now gone");
    }

    @Test
    void nothingIsHeldAgainstAFolderThatIsNoSite() {
        Called.with(
                        "check",
                        given.root().toString(),
                        "--against",
                        folder.resolve("nowhere").toString())
                .ended(2)
                .says("it is no site of ours");
    }

    /** Raises each temperature of a log by ten degrees. */
    private void warmer(String log) {
        StringBuilder text = new StringBuilder();
        for (String line : given.text(log).lines().toList()) {
            String[] fields = line.split(",");
            if (text.length() > 0) {
                boolean start = Double.parseDouble(fields[0]) < 300;
                fields[1] = String.format(Locale.ROOT, "%.1f", Double.parseDouble(fields[1]) + (start ? 0 : 10));
            }
            text.append(String.join(",", fields)).append('\n');
        }
        given.writing(log, text.toString());
    }

    @Test
    void whatWasCutShortIsMended() throws IOException {
        publish().ended(0);
        SortedMap<String, String> first = digests(site);
        Path workshop = Files.createDirectories(site.resolveSibling(".site.evenhand"));
        Files.writeString(workshop.resolve("lock"), "");
        Files.move(site, workshop.resolve("old"));
        Files.createDirectories(workshop.resolve("new/answers"));
        publish().ended(0);
        assertEquals(first, digests(site));
        assertFalse(Files.exists(workshop));
    }

    private static SortedMap<String, String> digests(Path site) throws IOException {
        SortedMap<String, String> digests = new TreeMap<>();
        try (Stream<Path> files = Files.walk(site)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                digests.put(site.relativize(file).toString().replace('\\', '/'), Sha256.of(Files.readAllBytes(file)));
            }
        }
        return digests;
    }
}
