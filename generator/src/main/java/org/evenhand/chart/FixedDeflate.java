package org.evenhand.chart;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.zip.Adler32;

/**
 * Compresses bytes to a zlib stream of one block with the fixed codes.
 *
 * <p>The compressor of the Java runtime is whichever zlib it was built with, and its bytes differ from one to another.
 * This one is plain and gives the same bytes everywhere.
 *
 * <p>Source: RFC 1950; RFC 1951, 3.2.5 and 3.2.6.
 */
final class FixedDeflate {

    private static final int LONGEST = 258;
    private static final int WINDOW = 32_768;
    private static final int HASH_BITS = 15;

    private static final int[] LENGTH_FROM = {
        3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227,
        258
    };
    private static final int[] LENGTH_BITS = {
        0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0
    };
    private static final int[] DISTANCE_FROM = {
        1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049, 3073, 4097,
        6145, 8193, 12289, 16385, 24577
    };

    private final byte[] data;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private int bits;
    private int bitCount;

    private FixedDeflate(byte[] data) {
        this.data = data;
    }

    /**
     * @param data anything
     * @param hint a distance at which bytes are likely to repeat, such as the length of a row
     */
    static byte[] zlib(byte[] data, int hint) {
        FixedDeflate deflate = new FixedDeflate(data);
        // Compression method 8 with a window of 32 KiB; the second byte makes the pair a multiple of 31.
        deflate.out.write(0x78);
        deflate.out.write(0x01);
        deflate.block(hint);
        Adler32 adler = new Adler32();
        adler.update(data);
        for (int shift = 24; shift >= 0; shift -= 8) {
            deflate.out.write((int) (adler.getValue() >>> shift));
        }
        return deflate.out.toByteArray();
    }

    private void block(int hint) {
        put(1, 1);
        put(1, 2);
        int[] lastAt = new int[1 << HASH_BITS];
        Arrays.fill(lastAt, -1);
        int i = 0;
        while (i < data.length) {
            int length = 0;
            int distance = 0;
            if (i + 3 <= data.length) {
                for (int candidate : new int[] {i - lastAt[hash(i)], 3, hint}) {
                    int match = match(i, candidate);
                    if (match > length) {
                        length = match;
                        distance = candidate;
                    }
                }
            }
            int step = length >= 3 ? length : 1;
            if (length >= 3) {
                reference(length, distance);
            } else {
                symbol(data[i] & 0xFF);
            }
            for (int end = i + step; i < end; i++) {
                if (i + 3 <= data.length) {
                    lastAt[hash(i)] = i;
                }
            }
        }
        symbol(256);
        if (bitCount > 0) {
            put(0, 8 - bitCount);
        }
    }

    private int hash(int i) {
        int three = (data[i] & 0xFF) | (data[i + 1] & 0xFF) << 8 | (data[i + 2] & 0xFF) << 16;
        return (three * 0x9E3779B1) >>> (32 - HASH_BITS);
    }

    private int match(int i, int distance) {
        if (!(distance >= 1 && distance <= i && distance <= WINDOW)) {
            return 0;
        }
        int length = 0;
        int most = Math.min(LONGEST, data.length - i);
        while (length < most && data[i + length] == data[i + length - distance]) {
            length++;
        }
        return length;
    }

    private void reference(int length, int distance) {
        int code = last(LENGTH_FROM, length);
        symbol(257 + code);
        put(length - LENGTH_FROM[code], LENGTH_BITS[code]);
        int far = last(DISTANCE_FROM, distance);
        code(far, 5);
        put(distance - DISTANCE_FROM[far], far < 2 ? 0 : far / 2 - 1);
    }

    private static int last(int[] from, int value) {
        int index = from.length - 1;
        while (from[index] > value) {
            index--;
        }
        return index;
    }

    /** A literal, length or end symbol in its fixed code. */
    private void symbol(int symbol) {
        if (symbol < 144) {
            code(0b0011_0000 + symbol, 8);
        } else if (symbol < 256) {
            code(0b1_1001_0000 + symbol - 144, 9);
        } else if (symbol < 280) {
            code(symbol - 256, 7);
        } else {
            code(0b1100_0000 + symbol - 280, 8);
        }
    }

    /** Codes go out with their highest bit first. */
    private void code(int code, int length) {
        put(Integer.reverse(code) >>> (32 - length), length);
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
