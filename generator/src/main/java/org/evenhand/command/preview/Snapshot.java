package org.evenhand.command.preview;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How some folders stood at a moment: each file with its size, its time and what tells it from one that took its place.
 * Two that are equal hold the same bytes, unless a file was altered twice within one tick of the file system's clock.
 * Hidden files and folders are left out: nothing is read from them.
 *
 * @param files by their path
 * @param folders that hold them, the outermost first
 */
record Snapshot(Map<Path, Stamp> files, List<Path> folders) {

    /**
     * What is known of a file without reading it.
     *
     * @param size in bytes
     * @param modified when it was last written
     * @param identity as the file system tells it; the word "null" where it does not
     */
    record Stamp(long size, FileTime modified, String identity) {

        static Stamp of(BasicFileAttributes file) {
            return new Stamp(file.size(), file.lastModifiedTime(), String.valueOf(file.fileKey()));
        }
    }

    /** Looks at all that lies in the folders; what cannot be looked at is left out. */
    static Snapshot of(List<Path> roots) {
        Map<Path, Stamp> files = new HashMap<>();
        List<Path> folders = new ArrayList<>();
        for (Path root : roots) {
            try {
                Files.walkFileTree(root, new Visitor(root, files, folders));
            } catch (IOException e) {
                continue; // the folder went away: it holds nothing, and the next look may find it again
            }
        }
        return new Snapshot(files, folders);
    }

    private static final class Visitor extends SimpleFileVisitor<Path> {

        private final Path root;
        private final Map<Path, Stamp> files;
        private final List<Path> folders;

        Visitor(Path root, Map<Path, Stamp> files, List<Path> folders) {
            this.root = root;
            this.files = files;
            this.folders = folders;
        }

        @Override
        public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
            if (!folder.equals(root) && isHidden(folder)) {
                return FileVisitResult.SKIP_SUBTREE;
            }
            folders.add(folder);
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
            if (isHidden(file)) {
                return FileVisitResult.CONTINUE;
            }
            // A link is as old as what it leads to.
            BasicFileAttributes meant = attributes.isSymbolicLink() && Files.exists(file)
                    ? Files.readAttributes(file, BasicFileAttributes.class)
                    : attributes;
            files.put(file, Stamp.of(meant));
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException e) {
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path folder, IOException e) {
            return FileVisitResult.CONTINUE;
        }

        private static boolean isHidden(Path path) {
            return path.getFileName() != null && path.getFileName().toString().startsWith(".");
        }
    }
}
