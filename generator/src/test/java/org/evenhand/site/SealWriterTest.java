package org.evenhand.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A sealed version is there whole or not at all, with each operation on the disk failing in turn. */
class SealWriterTest {

    private static final String VERSION = "answers/plate/v/1";

    @TempDir
    private Path folder;

    private static SortedMap<String, byte[]> files() {
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (String name : new String[] {
            VERSION + "/index.html", VERSION + "/evidence.json", VERSION + "/files/a.png", "assets/0f/style.css"
        }) {
            files.put(name, name.getBytes(StandardCharsets.UTF_8));
        }
        return files;
    }

    private static void write(Path root, Disk disk) throws TargetException, IOException {
        SealWriter.write(root, "plate", 1, files(), disk);
    }

    @ParameterizedTest
    @EnumSource
    void theVersionIsThereWholeOrNotAtAllAndTheNextSealingSucceeds(FaultyDisk.Fault fault) throws Exception {
        FaultyDisk counting = new FaultyDisk(FaultyDisk.Fault.NO_SPACE, Integer.MAX_VALUE);
        write(folder.resolve("counted"), counting);
        int operations = counting.operations();
        assertTrue(operations > 10, () -> "only " + operations + " operations");
        for (int failing = 0; failing < operations; failing++) {
            Path root = folder.resolve(fault + "-" + failing);
            boolean written = true;
            try {
                write(root, new FaultyDisk(fault, failing));
            } catch (IOException | FaultyDisk.Killed e) {
                written = false;
            }
            Path version = root.resolve("sealed").resolve(VERSION);
            if (!Files.exists(version)) {
                assertFalse(written, root.toString());
                write(root, new LocalDisk());
            }
            for (var file : files().entrySet()) {
                assertArrayEquals(file.getValue(), Files.readAllBytes(root.resolve("sealed/" + file.getKey())));
            }
        }
    }

    @Test
    void nothingIsEverOverwritten() throws Exception {
        write(folder, new LocalDisk());
        assertThrows(TargetException.class, () -> write(folder, new LocalDisk()));
        SortedMap<String, byte[]> other = new TreeMap<>();
        other.put("answers/plate/v/2/index.html", new byte[] {1});
        other.put("assets/0f/style.css", new byte[] {2});
        TargetException refused =
                assertThrows(TargetException.class, () -> SealWriter.write(folder, "plate", 2, other));
        assertTrue(refused.getMessage().contains("assets/0f/style.css"), refused.getMessage());
        assertFalse(Files.exists(folder.resolve("sealed/answers/plate/v/2")));
        assertEquals("assets/0f/style.css", Files.readString(folder.resolve("sealed/assets/0f/style.css")));
    }
}
