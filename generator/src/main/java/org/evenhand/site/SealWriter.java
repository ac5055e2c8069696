package org.evenhand.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import org.evenhand.model.Seal;
import org.evenhand.read.Seals;

/**
 * Puts a sealed version into a results folder: whole or not at all, and never over anything that is there.
 *
 * <p>It is prepared beside its place and put there by one rename. Style sheets and fonts, which versions share, go first: they
 * are named by their content, so that those of a sealing that was cut short are those of the next.
 */
public final class SealWriter {

    private static final String PREPARED = ".new-";

    private final Disk disk;
    private final Path tree;

    private SealWriter(Disk disk, Path root) {
        this.disk = disk;
        this.tree = root.resolve(Seals.FOLDER);
    }

    /**
     * Writes a version.
     *
     * @param root the results folder
     * @param files of the version by their path below the sealed folder
     * @throws TargetException if that version is sealed already, or something else is in its place
     * @throws IOException if it cannot be written; then nothing of it is there
     */
    public static void write(Path root, String study, int version, SortedMap<String, byte[]> files)
            throws TargetException, IOException {
        write(root, study, version, files, new LocalDisk());
    }

    static void write(Path root, String study, int version, SortedMap<String, byte[]> files, Disk disk)
            throws TargetException, IOException {
        new SealWriter(disk, root).write(Seal.folder(study, version), files);
    }

    private void write(String folder, SortedMap<String, byte[]> files) throws TargetException, IOException {
        Path place = tree.resolve(folder);
        if (disk.exists(place)) {
            throw new TargetException(Seals.FOLDER + "/" + folder + " is there already, and stays as it is");
        }
        for (Path above = place.getParent(); !above.equals(tree.getParent()); above = above.getParent()) {
            if (Files.isSymbolicLink(above)) {
                throw new TargetException(
                        above.getFileName() + " in the results folder is a link; what is sealed lies in it");
            }
        }
        disk.createFolders(place.getParent());
        Path prepared = place.resolveSibling(PREPARED + place.getFileName());
        clear(prepared); // of a sealing that was cut short
        try {
            for (var file : files.entrySet()) {
                if (file.getKey().startsWith(folder)) {
                    Path to = prepared.resolve(file.getKey().substring(folder.length()));
                    disk.createFolders(to.getParent());
                    disk.write(to, file.getValue());
                } else {
                    shared(file.getKey(), file.getValue());
                }
            }
            disk.move(prepared, place);
        } catch (IOException e) {
            clearQuietly(prepared);
            throw e;
        }
    }

    private void shared(String path, byte[] bytes) throws TargetException, IOException {
        Path file = tree.resolve(path);
        if (disk.exists(file)) {
            boolean isSame = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                    && java.util.Arrays.equals(Files.readAllBytes(file), bytes);
            if (!isSame) {
                throw new TargetException(
                        Seals.FOLDER + "/" + path + " is not what its name says; put it back as it was");
            }
            return;
        }
        disk.createFolders(file.getParent());
        Path prepared = file.resolveSibling(PREPARED + file.getFileName());
        clear(prepared);
        disk.write(prepared, bytes);
        disk.move(prepared, file);
    }

    private void clear(Path entry) throws IOException {
        if (!disk.exists(entry)) {
            return;
        }
        if (Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
            List<Path> deepestFirst = new ArrayList<>(disk.walk(entry));
            Collections.reverse(deepestFirst);
            for (Path below : deepestFirst) {
                disk.delete(below);
            }
        }
        disk.delete(entry);
    }

    private void clearQuietly(Path entry) {
        try {
            clear(entry);
        } catch (IOException e) {
            // It is hidden, nobody reads it, and the next sealing clears it.
        }
    }
}
