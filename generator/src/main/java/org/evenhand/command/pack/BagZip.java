package org.evenhand.command.pack;

import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.time.LocalDateTime;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a package as a zip: one folder, sorted, nothing compressed, every file of one date. So the same folders give the same
 * bytes under every Java, and one damaged place damages one file.
 */
public final class BagZip {

    /** Not the first day that a zip can name: for that one Java would add the time zone of the machine. */
    private static final LocalDateTime DATE = LocalDateTime.of(2000, 1, 1, 0, 0);

    private BagZip() {}

    /**
     * Writes the package beside its place and puts it there once it is whole.
     *
     * @param target a file that is not there yet; its name without ".zip" names the folder within
     * @param about what bag-info.txt says besides, by label
     * @return the SHA-256 of the zip
     * @throws PackException if a file changed since it was looked at
     * @throws IOException if the zip cannot be written, or is there already
     */
    public static String write(Path target, Payload payload, Map<String, String> about)
            throws PackException, IOException {
        Path draft = target.resolveSibling("." + target.getFileName() + ".part");
        MessageDigest digest = Piece.digest("SHA-256");
        try (OutputStream file = Files.newOutputStream(draft, StandardOpenOption.CREATE_NEW)) {
            try {
                OutputStream out = new BufferedOutputStream(new DigestOutputStream(file, digest), 1 << 16);
                try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
                    zip.setMethod(ZipOutputStream.STORED);
                    write(zip, folder(target), payload, about);
                }
                Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(draft);
            }
        } catch (FileAlreadyExistsException e) {
            throw new PackException(draft + " is there: the same is being packed, or was when the program was ended;"
                    + " in that case take it away");
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static String folder(Path target) {
        String name = target.getFileName().toString();
        return name.substring(0, name.length() - ".zip".length()) + "/";
    }

    private static void write(ZipOutputStream zip, String folder, Payload payload, Map<String, String> about)
            throws PackException, IOException {
        SortedMap<String, byte[]> tags = TagFiles.of(payload, about);
        SortedMap<String, Piece> all = new TreeMap<>(payload.pieces());
        tags.forEach((name, bytes) -> all.put(name, TagFiles.piece(bytes)));
        for (Map.Entry<String, Piece> entry : all.entrySet()) {
            byte[] tag = tags.get(entry.getKey());
            try (InputStream in = tag == null
                    ? Files.newInputStream(entry.getValue().source(), LinkOption.NOFOLLOW_LINKS)
                    : new ByteArrayInputStream(tag)) {
                write(zip, folder + entry.getKey(), entry.getValue(), in);
            }
        }
    }

    private static void write(ZipOutputStream zip, String name, Piece piece, InputStream in)
            throws PackException, IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(DATE);
        entry.setSize(piece.size());
        entry.setCrc(piece.crc32());
        zip.putNextEntry(entry);
        MessageDigest sha256 = Piece.digest("SHA-256");
        byte[] buffer = new byte[1 << 16];
        long left = piece.size();
        int read = in.read(buffer);
        while (read >= 0 && read <= left) {
            sha256.update(buffer, 0, read);
            zip.write(buffer, 0, read);
            left -= read;
            read = in.read(buffer);
        }
        boolean isSame = read < 0
                && left == 0
                && HexFormat.of().formatHex(sha256.digest()).equals(piece.sha256());
        if (!isSame) {
            throw new PackException(name + " changed while it was packed; pack again when nobody writes to it");
        }
        zip.closeEntry();
    }
}
