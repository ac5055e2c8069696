package org.evenhand.site;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** All that a publication does to a file system, one operation a method, so that a test can let any of them fail. */
interface Disk {

    /** Makes a folder and those above it; nothing happens to one that is there. */
    void createFolders(Path folder) throws IOException;

    /** Writes a file that is not there yet. */
    void write(Path file, byte[] bytes) throws IOException;

    /**
     * Copies a file to where none is yet, in pieces.
     *
     * @return the digest of what was read, in hexadecimal
     */
    String copy(Path source, Path file) throws IOException;

    /**
     * Gives a file a second name, so that it need not be copied.
     *
     * @throws IOException if the file system has no such names; then nothing was done
     */
    void link(Path existing, Path name) throws IOException;

    /** Copies a file, a link (not what it leads to) or an empty folder with its times and rights. */
    void carryOver(Path from, Path to) throws IOException;

    /** Renames at one blow, or not at all. Replaces a file, but no folder that holds anything. */
    void move(Path from, Path to) throws IOException;

    void delete(Path entry) throws IOException;

    /** Everything below a folder, each folder before what it holds, links not followed; nothing if there is no folder. */
    List<Path> walk(Path folder) throws IOException;

    /** Whether anything is there, if only a link that leads nowhere. */
    boolean exists(Path entry);

    /**
     * Takes a lock that ends with the process at the latest, however that ends.
     *
     * @return what gives the lock back, or null if another process or another thread has it
     * @throws java.nio.file.NoSuchFileException if somebody deleted the file or its folder meanwhile; to be tried again
     */
    AutoCloseable lock(Path file) throws IOException;
}
