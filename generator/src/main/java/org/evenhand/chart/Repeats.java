package org.evenhand.chart;

import java.util.Arrays;

/**
 * Bytes as what is new and what repeats something before it.
 *
 * <p>Source: J. Ziv, A. Lempel, A universal algorithm for sequential data compression, 1977; RFC 1951, 4.
 */
final class Repeats {

    private static final int SHORTEST = 3;
    private static final int LONGEST = 258;
    private static final int WINDOW = 32_768;
    private static final int HASH_BITS = 15;

    /** How many earlier places with the same three bytes are tried; three times as many make pictures 2 % smaller. */
    private static final int TRIES = 16;

    private final byte[] data;
    private final int hint;
    private final int[] lastAt = new int[1 << HASH_BITS];
    private final int[] before;

    /** A repeat as long as this is taken without a look for a longer one. */
    private static final int LONG = 32;

    /** Lengths in the lower nine bits; above them the byte if the length is one, else the distance. */
    private int[] pieces = new int[1024];

    private int count;

    private Repeats(byte[] data, int hint) {
        this.data = data;
        this.hint = hint;
        this.before = new int[data.length];
        Arrays.fill(lastAt, -1);
    }

    /** Takes a piece: the byte, unsigned, if its length is one, else the distance back to what it repeats. */
    interface Piece {
        void take(int length, int value);
    }

    static Repeats of(byte[] data, int hint) {
        Repeats repeats = new Repeats(data, hint);
        repeats.find();
        return repeats;
    }

    void forEach(Piece piece) {
        for (int i = 0; i < count; i++) {
            piece.take(pieces[i] & 511, pieces[i] >>> 9);
        }
    }

    private void find() {
        int i = 0;
        long here = longest(0);
        while (i < data.length) {
            int length = (int) (here >>> 32);
            remember(i);
            // A longer repeat that begins one byte later is worth the byte.
            long next = length >= LONG ? 0 : longest(i + 1);
            if (length >= SHORTEST && (int) (next >>> 32) <= length) {
                add(length, (int) here);
                // Within a long repeat there is little to be found again that is not found at its end.
                for (int at = length < LONG ? i + 1 : i + length - SHORTEST; at < i + length; at++) {
                    remember(at);
                }
                i += length;
                here = longest(i);
            } else {
                add(1, data[i] & 255);
                i++;
                here = next;
            }
        }
    }

    private void add(int length, int value) {
        if (count == pieces.length) {
            pieces = Arrays.copyOf(pieces, 2 * count);
        }
        pieces[count++] = value << 9 | length;
    }

    private void remember(int i) {
        if (i + SHORTEST <= data.length) {
            int hash = hash(i);
            before[i] = lastAt[hash];
            lastAt[hash] = i;
        }
    }

    /** The longest repeat found at a place: its length above, its distance in the lower 32 bits; of equals the nearest. */
    private long longest(int i) {
        if (i + SHORTEST > data.length) {
            return 0;
        }
        int best = hint > 0 ? match(i, i - hint, 0) : 0;
        int distance = best > 0 ? hint : 0;
        int at = lastAt[hash(i)];
        for (int tries = TRIES; tries > 0 && at >= 0 && i - at <= WINDOW && best < LONGEST; tries--) {
            int length = match(i, at, best);
            if (length > best) {
                best = length;
                distance = i - at;
            }
            at = before[at];
        }
        return best < SHORTEST ? 0 : (long) best << 32 | distance;
    }

    private int hash(int i) {
        int three = (data[i] & 0xFF) | (data[i + 1] & 0xFF) << 8 | (data[i + 2] & 0xFF) << 16;
        return (three * 0x9E3779B1) >>> (32 - HASH_BITS);
    }

    /** How many bytes agree; nought if they cannot be more than {@code than}. */
    private int match(int i, int at, int than) {
        int most = Math.min(LONGEST, data.length - i);
        if (at < 0 || i - at > WINDOW || than >= most || data[at + than] != data[i + than]) {
            return 0;
        }
        int length = Arrays.mismatch(data, i, i + most, data, at, at + most);
        return length < 0 ? most : length;
    }
}
