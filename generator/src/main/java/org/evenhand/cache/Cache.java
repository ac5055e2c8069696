package org.evenhand.cache;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.evenhand.read.Sha256;

/**
 * A folder of what was computed before, one file for each key; safe for several threads and processes at once.
 *
 * <p>An entry is put in place by a rename, and begins with a digest of its key and its bytes: one that does not match is
 * passed over.
 */
public final class Cache {

    private static final int DIGEST = 32;

    private final Optional<Path> folder;
    private final String program;
    private final AtomicLong names = new AtomicLong();
    private final AtomicLong written = new AtomicLong();
    private final FileTime began;

    private Cache(Optional<Path> folder, String program, FileTime began) {
        this.folder = folder;
        this.program = program;
        this.began = began;
    }

    /** One that keeps nothing. */
    public static Cache none() {
        return new Cache(Optional.empty(), "", FileTime.fromMillis(0));
    }

    /**
     * The cache in a folder, which is made if need be; one that keeps nothing if it cannot be.
     *
     * @param program what tells one build of the program from any other
     */
    public static Cache in(Path folder, String program) {
        try {
            Files.createDirectories(folder);
            Path mark = Files.createTempFile(folder, "began", "");
            FileTime now = Files.getLastModifiedTime(mark); // by the clock of the file system
            Files.delete(mark);
            return new Cache(Optional.of(folder), program, now);
        } catch (IOException | RuntimeException e) {
            return none();
        }
    }

    public boolean keepsNothing() {
        return folder.isEmpty();
    }

    /**
     * The key of what is made of some values: text, numbers and records. Where one of them cannot be taken apart there is
     * none, it is empty, and nothing is kept under it.
     */
    public String key(String purpose, Object... of) {
        if (keepsNothing()) {
            return "";
        }
        try {
            byte[] bytes = Packed.of(Arrays.asList(program, purpose, Arrays.asList(of)));
            return HexFormat.of().formatHex(Sha256.begun().digest(bytes));
        } catch (IllegalArgumentException | ClassCastException e) {
            return "";
        }
    }

    /** The record that was put under a key, if it is still there and whole. */
    public <T extends Record> Optional<T> get(String key, Class<T> type) {
        return get(key).flatMap(bytes -> Packed.unpack(bytes, type));
    }

    /** Keeps a record under a key; what cannot be kept is not. */
    public void put(String key, Record value) {
        try {
            put(key, Packed.of(value));
        } catch (IllegalArgumentException | ClassCastException e) {
            // It is made again the next time.
        }
    }

    /** What was put under a key, if it is still there and whole. */
    public Optional<byte[]> get(String key) {
        if (folder.isEmpty() || key.isEmpty()) {
            return Optional.empty();
        }
        try {
            byte[] entry = Files.readAllBytes(file(key));
            byte[] bytes = entry.length < DIGEST ? null : Arrays.copyOfRange(entry, DIGEST, entry.length);
            boolean whole = bytes != null && Arrays.equals(Arrays.copyOf(entry, DIGEST), seal(key, bytes));
            return whole ? Optional.of(bytes) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Keeps bytes under a key; what cannot be kept is not. */
    public void put(String key, byte[] bytes) {
        if (folder.isEmpty() || key.isEmpty()) {
            return;
        }
        Path file = file(key);
        Path aside = file.resolveSibling(
                key + "." + ProcessHandle.current().pid() + "." + names.incrementAndGet() + ".part");
        byte[] entry = Arrays.copyOf(seal(key, bytes), DIGEST + bytes.length);
        System.arraycopy(bytes, 0, entry, DIGEST, bytes.length);
        try {
            try {
                Files.write(aside, entry);
            } catch (NoSuchFileException e) {
                Files.createDirectories(file.getParent());
                Files.write(aside, entry);
            }
            Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE);
            written.addAndGet(entry.length);
        } catch (IOException e) {
            delete(aside);
        }
    }

    /**
     * The SHA-256 of a file, in hexadecimal: known from the last time if the file system says that it is unchanged since.
     *
     * @throws IOException if it cannot be read
     */
    public String sha256(Path file) throws IOException {
        if (folder.isEmpty()) {
            return Sha256.of(file);
        }
        FileState before = FileState.of(file);
        Optional<String> known = sha256(before);
        if (known.isPresent()) {
            return known.get();
        }
        String found = Sha256.of(file);
        if (before.isOlderThan(began) && FileState.of(file).equals(before)) {
            remember(before, found);
        }
        return found;
    }

    /** The SHA-256 of a file in a state, if it is known. */
    public Optional<String> sha256(FileState state) {
        return get(key("file", state.toString())).map(bytes -> new String(bytes, StandardCharsets.US_ASCII));
    }

    /** Takes note of what a file in a state holds. */
    public void remember(FileState state, String sha256) {
        put(key("file", state.toString()), sha256.getBytes(StandardCharsets.US_ASCII));
    }

    /**
     * A digest of what a file system tells of all files below a folder, links not followed, but for hidden ones: it stays
     * the same as long as none is added, taken away or written to.
     *
     * @param settled whether there must be no file that may be written to without a trace, because it was just now
     * @return nothing if the folder cannot be read, or holds a file that is not settled
     */
    public Optional<String> states(Path folder, boolean settled) {
        try {
            List<FileState> states = FileState.below(folder.toRealPath());
            return settled && !states.stream().allMatch(state -> state.isOlderThan(began))
                    ? Optional.empty()
                    : Optional.of(key(
                            "states", states.stream().map(FileState::toString).toList()));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Deletes what was not written for the longest time, if there is more than so many bytes and this process added to them. */
    public void trim(long mostBytes) {
        if (folder.isPresent() && written.get() > 0) {
            Trimming.of(folder.get(), mostBytes);
        }
    }

    private Path file(String key) {
        return folder.orElseThrow().resolve(key.substring(0, 2)).resolve(key);
    }

    private static byte[] seal(String key, byte[] bytes) {
        MessageDigest digest = Sha256.begun();
        digest.update(key.getBytes(StandardCharsets.US_ASCII));
        return digest.digest(bytes);
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // It is in nobody's way.
        }
    }
}
