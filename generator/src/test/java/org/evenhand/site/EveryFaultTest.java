package org.evenhand.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A publication that replaces another one, with each of its operations on the disk failing in turn. */
class EveryFaultTest {

    private static final int FILES = 9;

    @TempDir
    private Path folder;

    private Path source() throws IOException {
        Path source = Files.createDirectories(folder.resolve("results"));
        Files.writeString(source.resolve("raw.csv"), "time [s],power [W]\n0,1\n");
        return source;
    }

    /** A former site among things of somebody else's: a file, a link that leads nowhere, an empty folder. */
    private Path formerSite(String name) throws Exception {
        Path target = folder.resolve(name);
        Sites.publish(target, source(), 0, FILES, new LocalDisk());
        Files.writeString(target.resolve("CNAME"), "results.example.org\n");
        Files.createDirectories(target.resolve("theirs/empty"));
        Files.createSymbolicLink(target.resolve("theirs/link"), Path.of("nowhere"));
        return target;
    }

    private int operations() throws Exception {
        FaultyDisk counting = new FaultyDisk(FaultyDisk.Fault.NO_SPACE, Integer.MAX_VALUE);
        Sites.publish(formerSite("counted"), source(), 1, FILES, counting);
        return counting.operations();
    }

    @ParameterizedTest
    @EnumSource
    void theOldSiteOrTheNewOneStandsAndTheNextPublicationSucceeds(FaultyDisk.Fault fault) throws Exception {
        int operations = operations();
        assertTrue(operations > 50, () -> "only " + operations + " operations");
        SortedMap<String, String> afterwards = Sites.contents(folder.resolve("counted"));
        int old = 0;
        for (int failing = 0; failing < operations; failing++) {
            String name = fault + "-" + failing;
            Path target = formerSite(name);
            SortedMap<String, String> before = Sites.contents(target);
            FaultyDisk disk = new FaultyDisk(fault, failing);
            boolean succeeds = publishes(target, disk);
            disk.die();

            boolean dead = fault == FaultyDisk.Fault.KILLED_BEFORE || fault == FaultyDisk.Fault.KILLED_WITHIN;
            if (!dead || Files.exists(target)) {
                SortedMap<String, String> found = Sites.contents(target);
                assertTrue(found.equals(before) || found.equals(afterwards), name);
                assertTrue(dead || found.equals(succeeds ? afterwards : before), name);
            } else {
                // Between the two renames nothing is at the target, and the former site waits to be put back.
                assertEquals(before, Sites.contents(target.resolveSibling("." + name + ".evenhand/old")), name);
            }

            SiteWriter.begin(target, source()).close();
            SortedMap<String, String> mended = Sites.contents(target);
            old += mended.equals(before) ? 1 : 0;
            assertTrue(mended.equals(before) || mended.equals(afterwards), name);
            assertFalse(Files.exists(target.resolveSibling("." + name + ".evenhand")), name);

            Sites.publish(target, source(), 1, FILES, new LocalDisk());
            assertEquals(afterwards, Sites.contents(target), name);
        }
        assertTrue(old > 0 && old < operations, "both outcomes were seen");
    }

    private boolean publishes(Path target, Disk disk) throws Exception {
        try {
            Sites.publish(target, source(), 1, FILES, disk);
            return true;
        } catch (IOException | UncheckedIOException | FaultyDisk.Killed e) {
            return false;
        }
    }

    @Test
    void withoutAFormerSiteThereIsAWholeOneOrNone() throws Exception {
        FaultyDisk counting = new FaultyDisk(FaultyDisk.Fault.NO_SPACE, Integer.MAX_VALUE);
        Sites.publish(folder.resolve("first"), source(), 1, FILES, counting);
        SortedMap<String, String> whole = new TreeMap<>(Sites.contents(folder.resolve("first")));
        for (int failing = 0; failing < counting.operations(); failing++) {
            Path target = folder.resolve("first-" + failing);
            FaultyDisk disk = new FaultyDisk(FaultyDisk.Fault.KILLED_WITHIN, failing);
            assertThrows(FaultyDisk.Killed.class, () -> Sites.publish(target, source(), 1, FILES, disk));
            disk.die();
            if (Files.exists(target)) {
                assertEquals(whole, Sites.contents(target));
            }
            Sites.publish(target, source(), 1, FILES, new LocalDisk());
            assertEquals(whole, Sites.contents(target));
        }
    }
}
