package org.evenhand.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.zip.CRC32;
import org.evenhand.model.Limits;

/** Takes out of a PNG what is needed to see it. Source: W3C PNG Specification, third edition, 5 and 11. */
final class PngSource {

    private static final int SIGNATURE = 8;

    /** Whatever else there may be (texts, times, profiles, positions, compressed or not) is left behind unread. */
    private static final Set<String> NEEDED = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");

    private PngSource() {}

    static Source read(byte[] bytes, Limits limits) throws UnfitException {
        ByteArrayOutputStream kept = new ByteArrayOutputStream(bytes.length);
        kept.write(bytes, 0, SIGNATURE);
        ByteBuffer in = ByteBuffer.wrap(bytes, SIGNATURE, bytes.length - SIGNATURE);
        boolean begun = false;
        while (in.remaining() >= 12) {
            int at = in.position();
            int length = in.getInt();
            if (!(length >= 0 && length <= in.remaining() - 8)) {
                throw UnfitException.damaged("ends-early");
            }
            String type = new String(bytes, at + 4, 4, StandardCharsets.ISO_8859_1);
            if (begun == type.equals("IHDR")) {
                throw UnfitException.damaged("header-elsewhere");
            }
            CRC32 crc = new CRC32();
            crc.update(bytes, at + 4, 4 + length);
            if ((int) crc.getValue() != in.getInt(at + 8 + length)) {
                throw UnfitException.damaged("checksum");
            }
            if (!begun) {
                checkHeader(in, at, length, limits);
                begun = true;
            }
            if (type.equals("acTL")) {
                throw UnfitException.of("moves");
            }
            if (NEEDED.contains(type)) {
                kept.write(bytes, at, 12 + length);
            }
            if (type.equals("IEND")) {
                return new Source("png", kept.toByteArray(), 1);
            }
            in.position(at + 12 + length);
        }
        throw UnfitException.damaged("ends-early");
    }

    private static void checkHeader(ByteBuffer in, int at, int length, Limits limits) throws UnfitException {
        if (length != 13) {
            throw UnfitException.damaged("header-length");
        }
        Signature.checkSize(in.getInt(at + 8), in.getInt(at + 12), limits);
    }
}
