package org.evenhand.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.evenhand.model.ResultsFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files that are broken, or meant to do harm, are told of at the very place, and nothing else suffers.
 *
 * <p>Places were counted by hand in the texts below.
 */
class HostileInputTest {

    private static final Path BASE = Path.of("src/test/resources/rules/bases/record");
    private static final String RUN = "studies/preset/runs/slow-1.json";
    private static final String ITEM = "items/quillet-3.yaml";

    @TempDir
    private Path folder;

    @BeforeEach
    void aSoundFolder() throws IOException {
        try (Stream<Path> files = Files.walk(BASE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target = folder.resolve(BASE.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }

    @Test
    void theFolderItselfIsSound() {
        assertEquals(List.of(), findings());
    }

    /** The parser throws another kind of exception here than for all else that is wrong. */
    @Test
    void aFileMayEndWithinAnEscape() throws IOException {
        Files.writeString(folder.resolve(ITEM), "item: quillet-3\nname: \"Quillet \\x");

        assertTrue(findings().contains(ITEM + ":2 file-unreadable"), findings().toString());
    }

    @Test
    void aPictureNamedJsonIsNoText() throws IOException {
        Files.write(folder.resolve(RUN), new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0});

        assertEquals(List.of(RUN + ":1:1 file-unreadable"), findings());
    }

    @Test
    void truncatedJsonIsToldOfWhereItEnds() {
        write(RUN, "{\n  \"run\": \"slow-1\",\n  \"method\": \"enc");

        assertEquals(List.of(RUN + ":3:17 file-unreadable"), findings());
    }

    @Test
    void aTabThatIndentsYaml() {
        write(ITEM, "item: quillet-3\nlimits:\n\ttemperature: 85 °C\n");

        assertEquals(ITEM + ":3:1 file-unreadable", first());
    }

    @Test
    void anAliasBombGoesNoFurtherThanItsFirstAnchor() {
        StringBuilder bomb = new StringBuilder("item: quillet-3\na0: &a0 [x, x]\n");
        for (int i = 1; i < 40; i++) {
            bomb.append("a").append(i).append(": &a").append(i);
            bomb.append(" [*a").append(i - 1).append(", *a").append(i - 1).append("]\n");
        }
        write(ITEM, bomb.toString());

        assertEquals(ITEM + ":2:5 file-unreadable", quickly());
    }

    @Test
    void aListInPlaceOfANameIsToldOf() {
        write(ITEM, "item: quillet-3\n[name, kind]: Quillet 3\n");
        assertEquals(ITEM + ":2:1 file-unreadable", first());

        write(ITEM, "item: quillet-3\n\"[name]\": Quillet 3\n");
        assertTrue(findings().contains(ITEM + ":2:2 field-unknown"), findings().toString());
    }

    @Test
    void mergeKeysAndTagsAreRefused() {
        write(ITEM, "item: quillet-3\n<<: { name: x }\n");
        assertEquals(ITEM + ":2:1 file-unreadable", first());

        write(ITEM, "item: quillet-3\nname: !!java.net.URL [x]\n");
        assertEquals(ITEM + ":2:7 file-unreadable", first());
    }

    @Test
    void depthIsBoundedInBothFormats() {
        write(ITEM, "item: quillet-3\nname: " + "[".repeat(5000) + "]".repeat(5000) + "\n");
        assertEquals(ITEM + ":2:56 size-limit", quickly());

        write(ITEM, text(BASE.resolve(ITEM)));
        write(RUN, "[".repeat(100_000));
        assertEquals(RUN + ":1:51 size-limit", quickly());
    }

    @Test
    void bracketsWithinEachOtherInAText() {
        write(
                "methods/encode.md",
                text(BASE.resolve("methods/encode.md")) + "![".repeat(10_000) + "](x)".repeat(10_000));

        assertEquals("methods/encode.md:13:202 size-limit", quickly());
    }

    @Test
    void aKeyWrittenTwiceIsToldOfAtTheSecond() {
        write(RUN, "{\n  \"run\": \"slow-1\",\n  \"run\": \"slow-2\"\n}\n");
        assertTrue(findings().contains(RUN + ":3:3 field-duplicate"), findings().toString());

        write(ITEM, "item: quillet-3\nname: a\nname: b\n");
        assertTrue(
                findings().contains(ITEM + ":3:1 field-duplicate"), findings().toString());
    }

    @Test
    void aHugeValueIsRefusedAtItsPlaceAndAHugeFileAsAWhole() {
        write(ITEM, "item: quillet-3\nname: " + "x".repeat(1_000_001) + "\n");
        assertEquals(ITEM + ":2:7 size-limit", quickly());

        write(ITEM, "item: quillet-3\nname: " + "x".repeat(4_000_001) + "\n");
        assertEquals(ITEM + " size-limit", quickly());
    }

    @Test
    void charactersThatTurnTheTextRound() {
        write(ITEM, text(BASE.resolve(ITEM)).replace("Quillet 3", "Quil\u202elet 3"));

        assertEquals(ITEM + ":2:11 text-deceptive", first());
    }

    @Test
    void lettersThatLookLikeOthers() {
        write(RUN, text(BASE.resolve(RUN)).replace("\"quillet-3\"", "\"quillet\u2011" + "3\""));
        assertEquals(List.of(RUN + ":4:19 text-deceptive"), findings());

        write(RUN, text(BASE.resolve(RUN)).replace("\"workload-clock\"", "\"w\u043erkload-clock\""));
        assertEquals(List.of(RUN + ":8:37 text-deceptive"), findings());

        write(RUN, text(BASE.resolve(RUN)).replace("\"A1\"", "\"A1\u200b\""));
        assertEquals(List.of(RUN + ":5:18 text-deceptive"), findings());
    }

    @Test
    void namesThatDifferInCapitalsAlone() throws IOException {
        String upper = "instruments/Workload-clock.yaml";
        write(upper, text(BASE.resolve("instruments/workload-clock.yaml")));
        boolean capitalsCount;
        try (Stream<Path> names = Files.list(folder.resolve("instruments"))) {
            capitalsCount = names.count() == 2;
        }
        assumeTrue(capitalsCount, "a file system that knows capitals");

        // In the order of bytes, capitals come first: the second file is the one that collides.
        assertTrue(
                findings().contains("instruments/workload-clock.yaml id-collision"),
                findings().toString());
        assertEquals(Set.of("preset"), FolderReader.read(folder).broken());
    }

    @Test
    void aLinkOutOfTheFolder(@TempDir Path outside) throws IOException {
        Path secret = Files.writeString(outside.resolve("secret.json"), "{ \"run\": \"slow-1\" }");
        Files.delete(folder.resolve(RUN));
        Files.createSymbolicLink(folder.resolve(RUN), secret);
        assertEquals(List.of(RUN + " path-outside"), findings());

        Files.delete(folder.resolve(RUN));
        write(RUN, text(BASE.resolve(RUN)).replace("\"readings\"", "\"log\": \"../log.csv\",\n  \"readings\""));
        Files.createSymbolicLink(folder.resolve("studies/preset/log.csv"), secret);
        assertEquals(List.of(RUN + ":9:11 path-outside"), findings());
    }

    @Test
    void aPathThatGoesUpAndComesDownAgainIsFine() throws IOException {
        Files.writeString(folder.resolve("studies/preset/b.csv"), "time [s]\n0\n1\n");
        write(RUN, withLog("../a/../b.csv"));
        assertEquals(List.of(), findings());
        assertEquals(
                "studies/preset/b.csv",
                FolderReader.read(folder).studies().get("preset").runs().stream()
                        .flatMap(r -> r.log().stream())
                        .findFirst()
                        .orElseThrow()
                        .file());
    }

    @Test
    void pathsThatLeadOut() {
        for (String path :
                List.of("../../../../b.csv", "/etc/b.csv", "C:/b.csv", "..\\\\..\\\\b.csv", "a/\\u0000/b.csv")) {
            write(RUN, withLog(path));
            String found = first();
            assertEquals("path-outside", found.substring(found.indexOf(' ') + 1), path);
            assertTrue(found.startsWith(RUN + ":9:1"), found);
        }
    }

    @Test
    void aPictureThatLeadsOut() {
        write(
                ITEM,
                text(BASE.resolve(ITEM))
                        + "pictures:\n  - { file: ../../x.png, shows: it, by: R. Ambrose, licence: CC0-1.0 }\n");

        assertEquals(ITEM + ":8:13 path-outside", first());
    }

    @Test
    void aNulAmongLetters() {
        write(ITEM, "item: quillet-3\nname: Quil\u0000let\n");

        assertEquals(ITEM + ":2:11 file-unreadable", first());
    }

    @Test
    void bytesThatAreNoUtf8() throws IOException {
        Files.write(folder.resolve(ITEM), "item: quillet-3\nname: H\u00fctte\n".getBytes(StandardCharsets.ISO_8859_1));

        assertEquals(ITEM + ":2:8 file-unreadable", first());
    }

    @Test
    void oneBrokenStudyLeavesTheOtherAlone() throws IOException {
        for (String file : List.of(
                "study.md",
                "runs/slow-1.json",
                "runs/slow-2.json",
                "runs/slow-3.json",
                "runs/fast-1.json",
                "runs/fast-2.json",
                "runs/fast-3.json")) {
            String sound = text(BASE.resolve("studies/preset/" + file));
            write("studies/other/" + file, sound.replace("study: preset", "study: other"));
        }
        write("studies/other/runs/fast-2.json", "{ \"run\": \"fast-2\", }");
        ResultsFolder read = FolderReader.read(folder);

        assertEquals(Set.of("preset"), read.studies().keySet());
        assertEquals(Set.of("other"), read.broken());
        assertEquals(6, read.studies().get("preset").runs().size());
        assertEquals(List.of("studies/other/runs/fast-2.json:1:20 file-unreadable"), findings());
    }

    @Test
    void noFolderAtAll() {
        ResultsFolder read = FolderReader.read(folder.resolve("nowhere"));

        assertTrue(read.publication().isEmpty());
        assertEquals("file-unreadable", read.findings().get(0).rule());
    }

    private static String withLog(String path) {
        return text(BASE.resolve(RUN)).replace("\"readings\"", "\"log\": \"" + path + "\",\n  \"readings\"");
    }

    /** A small text must not take long, whatever it says. */
    private String quickly() {
        return assertTimeoutPreemptively(Duration.ofSeconds(10), this::first);
    }

    /** The first finding of the file that was changed; the studies that need it come later. */
    private String first() {
        return findings().get(0);
    }

    private List<String> findings() {
        return FolderReader.read(folder).findings().stream()
                .map(f -> f.place() + " " + f.rule())
                .toList();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(String file, String text) {
        try {
            Files.createDirectories(folder.resolve(file).getParent());
            Files.writeString(folder.resolve(file), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
