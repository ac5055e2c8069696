package org.evenhand.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;

/** The one thing of a camera's notes that is needed to see a picture. Source: Exif 2.32 (CIPA DC-008), 4.5 and 4.6. */
final class Exif {

    private static final String HEADER = "Exif\0\0";
    private static final int ENTRY = 12;
    private static final int ORIENTATION = 0x0112;
    private static final int SHORT = 3;

    private Exif() {}

    /** How the camera was held, 1 to 8; nothing if this is no such segment, or does not say. */
    static OptionalInt orientation(byte[] bytes, int from, int length) {
        boolean isExif = length >= HEADER.length() + 8
                && new String(bytes, from, HEADER.length(), StandardCharsets.ISO_8859_1).equals(HEADER);
        if (!isExif) {
            return OptionalInt.empty();
        }
        ByteBuffer tiff = ByteBuffer.wrap(bytes, from + HEADER.length(), length - HEADER.length())
                .slice();
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        long first = Integer.toUnsignedLong(tiff.getInt(4));
        if (first > tiff.limit() - 2L) {
            return OptionalInt.empty();
        }
        int entries = tiff.getShort((int) first) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            long at = first + 2 + (long) ENTRY * i;
            if (at > tiff.limit() - ENTRY) {
                break;
            }
            int value = tiff.getShort((int) at + 8) & 0xFFFF;
            boolean isOrientation =
                    (tiff.getShort((int) at) & 0xFFFF) == ORIENTATION && tiff.getShort((int) at + 2) == SHORT;
            if (isOrientation && value >= 1 && value <= 8) {
                return OptionalInt.of(value);
            }
        }
        return OptionalInt.empty();
    }
}
