package org.evenhand.cache;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Optional;

/**
 * Records as bytes, and back.
 *
 * <p>The same value always gives the same bytes, so that they also serve to make a key of it. Records of this program are
 * taken apart into their components: enumerations, text, numbers, dates, arrays of numbers, optional values, lists, sets,
 * maps and records again. Anything else is refused.
 */
public final class Packed {

    private Packed() {}

    /** @throws IllegalArgumentException if there is anything in it that is not taken apart */
    public static byte[] of(Object value) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 12);
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            new Packer(out).put(value);
        } catch (IOException e) {
            throw new IllegalStateException("memory cannot be full of bytes", e);
        }
        return bytes.toByteArray();
    }

    /** What was packed; nothing if these bytes are not of that class, or of another version of it. */
    public static <T> Optional<T> unpack(byte[] bytes, Class<T> type) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            Object value = new Unpacker(in).get();
            return type.isInstance(value) ? Optional.of(type.cast(value)) : Optional.empty();
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }
}
