package org.evenhand.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Another process replaces one site by another and is killed at moments that a seeded generator chooses. A long run:
 * {@code mvn test -Dtest=KillTest -DargLine=-Devenhand.kills=1000}.
 */
class KillTest {

    private static final int FILES = 60;

    @TempDir
    private Path folder;

    @Test
    void aKilledPublicationLeavesTheOldSiteOrTheNewOne() throws Exception {
        int kills = Integer.getInteger("evenhand.kills", 8);
        Path source = Files.createDirectories(folder.resolve("results"));
        Files.writeString(source.resolve("raw.csv"), "time [s],power [W]\n0,1\n");
        Path target = folder.resolve("site");
        Sites.publish(target, source, 1, FILES, new LocalDisk());
        SortedMap<String, String> odd = Sites.contents(target);
        long begun = System.nanoTime();
        Sites.publish(target, source, 0, FILES, new LocalDisk());
        long onceNs = System.nanoTime() - begun;
        SortedMap<String, String> even = Sites.contents(target);
        Random random = new Random(20260302);
        int absent = 0;
        int half = 0;
        for (int kill = 0; kill < kills; kill++) {
            int edition = Sites.contents(target).equals(even) ? 1 : 0;
            Process process = start(target, source, edition);
            assertEquals("ready", process.inputReader().readLine());
            // Over more than the first publication, which is slow because the process has only just begun.
            LockSupport.parkNanos((long) (random.nextDouble() * 8 * onceNs));
            process.destroyForcibly().waitFor();
            assertEquals(128 + 9, process.exitValue(), "the process ended by itself");

            if (Files.exists(target)) {
                SortedMap<String, String> found = Sites.contents(target);
                assertTrue(found.equals(odd) || found.equals(even), "kill " + kill);
            } else {
                absent++;
            }
            half += Files.exists(folder.resolve(".site.evenhand")) ? 1 : 0;
            SiteWriter.begin(target, source).close();
            SortedMap<String, String> mended = Sites.contents(target);
            assertTrue(mended.equals(odd) || mended.equals(even), "kill " + kill);
        }
        Sites.publish(target, source, 1, FILES, new LocalDisk());
        assertEquals(odd, Sites.contents(target));
        System.out.println("killed " + kills + " times, " + half + " within a publication, " + absent
                + " between its two renames; each time the old site or the new one stood after the next start");
    }

    private static Process start(Path target, Path source, int edition) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(List.of(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-Xshare:auto",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Replacing.class.getName(),
                        target.toString(),
                        source.toString(),
                        Integer.toString(edition),
                        Integer.toString(FILES)))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
