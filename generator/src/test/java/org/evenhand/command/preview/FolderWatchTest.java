package org.evenhand.command.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each with the notices of the system and without them. The waits are long enough for a busy machine. */
class FolderWatchTest {

    private static final long LONG_S = 20;

    @TempDir
    private Path folder;

    private final BlockingQueue<String> seen = new LinkedBlockingQueue<>();

    private FolderWatch watch;

    private void watch(boolean withNotices) {
        watch = new FolderWatch(List.of(folder), Snapshot.of(List.of(folder)), () -> seen.add(text()), withNotices);
    }

    @AfterEach
    void end() {
        watch.close();
    }

    /** What all files hold, in order. */
    private String text() {
        StringBuilder text = new StringBuilder();
        Snapshot.of(List.of(folder)).files().keySet().stream().sorted().forEach(file -> {
            try {
                text.append(Files.readString(file));
            } catch (IOException e) {
                text.append('?');
            }
        });
        return text.toString();
    }

    private void becomes(String text) throws InterruptedException {
        String last = "nothing";
        while (!last.equals(text)) {
            String next = seen.poll(LONG_S, TimeUnit.SECONDS);
            assertTrue(next != null, "waited for “" + text + "”, saw “" + last + "”");
            last = next;
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void filesThatComeChangeAndGoAreSeenInNewFoldersToo(boolean withNotices) throws Exception {
        Files.writeString(folder.resolve("a"), "1");
        watch(withNotices);
        Files.writeString(folder.resolve("a"), "2");
        becomes("2");
        Path inner = Files.createDirectories(folder.resolve("x/y"));
        Files.writeString(inner.resolve("b"), "3");
        becomes("23");
        Files.writeString(inner.resolve("b"), "4");
        becomes("24");
        Path draft = Files.writeString(folder.resolveSibling("draft"), "5");
        Files.move(draft, folder.resolve("a"), StandardCopyOption.REPLACE_EXISTING);
        becomes("54");
        Files.delete(folder.resolve("a"));
        becomes("4");
        assertEquals(0, seen.size());
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aFileOfTheSameLengthAndTimeThatTakesThePlaceOfAnotherIsSeen(boolean withNotices) throws Exception {
        Path file = Files.writeString(folder.resolve("a"), "1");
        Path draft = Files.writeString(folder.resolveSibling("draft"), "2");
        Files.setLastModifiedTime(draft, Files.getLastModifiedTime(file));
        watch(withNotices);
        Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
        becomes("2");
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aFileThatIsWrittenLineByLineIsReadOnceItIsWhole(boolean withNotices) throws Exception {
        Path file = Files.writeString(folder.resolve("a"), "");
        StringBuilder whole = new StringBuilder();
        watch(withNotices);
        for (int i = 0; i < 20; i++) {
            whole.append(i).append('\n');
            Files.writeString(file, i + "\n", StandardOpenOption.APPEND);
            Thread.sleep(5);
        }
        becomes(whole.toString());
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void hiddenFilesAreNobodysConcern(boolean withNotices) throws Exception {
        Files.writeString(folder.resolve("a"), "1");
        watch(withNotices);
        Files.writeString(Files.createDirectory(folder.resolve(".git")).resolve("b"), "2");
        Files.writeString(folder.resolve(".a.swp"), "3");
        Thread.sleep(1000);
        assertEquals(0, seen.size());
        Files.writeString(folder.resolve("a"), "4");
        becomes("4");
    }
}
