package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gov.loc.repository.bagit.domain.Bag;
import gov.loc.repository.bagit.domain.Manifest;
import gov.loc.repository.bagit.exceptions.CorruptChecksumException;
import gov.loc.repository.bagit.reader.BagReader;
import gov.loc.repository.bagit.verify.BagVerifier;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What a package must be: RFC 8493, judged by the Library of Congress's own reader, bagit-java 5.2.0. */
class PackCommandTest {

    @TempDir
    private Path root;

    private Given given;
    private Path site;
    private Path zip;

    @BeforeEach
    void publish() {
        given = Given.soundFolderIn(root.resolve("results"));
        site = root.resolve("site");
        zip = root.resolve("trials.zip");
        publishAgain();
    }

    private void publishAgain() {
        Called.with("publish", given.root().toString(), "--to", site.toString()).ended(0);
    }

    private Called pack(String... more) {
        return pack(zip, more);
    }

    private Called pack(Path to, String... more) {
        String[] call = {"pack", given.root().toString(), "--site", site.toString(), "--to", to.toString()};
        String[] all = java.util.Arrays.copyOf(call, call.length + more.length);
        System.arraycopy(more, 0, all, call.length, more.length);
        return Called.with(all);
    }

    private Path unpacked() throws IOException {
        Path target = root.resolve("unpacked");
        try (ZipFile file = new ZipFile(zip.toFile())) {
            for (ZipEntry entry : file.stream().toList()) {
                Path to = target.resolve(entry.getName()).normalize();
                assertTrue(to.startsWith(target), entry.getName());
                Files.createDirectories(to.getParent());
                Files.write(to, file.getInputStream(entry).readAllBytes());
            }
        }
        return target.resolve("trials");
    }

    private static void assertValid(Path bag) throws Exception {
        Bag read = new BagReader().read(bag);
        try (BagVerifier verifier = new BagVerifier()) {
            verifier.isValid(read, false);
        }
        BagVerifier.quicklyVerify(read); // the count and the bytes of Payload-Oxum
        Set<String> algorithms = read.getPayLoadManifests().stream()
                .map(Manifest::getAlgorithm)
                .map(Object::toString)
                .collect(Collectors.toSet());
        assertEquals(Set.of("SHA256", "SHA512"), algorithms);
        assertEquals(2, read.getTagManifests().size());
        assertEquals("1.0", read.getVersion().toString());
    }

    @Test
    void theReferenceReaderTakesThePackageAsValid() throws Exception {
        pack("--dated", "2026-05-04").ended(0).says("files packed; SHA-256");
        Path bag = unpacked();
        assertValid(bag);
        Bag read = new BagReader().read(bag);
        assertEquals(List.of("Fernhollow Community Radio"), read.getMetadata().get("Source-Organization"));
        assertEquals(List.of("2026-05-04"), read.getMetadata().get("Bagging-Date"));
        assertEquals(
                List.of("https://results.example.org/trials/"),
                read.getMetadata().get("External-Identifier"));
    }

    @Test
    void theReferenceReaderWouldFindAnAlteredFile() throws Exception {
        pack().ended(0);
        Path bag = unpacked();
        Path log = bag.resolve("data/results/studies/plate/logs/none-1.csv");
        Files.writeString(log, Files.readString(log).replace('1', '2'));
        assertThrows(CorruptChecksumException.class, () -> assertValid(bag));
    }

    @Test
    void unpackedItAuditsCleanAndHoldsWhatWasPacked() throws IOException {
        pack().ended(0);
        Path data = unpacked().resolve("data");
        Called.with(
                        "audit",
                        data.resolve("site").toString(),
                        "--from",
                        data.resolve("results").toString())
                .ended(0)
                .says("0 things differ", "the folder gives the same site");
        assertEquals(contents(given.root()), contents(data.resolve("results")));
        assertEquals(contents(site), contents(data.resolve("site")));
    }

    private static Set<String> contents(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(f -> folder.relativize(f) + " " + f.toFile().length())
                    .collect(Collectors.toSet());
        }
    }

    @Test
    void theSameFoldersGiveTheSameBytesWheneverAndWherever() throws IOException {
        pack().ended(0);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        Path again = Files.createDirectories(root.resolve("else where")).resolve("trials.zip");
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            Given copy = Given.copyOf(given.root(), root.resolve("a copy"));
            Called.with("pack", copy.root().toString(), "--site", site.toString(), "--to", again.toString())
                    .ended(0);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
        assertArrayEquals(Files.readAllBytes(zip), Files.readAllBytes(again));
    }

    /** RFC 8493 asks for one folder in what a package is serialised to. */
    @Test
    void allLiesInOneFolderUncompressedAndOfOneDate() throws IOException {
        pack().ended(0);
        try (ZipFile file = new ZipFile(zip.toFile())) {
            for (ZipEntry entry : file.stream().toList()) {
                assertTrue(entry.getName().startsWith("trials/"), entry.getName());
                assertEquals(ZipEntry.STORED, entry.getMethod(), entry.getName());
                assertEquals(LocalDateTime.of(2000, 1, 1, 0, 0), entry.getTimeLocal(), entry.getName());
            }
        }
    }

    @Test
    void namesInOtherScriptsArePacked() throws Exception {
        given.writing("notes/einmal größer – 記録.txt", "a note");
        pack().ended(0);
        Path bag = unpacked();
        assertValid(bag);
        assertEquals("a note", Files.readString(bag.resolve("data/results/notes/einmal größer – 記録.txt")));
    }

    @Test
    void whatToolsHideIsLeftOutAndSchemasAreNot() throws IOException {
        given.writing(".git/config", "secret").writing("studies/.cache/x", "y").writing(".schema/run.json", "{}");
        pack().ended(0);
        Path results = unpacked().resolve("data/results");
        assertFalse(Files.exists(results.resolve(".git")));
        assertFalse(Files.exists(results.resolve("studies/.cache")));
        assertTrue(Files.exists(results.resolve(".schema/run.json")));
    }

    @Test
    void aFileOfSomebodyElsesInTheSiteIsLeftOutAndNamed() throws Exception {
        Files.writeString(site.resolve("CNAME"), "results.example.org");
        pack().ended(0).says("CNAME is left out");
        assertFalse(Files.exists(unpacked().resolve("data/site/CNAME")));
        assertValid(unpacked());
    }

    @Test
    void aFolderThatDoesNotGiveTheSiteIsNotPackedUnlessAskedFor() throws Exception {
        given.replacing("studies/plate/study.md", "keep it cooler", "keep it quiet");
        pack().ended(1).says("answers/plate/index.html: comes out of the folder otherwise", "--as-they-are");
        assertFalse(Files.exists(zip));
        pack("--as-they-are").ended(0);
        assertValid(unpacked());
        assertTrue(
                Files.readString(unpacked().resolve("bag-info.txt")).contains("not proved that they belong together"));
    }

    @Test
    void anAlteredOrMissingFileOfTheSiteIsRefused() throws IOException {
        Files.writeString(site.resolve("feed.xml"), "other");
        pack("--as-they-are").ended(2).says("feed.xml of the site is not what its manifest says");
        Files.delete(site.resolve("feed.xml"));
        pack("--as-they-are").ended(2).says("feed.xml of the site is missing");
        assertFalse(Files.exists(zip));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void linksAreRefusedWhereverTheyStand() throws IOException {
        Path secret = Files.writeString(root.resolve("secret"), "not mine to give");
        Path link = Files.createSymbolicLink(given.root().resolve("studies/plate/logs/extra.csv"), secret);
        pack().ended(2).says("studies/plate/logs/extra.csv is a link");
        Files.delete(link);
        Path folder = Files.createSymbolicLink(given.root().resolve("more"), root);
        pack().ended(2).says("more is a link");
        Files.delete(folder);
        byte[] feed = Files.readAllBytes(site.resolve("feed.xml"));
        Files.write(root.resolve("feed"), feed);
        Files.delete(site.resolve("feed.xml"));
        Files.createSymbolicLink(site.resolve("feed.xml"), root.resolve("feed"));
        pack().ended(2).says("feed.xml of the site is missing, or a link");
        assertFalse(Files.exists(zip));
    }

    @Test
    @DisabledOnOs({OS.WINDOWS, OS.MAC})
    void namesThatAreOneOnOtherSystemsAreRefused() {
        given.writing("notes/Fan.txt", "a").writing("notes/fan.txt", "b");
        pack().ended(2).says("notes/Fan.txt", "notes/fan.txt", "are one name on some systems");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aNameThatNotEveryReaderTakesIsRefused() {
        given.writing("notes/100 %.txt", "a");
        pack().ended(2).says("notes/100 %.txt holds a character");
        given.writing("a\nb.txt", "a");
        pack().ended(2).says("a?b.txt holds a character");
    }

    @Test
    void tooMuchIsRefusedBeforeAnythingIsWritten() {
        pack("--most", "0").ended(2).says("more than 0 GB", "--most");
        assertFalse(Files.exists(zip));
    }

    @Test
    void nothingIsWrittenOverAndNothingIsPackedIntoItself() throws IOException {
        pack(given.root().resolve("a.zip")).ended(2).says("cannot stand within");
        pack(site.resolve("a.zip")).ended(2).says("cannot stand within");
        pack(root.resolve("a.tar")).ended(2).says("ends in .zip");
        pack(root.resolve("nowhere/a.zip")).ended(2).says("is no folder");
        Files.writeString(zip, "precious");
        pack().ended(2).says("is there already");
        assertEquals("precious", Files.readString(zip));
        try (var left = Files.list(root)) {
            assertEquals(3, left.count(), "nothing else was left");
        }
    }

    @Test
    void aFolderThatIsNoneOfOursIsRefused() throws IOException {
        Path empty = Files.createDirectories(root.resolve("empty"));
        Called.with("pack", empty.toString(), "--site", site.toString(), "--to", zip.toString())
                .ended(2)
                .says("is no results folder");
        Called.with("pack", given.root().toString(), "--site", empty.toString(), "--to", zip.toString())
                .ended(2)
                .says("is no site of ours");
    }
}
