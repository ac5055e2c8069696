package org.evenhand.site;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.evenhand.read.Sha256;

/**
 * The hidden folder beside a target in which its next site is prepared and its former one is taken apart.
 *
 * <p>It holds {@code lock}, kept locked by whoever publishes; {@code new}, the site in preparation; {@code old}, the
 * former site once it has made room; and {@code journal}, written just before that, with the digest of the new site's
 * manifest. So what a publication that was cut short has left tells by itself how to mend it:
 *
 * <ul>
 *   <li>an old site and none at the target: the new one was not put in place; the old one goes back;
 *   <li>an old site, and at the target the one that the journal names: all was done but the tidying;
 *   <li>anything else at the target is none of our doing, and nothing is touched.
 * </ul>
 */
final class Workshop {

    private static final int ATTEMPTS = 5;

    private final Disk disk;
    private final Path target;
    private final Path room;
    private final Path lockFile;
    private final Path journal;
    private final Path former;
    private AutoCloseable lock;

    private Workshop(Disk disk, Path target) {
        this.disk = disk;
        this.target = target;
        this.room = target.resolveSibling("." + target.getFileName() + ".evenhand");
        this.lockFile = room.resolve("lock");
        this.journal = room.resolve("journal");
        this.former = room.resolve("old");
    }

    /**
     * Locks the target against other publications and mends what one that was cut short has left.
     *
     * @throws TargetException if another publication is going on, or something is not ours to mend
     */
    static Workshop open(Disk disk, Path target) throws TargetException, IOException {
        Workshop workshop = new Workshop(disk, target);
        workshop.lock();
        try {
            workshop.mend();
            disk.createFolders(workshop.prepared());
            return workshop;
        } catch (TargetException | IOException e) {
            workshop.unlock();
            throw e;
        }
    }

    Path prepared() {
        return room.resolve("new");
    }

    /** Puts what was prepared in the place of what stands at the target. Fails without changing what stands there. */
    void exchange(Manifest manifest) throws IOException {
        if (!disk.exists(target)) {
            disk.move(prepared(), target);
            return;
        }
        disk.write(journal, Sha256.of(manifest.bytes()).getBytes(StandardCharsets.UTF_8));
        disk.move(target, former);
        try {
            disk.move(prepared(), target);
        } catch (IOException e) {
            disk.move(former, target);
            throw e;
        }
    }

    /** Leaves, and takes along all that was prepared or made room; what cannot be taken along now, the next one will. */
    void close() {
        try {
            if (disk.exists(former) && disk.exists(target)) {
                takeApart();
            }
            if (!disk.exists(former)) {
                clear(prepared());
                if (disk.exists(journal)) {
                    disk.delete(journal);
                }
                disk.delete(lockFile);
                disk.delete(room);
            }
        } catch (TargetException | IOException e) {
            // The site is as it should be, and the next publication tidies up before it begins.
        } finally {
            unlock();
        }
    }

    private void lock() throws TargetException, IOException {
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            disk.createFolders(room);
            if (!disk.exists(lockFile) && !disk.walk(room).isEmpty()) {
                throw new TargetException(
                        room.getFileName() + " beside the site is not of our making; move it elsewhere");
            }
            try {
                lock = disk.lock(lockFile);
            } catch (NoSuchFileException e) {
                continue; // whoever had it has just left, and the folder with them
            }
            if (lock == null) {
                throw new TargetException("another publication to " + target.getFileName()
                        + " is going on; wait until it is done, and publish again");
            }
            return;
        }
        throw new TargetException("too many publications to " + target.getFileName() + " at a time; publish again");
    }

    private void unlock() {
        try {
            if (lock != null) {
                lock.close();
            }
        } catch (Exception e) {
            // It ends with the process.
        }
    }

    private void mend() throws TargetException, IOException {
        if (disk.exists(former)) {
            if (!disk.exists(target)) {
                disk.move(former, target);
            } else if (isInPlace()) {
                takeApart();
            } else {
                throw new TargetException("a publication was cut short; the former site is in "
                        + room.getFileName() + "/old beside " + target.getFileName()
                        + ", which has been changed since: move one of them elsewhere");
            }
        }
        clear(prepared());
        if (disk.exists(journal)) {
            disk.delete(journal);
        }
    }

    private boolean isInPlace() throws IOException {
        Path manifest = target.resolve(Manifest.FILE);
        if (!disk.exists(journal) || !disk.exists(manifest)) {
            return false;
        }
        return Files.readString(journal).equals(Sha256.of(Files.readAllBytes(manifest)));
    }

    /** Deletes what we wrote of the former site, and what is a copy of what stands at the target; nothing else. */
    private void takeApart() throws TargetException, IOException {
        Set<String> ours = new HashSet<>();
        if (disk.exists(former.resolve(Manifest.FILE))) {
            ours.addAll(Manifest.of(former).digests().keySet());
        }
        List<Path> deepestFirst = new ArrayList<>(disk.walk(former));
        Collections.reverse(deepestFirst);
        for (Path entry : deepestFirst) {
            String path = Manifest.path(former, entry);
            if (path.equals(Manifest.FILE)) {
                continue; // what knows which files are ours goes last
            }
            boolean isFolder = Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS);
            if (isFolder || ours.contains(path) || isSame(entry, target.resolve(path))) {
                disk.delete(entry);
            } else {
                rescue(entry, path);
            }
        }
        if (disk.exists(former.resolve(Manifest.FILE))) {
            disk.delete(former.resolve(Manifest.FILE));
        }
        disk.delete(former);
    }

    /** Somebody wrote to this file of theirs after it was carried over. */
    private void rescue(Path entry, String path) throws TargetException, IOException {
        if (Manifest.of(target).digests().containsKey(path)) {
            throw new TargetException(path + " was put into the site while it was replaced; it is kept in "
                    + room.getFileName() + "/old beside the site: move it elsewhere");
        }
        disk.createFolders(target.resolve(path).getParent());
        disk.move(entry, target.resolve(path));
    }

    private boolean isSame(Path entry, Path copy) throws IOException {
        if (!disk.exists(copy)) {
            return false;
        }
        if (Files.isSymbolicLink(entry)) {
            return Files.isSymbolicLink(copy) && Files.readSymbolicLink(entry).equals(Files.readSymbolicLink(copy));
        }
        return Files.isRegularFile(entry)
                && Files.isRegularFile(copy, LinkOption.NOFOLLOW_LINKS)
                && Files.mismatch(entry, copy) < 0;
    }

    private void clear(Path folder) throws IOException {
        if (!disk.exists(folder)) {
            return;
        }
        List<Path> deepestFirst = new ArrayList<>(disk.walk(folder));
        Collections.reverse(deepestFirst);
        for (Path entry : deepestFirst) {
            disk.delete(entry);
        }
        disk.delete(folder);
    }
}
