package org.evenhand.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.SortedMap;
import org.evenhand.read.Sha256;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a publication may touch, and what it says when it may not. */
class SiteWriterTest {

    @TempDir
    private Path folder;

    private Path source;
    private Path target;

    @BeforeEach
    void aSite() throws Exception {
        source = Files.createDirectories(folder.resolve("results"));
        Files.writeString(source.resolve("raw.csv"), "time [s],power [W]\n0,1\n");
        target = folder.resolve("site");
        Sites.publish(target, source, 0, 5, new LocalDisk());
    }

    private String refusal() {
        return assertThrows(TargetException.class, () -> Sites.publish(target, source, 1, 5, new LocalDisk()))
                .getMessage();
    }

    @Test
    void aSecondPublicationAtATimeIsRefused() throws Exception {
        try (SiteWriter first = SiteWriter.begin(target, source)) {
            first.put("index.html", new byte[0]);
            assertTrue(refusal().contains("another publication to site is going on"));
            first.finish();
        }
        assertEquals(2, Sites.contents(target).size());
        Sites.publish(target, source, 1, 5, new LocalDisk());
    }

    @Test
    void aLockThatADeadProcessLeftLocksNobodyOut() throws Exception {
        Path workshop = Files.createDirectories(folder.resolve(".site.evenhand"));
        Files.writeString(workshop.resolve("lock"), "process 1, long gone\n");
        Sites.publish(target, source, 1, 5, new LocalDisk());
        assertFalse(Files.exists(workshop));
    }

    @Test
    void aFolderBesideTheSiteThatIsNotOursStays() throws Exception {
        Path letter =
                Files.createDirectories(folder.resolve(".site.evenhand/new")).resolve("letter");
        Files.writeString(letter, "dear");
        assertTrue(refusal().contains("not of our making"));
        assertEquals("dear", Files.readString(letter));
    }

    @Test
    void aFormerSiteIsNotThrownAwayForWhatSomebodyElsePutInItsPlace() throws Exception {
        Path workshop = Files.createDirectories(folder.resolve(".site.evenhand"));
        Files.writeString(workshop.resolve("lock"), "");
        Files.move(target, workshop.resolve("old"));
        SortedMap<String, String> former = Sites.contents(workshop.resolve("old"));
        Files.createDirectories(target);
        assertTrue(refusal().contains("the former site is in .site.evenhand/old"));
        assertEquals(former, Sites.contents(workshop.resolve("old")));
    }

    @Test
    void whatIsWrittenIntoTheFormerSiteWhileItIsReplacedIsKept() throws Exception {
        Files.writeString(target.resolve("notes.txt"), "first");
        Disk busy = new ForwardingDisk() {
            @Override
            public void move(Path from, Path to) throws IOException {
                if (from.equals(target)) {
                    Files.writeString(target.resolve("notes.txt"), "second");
                    Files.writeString(target.resolve("more.txt"), "new");
                }
                super.move(from, to);
            }
        };
        Sites.publish(target, source, 1, 5, busy);
        assertEquals("second", Files.readString(target.resolve("notes.txt")));
        assertEquals("new", Files.readString(target.resolve("more.txt")));
    }

    @Test
    void aStrangerInTheWayIsNotOverwritten() throws Exception {
        Files.createDirectories(target.resolve("odd"));
        Files.writeString(target.resolve("odd/index.html"), "theirs");
        assertTrue(refusal().contains("odd/index.html"));
        Files.delete(target.resolve("odd/index.html"));
        Files.delete(target.resolve("odd"));
        Files.writeString(target.resolve("odd"), "theirs");
        assertTrue(refusal().contains("the new one needs their place: odd"));
        assertEquals("theirs", Files.readString(target.resolve("odd")));
    }

    @Test
    void aPageThatSomebodyAlteredIsNotReplacedWithoutAWord() throws Exception {
        String page = Manifest.of(target).digests().keySet().stream()
                .filter(path -> path.endsWith(".html"))
                .findFirst()
                .orElseThrow();
        byte[] published = Files.readAllBytes(target.resolve(page));
        Files.writeString(target.resolve(page), "a note by hand");
        assertTrue(refusal().contains("altered since they were published, and are not replaced: " + page));
        assertEquals("a note by hand", Files.readString(target.resolve(page)));
        // The near misses: as it was published, and gone.
        Files.write(target.resolve(page), published);
        Sites.publish(target, source, 1, 5, new LocalDisk());
        Files.delete(target.resolve(page));
        Sites.publish(target, source, 1, 5, new LocalDisk());
    }

    @Test
    void aFileThatChangesBetweenReadingAndCopyingStopsThePublication() throws Exception {
        SortedMap<String, String> before = Sites.contents(target);
        try (SiteWriter site = SiteWriter.begin(target, source)) {
            String read = Sha256.of(Files.readAllBytes(source.resolve("raw.csv")));
            Files.writeString(source.resolve("raw.csv"), "time [s],power [W]\n0,1\n1,1\n");
            IOException e =
                    assertThrows(IOException.class, () -> site.copy("raw.csv", source.resolve("raw.csv"), read));
            assertTrue(e.getMessage().contains("raw.csv changed while the site was made of it"));
        }
        assertEquals(before, Sites.contents(target));
    }

    @Test
    void aFileThatVanishesIsNamed() throws Exception {
        try (SiteWriter site = SiteWriter.begin(target, source)) {
            IOException e = assertThrows(IOException.class, () -> site.copy("a.csv", source.resolve("gone.csv"), ""));
            assertTrue(Trouble.of(e).contains("gone.csv is not there any more"));
        }
    }

    @Test
    void aNameThatTheFileSystemCannotHoldIsSaidAndTheOldSiteStays() throws Exception {
        SortedMap<String, String> before = Sites.contents(target);
        try (SiteWriter site = SiteWriter.begin(target, source)) {
            for (String name : new String[] {"nul\0.html", "x".repeat(300) + ".html"}) {
                UncheckedIOException e = assertThrows(UncheckedIOException.class, () -> site.put(name, new byte[0]));
                assertFalse(Trouble.of(e.getCause()).isBlank());
            }
        }
        assertEquals(before, Sites.contents(target));
    }

    @Test
    void namesThatDifferInCapitalsAloneAreOneAddress() throws Exception {
        try (SiteWriter site = SiteWriter.begin(target, source)) {
            site.put("a.html", new byte[0]);
            site.put("a-2.html", new byte[0]);
            assertThrows(IllegalStateException.class, () -> site.put("A.html", new byte[0]));
            assertThrows(IllegalStateException.class, () -> site.put("../out.html", new byte[0]));
        }
        assertFalse(Files.exists(folder.resolve("out.html")));
    }

    @Test
    void aFolderThatMayNotBeWrittenIsNamed() throws Exception {
        Path closed = Files.createDirectories(folder.resolve("closed"));
        Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
        assumeFalse(Files.isWritable(closed), "this user may write everywhere");
        IOException e = assertThrows(IOException.class, () -> SiteWriter.begin(closed.resolve("site"), source));
        assertTrue(Trouble.of(e).contains("is not yours to read or write"));
    }
}
