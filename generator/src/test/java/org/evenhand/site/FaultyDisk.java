package org.evenhand.site;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** A disk of which one operation fails: once with an exception, or for good, as if the process had been killed there. */
final class FaultyDisk implements Disk {

    /** The end of a process, which nothing catches. */
    static final class Killed extends Error {
        private static final long serialVersionUID = 1L;
    }

    enum Fault {
        NO_SPACE,
        NO_PERMISSION,
        KILLED_BEFORE,
        KILLED_WITHIN
    }

    private final Disk disk = new LocalDisk();
    private final Fault fault;
    private final int failing;
    private int operations;
    private AutoCloseable lock;

    /** @param failing the number of the operation, from 0 */
    FaultyDisk(Fault fault, int failing) {
        this.fault = fault;
        this.failing = failing;
    }

    int operations() {
        return operations;
    }

    /** What the system does when a process has gone. */
    void die() throws Exception {
        if (lock != null) {
            lock.close();
        }
    }

    private boolean fails(Path file) throws IOException {
        int operation = operations++;
        boolean kills = fault == Fault.KILLED_BEFORE || fault == Fault.KILLED_WITHIN;
        if (kills && operation > failing) {
            throw new Killed();
        }
        if (operation != failing) {
            return false;
        }
        switch (fault) {
            case NO_SPACE -> throw new IOException("No space left on device");
            case NO_PERMISSION -> throw new AccessDeniedException(file.toString());
            case KILLED_BEFORE -> throw new Killed();
            default -> {
                return true;
            }
        }
    }

    @Override
    public void createFolders(Path folder) throws IOException {
        if (fails(folder)) {
            Files.createDirectories(folder.getParent());
            throw new Killed();
        }
        disk.createFolders(folder);
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        if (fails(file)) {
            disk.write(file, Arrays.copyOf(bytes, bytes.length / 2));
            throw new Killed();
        }
        disk.write(file, bytes);
    }

    @Override
    public String copy(Path source, Path file) throws IOException {
        if (fails(file)) {
            disk.write(file, new byte[] {1});
            throw new Killed();
        }
        return disk.copy(source, file);
    }

    @Override
    public void link(Path existing, Path name) throws IOException {
        if (fails(name)) {
            disk.link(existing, name);
            throw new Killed();
        }
        disk.link(existing, name);
    }

    @Override
    public void carryOver(Path from, Path to) throws IOException {
        if (fails(to)) {
            disk.write(to, new byte[] {1});
            throw new Killed();
        }
        disk.carryOver(from, to);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
        if (fails(from)) {
            disk.move(from, to);
            throw new Killed();
        }
        disk.move(from, to);
    }

    @Override
    public void delete(Path entry) throws IOException {
        if (fails(entry)) {
            disk.delete(entry);
            throw new Killed();
        }
        disk.delete(entry);
    }

    @Override
    public List<Path> walk(Path folder) throws IOException {
        if (fails(folder)) {
            throw new Killed();
        }
        return disk.walk(folder);
    }

    @Override
    public boolean exists(Path entry) {
        if (operations > failing && (fault == Fault.KILLED_BEFORE || fault == Fault.KILLED_WITHIN)) {
            throw new Killed();
        }
        return disk.exists(entry);
    }

    @Override
    public AutoCloseable lock(Path file) throws IOException {
        if (fails(file)) {
            Files.createFile(file);
            throw new Killed();
        }
        lock = disk.lock(file);
        return lock;
    }
}
