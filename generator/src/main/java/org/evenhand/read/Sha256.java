package org.evenhand.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Digests after FIPS 180-4, in 64 lower-case hexadecimal digits. */
public final class Sha256 {

    private Sha256() {}

    /** A digest to be fed. */
    public static MessageDigest begun() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    public static String of(byte[] bytes) {
        return HexFormat.of().formatHex(begun().digest(bytes));
    }

    /** @throws IOException if the file cannot be read to its end */
    public static String of(Path file) throws IOException {
        MessageDigest digest = begun();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}
