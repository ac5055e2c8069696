package org.evenhand.chart;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.zip.Adler32;

/**
 * Compresses bytes to a zlib stream of one block, with codes made for it.
 *
 * <p>The compressor of the Java runtime is whichever zlib it was built with, and its bytes differ from one to another.
 * This one is plain and gives the same bytes everywhere.
 *
 * <p>Source: RFC 1950; RFC 1951, 3.2.5 and 3.2.7.
 */
final class Deflate {

    private static final int END = 256;
    private static final int LITERALS = 286;
    private static final int DISTANCES = 30;
    private static final int LONGEST_CODE = 15;

    /** The order in which the lengths of the codes for lengths are written. */
    private static final int[] ORDER = {16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15};

    private static final int LONGEST_CODE_OF_LENGTHS = 7;

    private static final int[] LENGTH_FROM = {
        3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227,
        258
    };
    /** The code of each length. */
    private static final byte[] LENGTH_CODE = lengthCodes();

    private static final int[] LENGTH_BITS = {
        0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0
    };
    private static final int[] DISTANCE_FROM = {
        1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049, 3073, 4097,
        6145, 8193, 12289, 16385, 24577
    };

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private int bits;
    private int bitCount;

    private Deflate() {}

    /**
     * @param data anything
     * @param hint a distance at which bytes are likely to repeat, such as the length of a row
     */
    static byte[] zlib(byte[] data, int hint) {
        Deflate deflate = new Deflate();
        // Compression method 8 with a window of 32 KiB; the second byte makes the pair a multiple of 31.
        deflate.out.write(0x78);
        deflate.out.write(0x01);
        deflate.block(Repeats.of(data, hint));
        Adler32 adler = new Adler32();
        adler.update(data);
        for (int shift = 24; shift >= 0; shift -= 8) {
            deflate.out.write((int) (adler.getValue() >>> shift));
        }
        return deflate.out.toByteArray();
    }

    /** Writes the last block, which is the only one; its kind is 2, codes of its own. */
    private void block(Repeats repeats) {
        int[] literals = new int[LITERALS];
        int[] distances = new int[DISTANCES];
        literals[END] = 1;
        repeats.forEach((length, value) -> {
            if (length == 1) {
                literals[value]++;
            } else {
                literals[END + 1 + LENGTH_CODE[length]]++;
                distances[distanceCode(value)]++;
            }
        });
        Codes ofLiterals = Codes.of(literals, LONGEST_CODE);
        Codes ofDistances = Codes.of(distances, LONGEST_CODE);
        put(1, 1);
        put(2, 2);
        codes(ofLiterals, ofDistances);
        repeats.forEach((length, value) -> {
            if (length == 1) {
                put(ofLiterals, value);
            } else {
                reference(ofLiterals, ofDistances, length, value);
            }
        });
        put(ofLiterals, END);
        if (bitCount > 0) {
            put(0, 8 - bitCount);
        }
    }

    /** Each code's length is written as it is; the short forms for runs of one length would save some hundred bytes. */
    private void codes(Codes literals, Codes distances) {
        int[] counts = new int[ORDER.length];
        literals.forEachLength(length -> counts[length]++);
        distances.forEachLength(length -> counts[length]++);
        Codes lengths = Codes.of(counts, LONGEST_CODE_OF_LENGTHS);
        put(LITERALS - 257, 5);
        put(DISTANCES - 1, 5);
        put(ORDER.length - 4, 4);
        for (int symbol : ORDER) {
            put(lengths.length(symbol), 3);
        }
        literals.forEachLength(length -> put(lengths, length));
        distances.forEachLength(length -> put(lengths, length));
    }

    private void reference(Codes literals, Codes distances, int length, int distance) {
        int code = LENGTH_CODE[length];
        put(literals, END + 1 + code);
        put(length - LENGTH_FROM[code], LENGTH_BITS[code]);
        int far = distanceCode(distance);
        put(distances, far);
        put(distance - DISTANCE_FROM[far], far < 2 ? 0 : far / 2 - 1);
    }

    /** Two codes for each power of two: the upper one for distances whose second bit is set. */
    private static int distanceCode(int distance) {
        if (distance < 3) {
            return distance - 1;
        }
        int bits = 30 - Integer.numberOfLeadingZeros(distance - 1);
        return 2 * (bits + 1) + (distance - 1 >> bits & 1);
    }

    private static byte[] lengthCodes() {
        byte[] codes = new byte[259];
        for (int code = 0; code < LENGTH_FROM.length; code++) {
            Arrays.fill(codes, LENGTH_FROM[code], codes.length, (byte) code);
        }
        return codes;
    }

    /** Codes go out with their highest bit first. */
    private void put(Codes codes, int symbol) {
        int length = codes.length(symbol);
        put(length == 0 ? 0 : Integer.reverse(codes.code(symbol)) >>> (32 - length), length);
    }

    /** Numbers go out with their lowest bit first. */
    private void put(int value, int length) {
        bits |= value << bitCount;
        bitCount += length;
        while (bitCount >= 8) {
            out.write(bits);
            bits >>>= 8;
            bitCount -= 8;
        }
    }
}
