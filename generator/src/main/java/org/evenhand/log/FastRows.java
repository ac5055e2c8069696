package org.evenhand.log;

import java.io.IOException;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * Finds the fields of plain lines among the bytes themselves.
 *
 * <p>What is not plain (a quote, a letter beyond ASCII, a control character, a bare carriage return) is left to
 * {@link GeneralRows} from the beginning of its line. A field that is a decimal number of up to fifteen digits becomes
 * a double here: both its digits and the power of ten are exact as doubles, so that their quotient is the double
 * nearest to what is written (Clinger, PLDI 1990, section 5). Any other field is handed on as text.
 */
final class FastRows {

    private static final double[] POWERS = new double[23];
    private static final long EXACT = 1L << 53;

    private static final VarHandle WORDS = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final long ZEROS = 0x3030303030303030L;
    private static final long LOW_BITS = 0x7f7f7f7f7f7f7f7fL;
    private static final long HIGH_BITS = 0x8080808080808080L;
    private static final long ABOVE_NINE = 0x7676767676767676L;

    private static final byte SKIP = 0;
    private static final byte NUMBER = 1;
    private static final byte TEXT = 2;

    static {
        for (int i = 0; i < POWERS.length; i++) {
            POWERS[i] = Double.parseDouble("1e" + i);
        }
    }

    private final LineBuffer lines;
    private final RowAssembler rows;
    private final byte separator;
    private final byte decimal;
    private final byte[] kinds;

    private byte[] bytes;
    private long line;

    /** The number that was read last. */
    private double value;

    private boolean onlyNumbers = true;

    FastRows(LineBuffer lines, RowAssembler rows, char separator, char decimal) {
        this.lines = lines;
        this.rows = rows;
        this.separator = (byte) separator;
        this.decimal = (byte) decimal;
        Layout layout = rows.layout();
        kinds = new byte[layout.fields()];
        for (int i = 0; i < kinds.length; i++) {
            boolean text = i == layout.timeField() && layout.hasStamps();
            kinds[i] = !layout.isWanted(i) ? SKIP : text ? TEXT : NUMBER;
        }
    }

    /**
     * Reads as far as lines are plain.
     *
     * @param linesBefore how many lines of the file are consumed already
     * @return how many are consumed now; the rest, if any, is for the other reader
     */
    long read(long linesBefore) throws IOException {
        line = linesBefore;
        do {
            bytes = lines.bytes();
            int at = lines.start();
            while (at < lines.end()) {
                line++;
                int next = row(at);
                if (next < 0) {
                    lines.consumeTo(at);
                    return line - 1;
                }
                at = next;
            }
            lines.consumeTo(at);
        } while (lines.more());
        return line;
    }

    /** Whether all that was read is plain numbers, and fields that are empty. */
    boolean onlyNumbers() {
        return onlyNumbers;
    }

    /** One line; returns the index behind it, or -1 if it is not plain. */
    private int row(int start) {
        byte[] bytes = this.bytes;
        int at = start;
        if (bytes[at] == '\n') {
            return at + 1; // a blank line
        }
        if (bytes[at] == '\r') {
            return bytes[at + 1] == '\n' ? at + 2 : -1;
        }
        rows.begin();
        int field = 0;
        while (true) {
            byte kind = field < kinds.length ? kinds[field] : SKIP;
            int end = kind == TEXT ? at : number(bytes, at);
            if (end > at) {
                if (kind == NUMBER) {
                    rows.number(field, value, line, at - start + 1, end - at);
                }
            } else {
                end = endOfField(at);
                if (end < 0) {
                    return -1;
                }
                if (end > at) {
                    onlyNumbers = false;
                }
                if (kind != SKIP) {
                    String text = new String(bytes, at, end - at, StandardCharsets.ISO_8859_1);
                    rows.text(field, text, line, at - start + 1, end - at);
                }
            }
            field++;
            byte c = bytes[end];
            if (c == separator) {
                at = end + 1;
            } else if (c == '\n') {
                rows.end(field, line);
                return end + 1;
            } else if (bytes[end + 1] == '\n') {
                rows.end(field, line);
                return end + 2;
            } else {
                return -1; // a bare carriage return
            }
        }
    }

    /** Reads a plain number that fills a field into {@link #value}; returns where it ends, or where it began if it is none. */
    private int number(byte[] bytes, int from) {
        int at = from;
        while (bytes[at] == ' ') {
            at++;
        }
        byte sign = bytes[at];
        if (sign == '-' || sign == '+') {
            at++;
        }
        if (at + Long.BYTES < bytes.length) {
            int end = shortNumber(bytes, at, sign == '-');
            if (end > at) {
                return end;
            }
        }
        long mantissa = 0;
        int firstDigit = at;
        int digit = bytes[at] - '0';
        while (digit >= 0 && digit <= 9) {
            mantissa = mantissa * 10 + digit;
            digit = bytes[++at] - '0';
        }
        int digits = at - firstDigit;
        int scale = 0;
        if (bytes[at] == decimal && decimal != separator) {
            int firstOfFraction = ++at;
            digit = bytes[at] - '0';
            while (digit >= 0 && digit <= 9) {
                mantissa = mantissa * 10 + digit;
                digit = bytes[++at] - '0';
            }
            scale = at - firstOfFraction;
            digits = scale == 0 ? 0 : digits + scale; // a marker without a digit behind it is not plain
        }
        byte c = bytes[at];
        // Eighteen digits fit into a long, so that the mantissa is what is written and not what is left of it.
        boolean plain = digits > 0 && digits <= 18 && mantissa < EXACT && (c == separator || c == '\n' || c == '\r');
        if (!plain) {
            return from;
        }
        double magnitude = scale == 0 ? mantissa : mantissa / POWERS[scale];
        value = sign == '-' ? -magnitude : magnitude;
        return at;
    }

    /**
     * The same for digits, at most seven with a decimal marker among them or eight without, looked at all at once: eight
     * bytes in a word, the first in the lowest place.
     *
     * @return where it ends, or where it began if it is longer or none
     */
    private int shortNumber(byte[] bytes, int at, boolean negative) {
        long word = (long) WORDS.get(bytes, at) ^ ZEROS; // a digit is now its own value, and no other byte is below ten
        long others = ((word & LOW_BITS) + ABOVE_NINE | word) & HIGH_BITS;
        int end = Long.numberOfTrailingZeros(others) >>> 3;
        int scale = 0;
        if (end > 0 && end < 7 && bytes[at + end] == decimal && decimal != separator) {
            int point = end;
            end = Long.numberOfTrailingZeros(others & (others - 1)) >>> 3;
            scale = end - point - 1;
            if (scale == 0) {
                return at; // a marker without a digit behind it is not plain
            }
            long before = (1L << 8 * point) - 1;
            word = word & before | word >>> 8 & ~before; // without the marker
        }
        int digits = scale > 0 ? end - 1 : end;
        byte c = bytes[at + end];
        if (digits == 0 || !(c == separator || c == '\n' || c == '\r')) {
            return at;
        }
        // To the highest places, with zeros before them; then in pairs, fours and eights.
        word <<= 8 * (8 - digits);
        word = (word * 10 + (word >>> 8)) & 0x00ff00ff00ff00ffL;
        word = (word * 100 + (word >>> 16)) & 0x0000ffff0000ffffL;
        word = (word * 10_000 + (word >>> 32)) & 0xffffffffL;
        double magnitude = scale == 0 ? word : word / POWERS[scale];
        value = negative ? -magnitude : magnitude;
        return at + end;
    }

    /** Index of the byte that ends the field, or -1 if the field is not plain. */
    private int endOfField(int from) {
        int at = from;
        while (true) {
            byte c = bytes[at];
            if (c == separator || c == '\n' || c == '\r') {
                return at;
            }
            if (c == '"' || c < ' ' && c != '\t') {
                return -1;
            }
            at++;
        }
    }
}
