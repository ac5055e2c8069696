package org.evenhand.site;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.evenhand.read.Sha256;

/** The file systems that the machine has. */
final class LocalDisk implements Disk {

    @Override
    public void createFolders(Path folder) throws IOException {
        Files.createDirectories(folder);
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        Files.write(file, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    @Override
    public String copy(Path source, Path file) throws IOException {
        MessageDigest digest = Sha256.begun();
        byte[] piece = new byte[1 << 16];
        try (InputStream in = Files.newInputStream(source);
                OutputStream out = Files.newOutputStream(file, StandardOpenOption.CREATE_NEW)) {
            for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
                digest.update(piece, 0, read);
                out.write(piece, 0, read);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    @Override
    public void link(Path existing, Path name) throws IOException {
        try {
            Files.createLink(name, existing);
        } catch (UnsupportedOperationException e) {
            throw new IOException(e);
        }
    }

    @Override
    public void carryOver(Path from, Path to) throws IOException {
        Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void delete(Path entry) throws IOException {
        Files.delete(entry);
    }

    @Override
    public List<Path> walk(Path folder) throws IOException {
        if (!exists(folder)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.walk(folder)) {
            return entries.filter(entry -> !entry.equals(folder)).sorted().toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    @Override
    public boolean exists(Path entry) {
        return Files.exists(entry, LinkOption.NOFOLLOW_LINKS);
    }

    @Override
    public AutoCloseable lock(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            // Behind all text, so that the text can be read wherever locks keep readers out too.
            FileLock lock = channel.tryLock(Long.MAX_VALUE - 1, 1, false);
            if (lock == null) {
                channel.close();
                return null;
            }
            String mark = "process " + ProcessHandle.current().pid() + ", " + UUID.randomUUID() + "\n";
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(mark.getBytes(StandardCharsets.UTF_8)));
            if (Files.readString(file).equals(mark)) {
                return channel;
            }
            // The file was deleted before it was locked; the one that is there now is another's.
            throw new NoSuchFileException(file.toString());
        } catch (OverlappingFileLockException e) {
            channel.close();
            return null;
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }
}
