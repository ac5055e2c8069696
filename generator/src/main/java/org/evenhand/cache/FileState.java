package org.evenhand.cache;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a file system tells of a file without reading it.
 *
 * @param path absolute
 * @param size in bytes
 * @param modified when it was last written to
 * @param identity what the file system knows it by; it changes when another file takes the name
 */
public record FileState(Path path, long size, FileTime modified, String identity) {

    /** How long before the clock of the file system a time may lie and still be shared by a later change, in ms. */
    private static final long COARSEST_CLOCK_MS = 2000;

    /** @throws IOException if there is no such file */
    public static FileState of(Path file) throws IOException {
        return of(file, Files.readAttributes(file, BasicFileAttributes.class));
    }

    static FileState of(Path file, BasicFileAttributes attributes) {
        return new FileState(
                file.toAbsolutePath().normalize(),
                attributes.size(),
                attributes.lastModifiedTime(),
                String.valueOf(attributes.fileKey()));
    }

    /** Those of all files below a folder but for hidden ones, by path; links are not followed. */
    static List<FileState> below(Path folder) throws IOException {
        List<FileState> states = new ArrayList<>();
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path below, BasicFileAttributes attributes) {
                return isHidden(below) && !below.equals(folder)
                        ? FileVisitResult.SKIP_SUBTREE
                        : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (!isHidden(file)) {
                    states.add(of(file, attributes));
                }
                return FileVisitResult.CONTINUE;
            }
        });
        states.sort(Comparator.comparing(FileState::path));
        return states;
    }

    private static boolean isHidden(Path path) {
        return path.getFileName() != null && path.getFileName().toString().startsWith(".");
    }

    /** Whether a change since then is bound to show: one made right after another may leave the same time behind. */
    boolean isOlderThan(FileTime now) {
        return modified.toMillis() < now.toMillis() - COARSEST_CLOCK_MS;
    }

    @Override
    public String toString() {
        return path + " " + size + " " + modified + " " + identity;
    }
}
