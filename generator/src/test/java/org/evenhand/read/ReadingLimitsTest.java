package org.evenhand.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.evenhand.model.Finding;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;
import org.evenhand.words.QuotaWords;
import org.evenhand.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is as large as its limit is read, what is larger by one is not, and the finding names the limit.
 *
 * <p>Sizes were counted by hand in the texts below.
 */
class ReadingLimitsTest {

    private static final Path BASE = Path.of("src/test/resources/rules/bases/record");
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
    void bytesOfAFile() throws IOException {
        long largest = 0;
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                largest = Math.max(largest, Files.size(file));
            }
        }
        assertHolds(Quota.FILE_BYTES, largest);
    }

    @Test
    void depthOfAFile() throws IOException {
        Files.writeString(folder.resolve(ITEM), "item: quillet-3\nname: Quillet 3\nkind: board\nmaker: [[[x]]]\n");
        // One group and three lists.
        assertEquals(1, exceeding(Limits.DEFAULT.with(Quota.FILE_DEPTH, 3)));
        assertEquals(0, exceeding(Limits.DEFAULT.with(Quota.FILE_DEPTH, 4)));
    }

    @Test
    void valuesOfAFile() throws IOException {
        Files.writeString(folder.resolve("items/zz.yaml"), "a: 1\nb: [2, 3]\n".repeat(1));
        // The group, a, 1, b, the list, 2 and 3 are seven; no other file of the folder has fewer.
        String found = first(Limits.DEFAULT.with(Quota.FILE_VALUES, 6), "items/zz.yaml");
        assertTrue(found.contains("6 fields and values in one file are read"), found);
        assertEquals("", first(Limits.DEFAULT.with(Quota.FILE_VALUES, 7), "items/zz.yaml"));
    }

    @Test
    void lengthOfAValue() throws IOException {
        Files.writeString(folder.resolve("items/zz.yaml"), "item: " + "x".repeat(900) + "\n");
        String found = first(Limits.DEFAULT.with(Quota.VALUE_CHARACTERS, 899), "items/zz.yaml");
        assertTrue(found.contains("--limit value-characters=NUMBER"), found);
        assertEquals("", first(Limits.DEFAULT.with(Quota.VALUE_CHARACTERS, 900), "items/zz.yaml"));
    }

    @Test
    void digitsOfANumber() throws IOException {
        Files.writeString(
                folder.resolve("items/zz.yaml"), "item: zz\nname: " + "1".repeat(100) + "." + "2".repeat(100));
        assertEquals("", first(Limits.DEFAULT, "items/zz.yaml"));
        Files.writeString(folder.resolve("items/zz.yaml"), "item: zz\nname: 5." + "1".repeat(101));
        assertTrue(first(Limits.DEFAULT, "items/zz.yaml").startsWith("items/zz.yaml:2:9 "), "the first digit too many");
        assertEquals("", first(Limits.DEFAULT.with(Quota.NUMBER_DIGITS, 101), "items/zz.yaml"));
    }

    @Test
    void lengthOfAText() throws IOException {
        Path method = folder.resolve("methods/encode.md");
        String text = Files.readString(method);
        int body = text.length() - text.indexOf("---\n", 4) - 4;
        assertHolds(Quota.PROSE_CHARACTERS, Math.max(body, studyBody()));
    }

    private int studyBody() throws IOException {
        String text = Files.readString(folder.resolve("studies/preset/study.md"));
        return text.length() - text.indexOf("---\n", 4) - 4;
    }

    @Test
    void entriesOfAFolderAndRunsOfAStudy() {
        // Six runs are the most that any folder of this one holds.
        assertHolds(Quota.FOLDER_ENTRIES, 6);
        assertHolds(Quota.STUDY_RUNS, 6);
        // With the study itself; its runs have neither logs nor pictures.
        assertHolds(Quota.STUDY_FILES, 7);
    }

    @Test
    void timeForAFile() throws IOException {
        StringBuilder many = new StringBuilder("item: zz\nvalues: [");
        many.append("1, ".repeat(3000)).append("1]\n");
        Files.writeString(folder.resolve("items/zz.yaml"), many);
        // A clock that is a second later whenever it is looked at.
        AtomicLong seconds = new AtomicLong();
        Limits limits = Limits.DEFAULT.timedBy(() -> seconds.getAndIncrement() * 1_000_000_000L);
        String found = first(limits.with(Quota.FILE_SECONDS, 1), "items/zz.yaml");
        assertTrue(found.contains("1 seconds spent on reading one file are read"), found);
        assertEquals("", first(limits.with(Quota.FILE_SECONDS, 5), "items/zz.yaml"));
    }

    /** What is as large as the limit is read; what is larger is not. */
    private void assertHolds(Quota quota, long size) {
        assertEquals(0, exceeding(Limits.DEFAULT.with(quota, size)), quota.id());
        assertTrue(exceeding(Limits.DEFAULT.with(quota, size - 1)) > 0, quota.id());
        for (Finding finding : tooLarge(Limits.DEFAULT.with(quota, size - 1))) {
            assertTrue(
                    finding.message()
                            .endsWith("; " + (size - 1) + " " + QuotaWords.what(quota, Words.english()) + " are read"),
                    finding::message);
            assertTrue(finding.remedy().endsWith(QuotaWords.raising(quota, Words.english())), finding::remedy);
        }
    }

    private long exceeding(Limits limits) {
        return tooLarge(limits).size();
    }

    private String first(Limits limits, String file) {
        return tooLarge(limits).stream()
                .filter(f -> f.place().file().equals(file))
                .map(f -> f.place() + " " + f.message() + " " + f.remedy())
                .findFirst()
                .orElse("");
    }

    private List<Finding> tooLarge(Limits limits) {
        return FolderReader.read(folder, limits).findings().stream()
                .filter(f -> f.rule().equals(Rules.SIZE_LIMIT))
                .toList();
    }
}
