package org.evenhand.command.pack;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.CRC32;

/**
 * A file to be packed, as it was when it was looked at.
 *
 * @param source where it lies
 * @param size in bytes
 * @param crc32 as a zip names it
 * @param sha256 64 hexadecimal digits
 * @param sha512 128 hexadecimal digits
 */
public record Piece(Path source, long size, long crc32, String sha256, String sha512) {

    /** Reads a stream to its end. */
    static Piece of(Path source, InputStream in) throws IOException {
        MessageDigest sha256 = digest("SHA-256");
        MessageDigest sha512 = digest("SHA-512");
        CRC32 crc32 = new CRC32();
        long size = 0;
        byte[] buffer = new byte[1 << 16];
        for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
            sha256.update(buffer, 0, read);
            sha512.update(buffer, 0, read);
            crc32.update(buffer, 0, read);
            size += read;
        }
        HexFormat hex = HexFormat.of();
        return new Piece(
                source, size, crc32.getValue(), hex.formatHex(sha256.digest()), hex.formatHex(sha512.digest()));
    }

    static MessageDigest digest(String algorithm) {
        try {
            return MessageDigest.getInstance(algorithm);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has " + algorithm, e);
        }
    }
}
