package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.evenhand.cache.Cache;
import org.evenhand.command.preview.Preview;
import org.evenhand.model.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A folder is edited over and over while a browser follows. A long run, on a folder of one's own:
 * {@code mvn test -Dtest=PreviewSoakTest -DargLine="-Devenhand.changes=1000 -Devenhand.results=../sample-results
 * -Devenhand.study=heat-spreader"} tells times, memory and threads.
 */
class PreviewSoakTest {

    private static final int CHANGES = Integer.getInteger("evenhand.changes", 30);
    private static final int WARM = 20;

    @TempDir
    private Path root;

    private Given given;
    private String study = "plate";
    private final Random random = new Random(20260302);

    @Test
    void noChangeIsMissedNoPageIsStaleAndNothingPilesUp() throws Exception {
        String results = System.getProperty("evenhand.results");
        given = results == null
                ? Given.soundFolderIn(root.resolve("results"))
                : Given.copyOf(Path.of(results), root.resolve("results"));
        study = System.getProperty("evenhand.study", study);
        String question = "/answers/" + study + "/index.html";
        List<Long> timesMs = new ArrayList<>();
        List<String> figures = new ArrayList<>();
        int threads = 0;
        Cache cache = Cache.in(
                Path.of("target", "preview-cache"), ProcessHandle.current().toString());
        try (Preview preview =
                new Preview(given.root(), Optional.empty(), Limits.DEFAULT, "x", 0, cache, renewal -> {})) {
            preview.begin();
            Browsing browser = new Browsing(preview.address());
            String page = browser.get(question).body();
            for (int change = 1; change <= CHANGES; change++) {
                String mark = "Change " + change + "?";
                long begun = System.nanoTime();
                edit(mark);
                while (!page.contains(mark)) {
                    browser.editionAfter(Browsing.edition(page));
                    page = browser.get(question).body();
                }
                timesMs.add((System.nanoTime() - begun) / 1_000_000);
                assertTrue(browser.get("/").body().contains(mark), "the front page is of the same edition");
                if (change == Math.min(WARM, CHANGES)) {
                    threads = threads();
                }
                if (change == WARM || change % 250 == 0 || change == CHANGES) {
                    figures.add("after " + change + " changes: " + threads() + " threads, " + heapMb() + " MB of heap, "
                            + openFiles() + " open files");
                }
            }
            assertTrue(threads() <= threads + 8, "threads: " + threads + ", then " + threads());
        }
        tell(timesMs, figures);
    }

    /** Writes the question anew: at one blow, in place, or by and by; sometimes with an error in between. */
    private void edit(String mark) throws IOException, InterruptedException {
        Path file = given.root().resolve("studies/" + study + "/study.md");
        String text = Files.readString(file).replaceFirst("(?m)^question: .*$", "question: \"" + mark + "\"");
        switch (random.nextInt(4)) {
            case 0 -> {
                Path draft = Files.writeString(file.resolveSibling(".study.md.new"), text);
                Files.move(draft, file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            }
            case 1 -> Files.writeString(file, text);
            case 2 -> {
                int half = text.length() / 2;
                Files.writeString(file, text.substring(0, half));
                Thread.sleep(random.nextInt(20));
                Files.writeString(file, text.substring(half), StandardOpenOption.APPEND);
            }
            default -> {
                Path publication = given.root().resolve("publication.yaml");
                String sound = Files.readString(publication);
                Files.writeString(publication, "title: [");
                Thread.sleep(random.nextInt(20));
                Files.writeString(publication, sound);
                Files.writeString(file, text);
            }
        }
    }

    private static int threads() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return threads.getThreadCount();
    }

    private static long heapMb() {
        System.gc();
        return (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) / 1_000_000;
    }

    private static long openFiles() throws IOException {
        Path open = Path.of("/proc/self/fd");
        if (!Files.isDirectory(open)) {
            return -1;
        }
        try (Stream<Path> files = Files.list(open)) {
            return files.count();
        }
    }

    private static void tell(List<Long> timesMs, List<String> figures) throws IOException {
        if (Integer.getInteger("evenhand.changes") == null) {
            return;
        }
        assertEquals(CHANGES, timesMs.size());
        List<Long> warm = new ArrayList<>(timesMs.subList(Math.min(WARM, timesMs.size() - 1), timesMs.size()));
        Collections.sort(warm);
        try (PrintStream out = new PrintStream(Files.newOutputStream(Path.of("target/preview-soak.txt")))) {
            figures.forEach(out::println);
            out.println("from the edit to the new page, warm: median " + warm.get(warm.size() / 2)
                    + " ms, of 20 the slowest " + warm.get(warm.size() * 19 / 20) + " ms, the slowest of all "
                    + warm.get(warm.size() - 1) + " ms");
            out.println("the first ten: " + timesMs.subList(0, Math.min(10, timesMs.size())));
        }
    }
}
