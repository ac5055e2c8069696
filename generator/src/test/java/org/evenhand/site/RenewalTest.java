package org.evenhand.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.evenhand.cache.Cache;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.evenhand.check.Progress;
import org.evenhand.model.Limits;
import org.evenhand.page.Pages;
import org.evenhand.page.Templates;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A site that is renewed with what is known from the last time is the one that is made from nothing, byte for byte. */
class RenewalTest {

    private static final Path SOAK = Path.of("src/test/resources/rules/bases/soak");

    @TempDir
    private Path temporary;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void editsOfAnyKindAreRenewedToTheBytesOfAFreshSite(long seed) throws Exception {
        Random random = new Random(seed);
        Path results = copy(SOAK, temporary.resolve("results"));
        otherStudies(results);
        Path renewed = temporary.resolve("renewed");
        for (int round = 0; round < 12; round++) {
            String edit = round == 0 ? "nothing" : edit(results, random);
            if (round % 3 == 2) {
                spoil(random);
            }
            // Both are held against the same former site.
            Path fresh = temporary.resolve("fresh-" + round);
            if (Files.exists(renewed)) {
                copy(renewed, fresh);
            }
            boolean made = publish(results, fresh, Cache.none());
            assertEquals(made, publish(results, renewed, cache()), edit);
            assertSame(files(fresh), files(renewed), edit);
        }
    }

    @Test
    void whatIsKnownIsNotMeasuredAgain() throws Exception {
        Path results = copy(SOAK, temporary.resolve("results"));
        publish(results, temporary.resolve("site"), cache());
        // A log of which everything is known need not be read: emptied behind the file system's back, it is not missed.
        Path log = results.resolve("studies/plate/logs/none-1.csv");
        byte[] before = Files.readAllBytes(log);
        byte[] after = new byte[before.length];
        java.util.Arrays.fill(after, (byte) ' ');
        FileTime time = Files.getLastModifiedTime(log);
        try (var channel = Files.newByteChannel(log, java.nio.file.StandardOpenOption.WRITE)) {
            channel.write(java.nio.ByteBuffer.wrap(after));
        }
        Files.setLastModifiedTime(log, time);
        Optional<Path> none = Optional.empty();
        assertFalse(FolderChecker.check(results, none, Limits.DEFAULT, cache(), Progress.NONE)
                .withholds());
        assertTrue(FolderChecker.check(results).withholds());
    }

    /** A page is kept where only another study has changed, and written anew where its own has. */
    @Test
    void pagesOfWhatHasNotChangedAreKept() throws Exception {
        Path results = copy(SOAK, temporary.resolve("results"));
        otherStudies(results);
        Path site = temporary.resolve("site");
        publish(results, site, cache());
        Object answer = identity(site.resolve("answers/again/index.html"));
        Object run = identity(site.resolve("runs/again/none-1/index.html"));
        Object changed = identity(site.resolve("answers/plate/index.html"));
        replace(results.resolve("studies/plate/runs/none-1.json"), "\"A\\d\"", "\"A3\"");
        publish(results, site, cache());
        assertEquals(answer, identity(site.resolve("answers/again/index.html")));
        assertEquals(run, identity(site.resolve("runs/again/none-1/index.html")));
        assertNotEquals(changed, identity(site.resolve("answers/plate/index.html")));
    }

    /** A page that somebody wrote into is no page that was made before. */
    @Test
    void aPageThatWasAlteredIsNotTakenForTheOneThatWasMade() throws Exception {
        Path results = copy(SOAK, temporary.resolve("results"));
        Path site = temporary.resolve("site");
        publish(results, site, cache());
        Files.writeString(site.resolve("answers/plate/index.html"), "mine");
        replace(results.resolve("publication.yaml"), "title: .*", "title: Other trials");
        TargetException e = assertThrows(TargetException.class, () -> publish(results, site, cache()));
        assertTrue(e.getMessage().contains("answers/plate/index.html"), e.getMessage());
        assertEquals("mine", Files.readString(site.resolve("answers/plate/index.html")));
    }

    private static Object identity(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
    }

    /** One with runs of its own, nearly the same that the first has, and one that looks at those of the first. */
    private static void otherStudies(Path results) throws IOException {
        Path plate = results.resolve("studies/plate");
        Path again = copy(plate, results.resolve("studies/again"));
        for (Path log : below(again, ".csv")) {
            replace(log, "\\n1200,([^,]*),", "\n1200,$15,"); // or it would be a copy, which is withheld
        }
        replace(again.resolve("study.md"), "study: plate", "study: again");
        Path across = results.resolve("studies/across/study.md");
        Files.createDirectories(across.getParent());
        Files.copy(plate.resolve("study.md"), across);
        replace(across, "study: plate", "study: across");
        replace(across, "method: soak", "method: soak\nuses: [{ study: plate }]");
    }

    private Cache cache() {
        return Cache.in(temporary.resolve("cache"), "test");
    }

    /** Changes one thing, as people do; says what. */
    private static String edit(Path results, Random random) throws IOException {
        List<Path> logs = below(results, ".csv");
        List<Path> runs = below(results, ".json");
        Path log = logs.get(random.nextInt(logs.size()));
        Path run = runs.get(random.nextInt(runs.size()));
        switch (random.nextInt(12)) {
            case 0 -> replace(log, "\\n1200,[^,]*,", "\n1200," + (40 + random.nextInt(30)) + ",");
            case 1 -> replace(run, "\"A\\d\"", "\"A" + (1 + random.nextInt(3)) + "\"");
            case 2 -> replace(results.resolve("studies/plate/study.md"), "tried against", "tried, and again, against");
            case 3 ->
                replace(
                        results.resolve("methods/soak.md"),
                        "window: \\d+ min",
                        "window: " + (5 + random.nextInt(9)) + " min");
            case 4 ->
                replace(
                        results.resolve("instruments/die-sensor.yaml"),
                        "accuracy: .*",
                        "accuracy: 0." + (1 + random.nextInt(8)) + " K");
            case 5 -> replace(results.resolve("publication.yaml"), "title: .*", "title: Trials " + random.nextInt(100));
            case 6 ->
                replace(results.resolve("items/quillet-3.yaml"), "name: .*", "name: Quillet " + random.nextInt(9));
            case 7 -> replace(results.resolve("studies/again/study.md"), "keep it cooler", "cool it, say");
            case 8 -> replace(results.resolve("studies/across/study.md"), "status: final", "status: draft");
            case 9 -> Files.delete(run);
            case 10 -> added(run, log);
            default -> Files.setLastModifiedTime(log, FileTime.fromMillis(1_100_000_000_000L + random.nextInt(1000)));
        }
        return log + " or " + run;
    }

    private static void added(Path run, Path log) throws IOException {
        String name = run.getFileName().toString().replace(".json", "");
        String more = name.replaceFirst("-.*", "-" + Math.floorMod(log.hashCode(), 97));
        Path further = run.resolveSibling(more + ".json");
        if (!Files.exists(further)) {
            Files.copy(run, further);
            replace(further, "\"" + name + "\"", "\"" + more + "\"");
        }
    }

    private static void replace(Path file, String what, String by) throws IOException {
        Files.writeString(file, Files.readString(file).replaceFirst(what, by));
        Files.setLastModifiedTime(file, FileTime.fromMillis(1_200_000_000_000L));
    }

    /** Damages an entry of the cache and deletes another. */
    private void spoil(Random random) throws IOException {
        List<Path> entries = below(temporary.resolve("cache"), "");
        Path damaged = entries.get(random.nextInt(entries.size()));
        byte[] bytes = Files.readAllBytes(damaged);
        bytes[random.nextInt(bytes.length)] ^= 1;
        Files.write(damaged, bytes);
        Files.deleteIfExists(entries.get(random.nextInt(entries.size())));
    }

    private static boolean publish(Path results, Path target, Cache cache) throws Exception {
        Optional<Path> former = Optional.of(target).filter(t -> Files.exists(t.resolve(Manifest.FILE)));
        try (SiteWriter site = SiteWriter.begin(target, results, cache)) {
            CheckedFolder checked = FolderChecker.check(results, former, Limits.DEFAULT, cache, Progress.NONE);
            Pages.build(checked, results, Templates.bundled(), "Evenhand test", former, cache, site);
            site.finish();
            return checked.withholds();
        }
    }

    private static void assertSame(SortedMap<String, byte[]> fresh, SortedMap<String, byte[]> renewed, String edit) {
        assertEquals(fresh.keySet(), renewed.keySet(), edit);
        fresh.forEach((path, bytes) -> assertArrayEquals(
                bytes,
                renewed.get(path),
                () -> path + " after a change to " + edit + ": "
                        + new String(renewed.get(path), StandardCharsets.UTF_8)));
    }

    private static SortedMap<String, byte[]> files(Path site) throws IOException {
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (Path file : below(site, "")) {
            files.put(Manifest.path(site, file), Files.readAllBytes(file));
        }
        return files;
    }

    private static List<Path> below(Path folder, String ending) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(Files::isRegularFile)
                    .filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    /** Files with times of long ago, as most of an archive has. */
    private static Path copy(Path from, Path to) throws IOException {
        for (Path file : below(from, "")) {
            Path copy = to.resolve(from.relativize(file).toString());
            Files.createDirectories(copy.getParent());
            Files.copy(file, copy);
            Files.setLastModifiedTime(copy, FileTime.fromMillis(1_000_000_000_000L));
        }
        return to;
    }
}
