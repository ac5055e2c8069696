package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.evenhand.model.ResultsFolder;
import org.evenhand.read.FolderReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A structured file that changes after it was read stops a publication; logs and pictures have tests of their own. */
class UnchangedTest {

    @Test
    void aStructuredFileThatChangesAfterItWasReadIsNamed(@TempDir Path folder) throws IOException {
        Files.createDirectories(folder.resolve("items"));
        Files.writeString(
                folder.resolve("publication.yaml"),
                "title: T\npublisher: P\nbase-url: https://results.example.org/\nlicence: CC0-1.0\n");
        Path item = folder.resolve("items/board.yaml");
        Files.writeString(item, "item: board\nname: Board\nkind: computer\n");
        ResultsFolder read = FolderReader.read(folder);
        assertEquals(2, read.digests().size());
        Unchanged.check(read, folder);
        Files.writeString(item, "item: board\nname: Bored\nkind: computer\n");
        IOException e = assertThrows(IOException.class, () -> Unchanged.check(read, folder));
        assertEquals("items/board.yaml changed meanwhile; try again when nobody writes to the folder", e.getMessage());
    }
}
