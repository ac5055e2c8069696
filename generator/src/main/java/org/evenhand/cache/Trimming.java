package org.evenhand.cache;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Keeps a cache from growing without end. */
final class Trimming {

    /** An entry. */
    private record Entry(Path file, long size, long modifiedMs) {}

    private Trimming() {}

    /** Deletes the oldest entries until three quarters of so many bytes are left, if there are more than that. */
    static void of(Path folder, long mostBytes) {
        try {
            List<Entry> entries = entries(folder);
            long bytes = entries.stream().mapToLong(Entry::size).sum();
            if (bytes <= mostBytes) {
                return;
            }
            entries.sort(Comparator.comparingLong(Entry::modifiedMs).thenComparing(Entry::file));
            for (Entry entry : entries) {
                if (bytes <= mostBytes / 4 * 3) {
                    return;
                }
                Files.deleteIfExists(entry.file());
                bytes -= entry.size();
            }
        } catch (IOException e) {
            // Somebody else is at it, or may; there is always a next time.
        }
    }

    private static List<Entry> entries(Path folder) throws IOException {
        List<Entry> entries = new ArrayList<>();
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                entries.add(new Entry(
                        file, attributes.size(), attributes.lastModifiedTime().toMillis()));
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
                return FileVisitResult.CONTINUE; // gone meanwhile
            }
        });
        return entries;
    }
}
