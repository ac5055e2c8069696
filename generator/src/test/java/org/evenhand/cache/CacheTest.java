package org.evenhand.cache;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.evenhand.model.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Digests of known bytes are those of FIPS 180-4's own examples. */
class CacheTest {

    private static final String OF_ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

    @TempDir
    private Path folder;

    private Cache cache() {
        return Cache.in(folder.resolve("cache"), "test");
    }

    private List<Path> entries() throws IOException {
        try (Stream<Path> walk = Files.walk(folder.resolve("cache"))) {
            return walk.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void whatIsPutUnderAKeyComesBackInAnotherProcessToo() {
        String key = cache().key("greeting", "a", 1);
        cache().put(key, bytes("hello"));
        assertArrayEquals(bytes("hello"), cache().get(key).orElseThrow());
        assertEquals(Optional.empty(), cache().get(cache().key("greeting", "a", 2)));
    }

    @Test
    void anotherBuildOfTheProgramKnowsNothingOfIt() {
        Cache other = Cache.in(folder.resolve("cache"), "test 2");
        assertNotEquals(cache().key("greeting", "a"), other.key("greeting", "a"));
    }

    @Test
    void theKeyOfAMapDoesNotDependOnTheOrderThatTheMachineGivesIt() {
        // Map.of has another order in each run of the virtual machine: java.util.ImmutableCollections.SALT.
        Cache cache = cache();
        Map<String, Integer> one = Map.of("a", 1, "b", 2, "c", 3, "d", 4);
        Map<String, Integer> two = Map.of("d", 4, "c", 3, "b", 2, "a", 1);
        assertEquals(cache.key("map", one), cache.key("map", two));
    }

    @Test
    void aDamagedEntryIsPassedOverWhateverByteIsWrong() throws IOException {
        String key = cache().key("greeting");
        cache().put(key, bytes("hello"));
        Path entry = entries().get(0);
        byte[] whole = Files.readAllBytes(entry);
        for (int i = 0; i < whole.length; i++) {
            byte[] damaged = whole.clone();
            damaged[i] ^= 4;
            Files.write(entry, damaged);
            assertEquals(Optional.empty(), cache().get(key), "byte " + i);
            Files.write(entry, java.util.Arrays.copyOf(whole, i));
            assertEquals(Optional.empty(), cache().get(key), "cut after " + i);
        }
    }

    @Test
    void anEntryThatTakesTheNameOfAnotherIsPassedOver() throws IOException {
        String key = cache().key("greeting");
        cache().put(key, bytes("hello"));
        Path entry = entries().get(0);
        String other = key.substring(0, 63) + (key.endsWith("0") ? "1" : "0");
        Files.move(entry, entry.resolveSibling(other));
        assertEquals(Optional.empty(), cache().get(other));
    }

    @Test
    void manyAtOnceNeverSeeHalfAnEntry() {
        byte[] large = new byte[300_000];
        new Random(1).nextBytes(large);
        String key = cache().key("large");
        long wrong = IntStream.range(0, 200)
                .parallel()
                .filter(i -> {
                    if (i % 3 == 0) {
                        cache().put(key, large);
                    }
                    Optional<byte[]> found = cache().get(key);
                    return found.isPresent() && !java.util.Arrays.equals(found.get(), large);
                })
                .count();
        assertEquals(0, wrong);
    }

    @Test
    void aFolderThatCannotBeMadeKeepsNothing() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        Cache none = Cache.in(file.resolve("cache"), "test");
        assertTrue(none.keepsNothing());
        none.put(none.key("greeting"), bytes("hello"));
        assertEquals(Optional.empty(), none.get(none.key("greeting")));
    }

    @Test
    void theDigestOfAnUnchangedFileIsKnownAndThatOfAChangedOneIsNot() throws IOException {
        Path file = Files.writeString(folder.resolve("log"), "abc");
        Files.setLastModifiedTime(file, LONG_AGO);
        assertEquals(OF_ABC, cache().sha256(file));
        assertEquals(Optional.of(OF_ABC), cache().sha256(FileState.of(file)));
        Files.writeString(file, "abd");
        assertNotEquals(OF_ABC, cache().sha256(file));
    }

    @Test
    void aFileThatWasJustWrittenIsReadAgain() throws IOException {
        // It may be written to once more within the same tick of the clock, which would leave no trace.
        Path file = Files.writeString(folder.resolve("log"), "abc");
        assertEquals(OF_ABC, cache().sha256(file));
        assertEquals(Optional.empty(), cache().sha256(FileState.of(file)));
    }

    @Test
    void theStatesOfAFolderChangeWithEachChangeToIt() throws IOException {
        Path site = Files.createDirectories(folder.resolve("site/below"));
        Path file = Files.writeString(site.resolve("log"), "abc");
        Files.setLastModifiedTime(file, LONG_AGO);
        String before = cache().states(site.getParent(), true).orElseThrow();
        assertEquals(before, cache().states(site.getParent(), true).orElseThrow());
        Path more = Files.writeString(site.resolve("more"), "");
        assertEquals(Optional.empty(), cache().states(site.getParent(), true));
        Files.setLastModifiedTime(more, LONG_AGO);
        assertNotEquals(before, cache().states(site.getParent(), true).orElseThrow());
        Files.delete(more);
        assertEquals(before, cache().states(site.getParent(), true).orElseThrow());
        Files.writeString(file, "abcd");
        Files.setLastModifiedTime(file, LONG_AGO);
        assertNotEquals(before, cache().states(site.getParent(), true).orElseThrow());
    }

    @Test
    void trimmingDeletesTheOldestAndKeepsTheRest() throws IOException {
        Cache cache = cache();
        for (int i = 0; i < 8; i++) {
            cache.put(cache.key("entry", i), new byte[1000]);
            Files.setLastModifiedTime(
                    folder.resolve("cache")
                            .resolve(cache.key("entry", i).substring(0, 2))
                            .resolve(cache.key("entry", i)),
                    FileTime.fromMillis(LONG_AGO.toMillis() + 1000L * i));
        }
        cache.trim(5000);
        List<Boolean> left = IntStream.range(0, 8)
                .mapToObj(i -> cache.get(cache.key("entry", i)).isPresent())
                .toList();
        // 8 × 1032 bytes; three quarters of 5 000 hold three entries.
        assertEquals(List.of(false, false, false, false, false, true, true, true), left);
    }

    @Test
    void aRecordComesBackEqual() {
        Place place = new Place("a.md", 3, 4, 5);
        assertEquals(Optional.of(place), Packed.unpack(Packed.of(place), Place.class));
        assertEquals(Optional.empty(), Packed.unpack(Packed.of(place), FileState.class));
        assertEquals(Optional.empty(), Packed.unpack(new byte[] {99, 1, 2}, Place.class));
        assertArrayEquals(Packed.of(List.of(Period.ofMonths(12))), Packed.of(List.of(Period.ofMonths(12))));
    }
}
