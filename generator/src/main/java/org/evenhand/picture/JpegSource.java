package org.evenhand.picture;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import org.evenhand.model.Limits;

/**
 * Takes out of a JPEG what is needed to see it.
 *
 * <p>Source: ITU-T T.81 (ISO/IEC 10918-1), annex B, for the segments; ITU-T T.871, 10, for the JFIF header; ITU-T T.872,
 * 6.5.3, for Adobe's marker of the colour transform.
 */
final class JpegSource {

    private static final int SOI = 0xD8;
    private static final int EOI = 0xD9;
    private static final int SOS = 0xDA;
    private static final int APP1 = 0xE1;
    private static final int APP14 = 0xEE;

    /** Version 1.1, square pixels, no thumbnail: says that the colours are YCbCr. */
    private static final byte[] JFIF = {
        (byte) 0xFF, (byte) 0xE0, 0, 16, 'J', 'F', 'I', 'F', 0, 1, 1, 0, 0, 1, 0, 1, 0, 0
    };

    /** Says that there is no transform: the colours are red, green and blue. */
    private static final byte[] PLAIN_RGB = {
        (byte) 0xFF, (byte) APP14, 0, 14, 'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, 0
    };

    /** A progressive picture has about ten; each costs as much as the whole picture. */
    private static final int MOST_SCANS = 100;

    private final byte[] bytes;
    private final Limits limits;
    private final ByteArrayOutputStream kept;
    private int at = 2;
    private int orientation = 1;
    private int transform = -1;
    private int components;
    private boolean namedRgb;
    private int scans;

    private JpegSource(byte[] bytes, Limits limits) {
        this.bytes = bytes;
        this.limits = limits;
        this.kept = new ByteArrayOutputStream(bytes.length);
    }

    static Source read(byte[] bytes, Limits limits) throws UnfitException {
        return new JpegSource(bytes, limits).read();
    }

    private Source read() throws UnfitException {
        while (true) {
            int marker = marker();
            if (marker == EOI) {
                return end();
            }
            int length = at + 2 <= bytes.length ? u16(at) : 0;
            if (!(length >= 2 && at + length <= bytes.length)) {
                throw UnfitException.damaged("ends-early");
            }
            segment(marker, length);
            at += length;
            if (marker == SOS) {
                scan();
            }
        }
    }

    /** Any number of bytes 0xFF may stand in front of a marker. */
    private int marker() throws UnfitException {
        if (at >= bytes.length || bytes[at] != (byte) 0xFF) {
            throw UnfitException.damaged(at >= bytes.length ? "ends-early" : "no-marker");
        }
        while (at < bytes.length && bytes[at] == (byte) 0xFF) {
            at++;
        }
        if (at >= bytes.length) {
            throw UnfitException.damaged("ends-early");
        }
        return bytes[at++] & 0xFF;
    }

    private void segment(int marker, int length) throws UnfitException {
        switch (marker) {
            case APP1 ->
                orientation = Exif.orientation(bytes, at + 2, length - 2).orElse(orientation);
            case APP14 -> {
                if (length >= 14 && new String(bytes, at + 2, 5, StandardCharsets.ISO_8859_1).equals("Adobe")) {
                    transform = bytes[at + 13] & 0xFF;
                }
            }
            // Baseline, extended and progressive frames with Huffman codes.
            case 0xC0, 0xC1, 0xC2 -> {
                frame(length);
                keep(marker, length);
            }
            // Tables of Huffman codes and quantisers, the restart interval, the header of a scan.
            case 0xC4, 0xDB, 0xDD -> keep(marker, length);
            case SOS -> {
                if (++scans > MOST_SCANS || components == 0) {
                    throw components == 0
                            ? UnfitException.damaged("no-header")
                            : UnfitException.damaged("scans", MOST_SCANS);
                }
                keep(marker, length);
            }
            default -> {
                boolean isMetadata = marker >= 0xE0 && marker <= 0xEF || marker == 0xFE;
                if (!isMetadata) {
                    throw UnfitException.of("rare-jpeg", Integer.toHexString(marker));
                }
            }
        }
    }

    private void frame(int length) throws UnfitException {
        if (components != 0 || length < 8) {
            throw UnfitException.damaged("header");
        }
        components = bytes[at + 7] & 0xFF;
        if (length != 8 + 3 * components || components == 0) {
            throw UnfitException.damaged("header");
        }
        if (bytes[at + 2] != 8 || components != 1 && components != 3) {
            throw UnfitException.of("for-print", components, (int) bytes[at + 2]);
        }
        Signature.checkSize(u16(at + 5), u16(at + 3), limits);
        namedRgb = components == 3 && bytes[at + 8] == 'R' && bytes[at + 11] == 'G' && bytes[at + 14] == 'B';
    }

    /** Goes over the coded picture: in it 0xFF is followed by 0, or by a marker to restart. */
    private void scan() throws UnfitException {
        int from = at;
        while (at + 1 < bytes.length) {
            int next = bytes[at + 1] & 0xFF;
            if (bytes[at] == (byte) 0xFF && next != 0 && !(next >= 0xD0 && next <= 0xD7)) {
                kept.write(bytes, from, at - from);
                return;
            }
            at++;
        }
        throw UnfitException.damaged("ends-early");
    }

    private Source end() throws UnfitException {
        if (scans == 0) {
            throw UnfitException.damaged("nothing-seen");
        }
        ByteArrayOutputStream whole = new ByteArrayOutputStream(kept.size() + 32);
        mark(whole, SOI);
        boolean isRgb = components == 3 && (transform < 0 ? namedRgb : transform == 0);
        whole.writeBytes(isRgb ? PLAIN_RGB : JFIF);
        whole.writeBytes(kept.toByteArray());
        mark(whole, EOI);
        return new Source("jpeg", whole.toByteArray(), orientation);
    }

    private void keep(int marker, int length) {
        mark(kept, marker);
        kept.write(bytes, at, length);
    }

    private static void mark(ByteArrayOutputStream to, int marker) {
        to.write(0xFF);
        to.write(marker);
    }

    private int u16(int index) {
        return (bytes[index] & 0xFF) << 8 | bytes[index + 1] & 0xFF;
    }
}
