package org.evenhand.site;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The machine's own disk, to be interfered with. */
class ForwardingDisk implements Disk {

    private final Disk disk = new LocalDisk();

    @Override
    public void createFolders(Path folder) throws IOException {
        disk.createFolders(folder);
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        disk.write(file, bytes);
    }

    @Override
    public String copy(Path source, Path file) throws IOException {
        return disk.copy(source, file);
    }

    @Override
    public void link(Path existing, Path name) throws IOException {
        disk.link(existing, name);
    }

    @Override
    public void carryOver(Path from, Path to) throws IOException {
        disk.carryOver(from, to);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
        disk.move(from, to);
    }

    @Override
    public void delete(Path entry) throws IOException {
        disk.delete(entry);
    }

    @Override
    public List<Path> walk(Path folder) throws IOException {
        return disk.walk(folder);
    }

    @Override
    public boolean exists(Path entry) {
        return disk.exists(entry);
    }

    @Override
    public AutoCloseable lock(Path file) throws IOException {
        return disk.lock(file);
    }
}
