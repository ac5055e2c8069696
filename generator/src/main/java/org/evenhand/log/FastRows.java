package org.evenhand.log;

import java.io.IOException;

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

    /** Whether a field was a plain number, and where it ended. */
    private boolean plain;

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

    /** One line; returns the index behind it, or -1 if it is not plain. */
    private int row(int start) {
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
            int from = at;
            plain = false;
            if (kind == NUMBER) {
                at = number(field, from, from - start + 1);
            }
            if (!plain) {
                at = endOfField(from);
                if (at < 0) {
                    return -1;
                }
                if (kind != SKIP) {
                    String text = new String(bytes, from, at - from, java.nio.charset.StandardCharsets.ISO_8859_1);
                    rows.text(field, text, line, from - start + 1, at - from);
                }
            }
            field++;
            byte c = bytes[at];
            if (c == separator) {
                at++;
            } else if (c == '\n') {
                rows.end(field, line);
                return at + 1;
            } else if (bytes[at + 1] == '\n') {
                rows.end(field, line);
                return at + 2;
            } else {
                return -1; // a bare carriage return
            }
        }
    }

    /** Tries to read a plain number that fills the field; sets {@link #plain}. */
    private int number(int field, int from, int column) {
        int at = from;
        while (bytes[at] == ' ') {
            at++;
        }
        boolean negative = bytes[at] == '-';
        if (negative || bytes[at] == '+') {
            at++;
        }
        long mantissa = 0;
        int firstDigit = at;
        int digit = bytes[at] - '0';
        while (digit >= 0 && digit <= 9 && mantissa < EXACT) {
            mantissa = mantissa * 10 + digit;
            digit = bytes[++at] - '0';
        }
        int digits = at - firstDigit;
        int scale = 0;
        if (bytes[at] == decimal && decimal != separator) {
            int firstOfFraction = ++at;
            digit = bytes[at] - '0';
            while (digit >= 0 && digit <= 9 && mantissa < EXACT) {
                mantissa = mantissa * 10 + digit;
                digit = bytes[++at] - '0';
            }
            scale = at - firstOfFraction;
            digits = scale == 0 ? 0 : digits + scale; // a marker without a digit behind it is not plain
        }
        byte c = bytes[at];
        if (digits == 0 || mantissa >= EXACT || scale >= POWERS.length || !(c == separator || c == '\n' || c == '\r')) {
            return from;
        }
        double value = scale == 0 ? mantissa : mantissa / POWERS[scale];
        plain = true;
        rows.number(field, negative ? -value : value, line, column, at - from);
        return at;
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
