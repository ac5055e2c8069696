package org.evenhand.log;

import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.Arrays;

/**
 * The bytes of a stream, in stretches of whole lines.
 *
 * <p>{@code bytes[start]} to {@code bytes[end - 1]} are lines that all end in a line feed; at the end of the stream one
 * is put behind a last line that has none, so that whoever parses need not watch for the end of the array.
 */
final class LineBuffer {

    private static final int FIRST_SIZE = 1 << 17;

    private final InputStream in;
    private final int longestLine;
    private byte[] bytes = new byte[FIRST_SIZE + 1];
    private int start;
    private int end;
    private int filled;
    private boolean atEnd;

    /** @param longestLine that is read, in bytes */
    LineBuffer(InputStream in, int longestLine) {
        this.in = in;
        this.longestLine = longestLine;
    }

    byte[] bytes() {
        return bytes;
    }

    int start() {
        return start;
    }

    int end() {
        return end;
    }

    /** Takes note that the lines before an index are done with. */
    void consumeTo(int index) {
        start = index;
    }

    /**
     * Reads on until there is a whole line, once those that were there are consumed.
     *
     * @return whether there is one; there is none at the end of the stream, and if the line is {@link #isTooLong}
     */
    boolean more() throws IOException {
        System.arraycopy(bytes, start, bytes, 0, filled - start);
        filled -= start;
        start = 0;
        end = 0;
        while (end == 0) {
            if (atEnd) {
                return false;
            }
            if (isTooLong()) {
                return false;
            }
            if (filled == bytes.length - 1) {
                bytes = Arrays.copyOf(bytes, 2 * (bytes.length - 1) + 1);
            }
            fill();
        }
        return true;
    }

    private void fill() throws IOException {
        int before = filled;
        int read = in.readNBytes(bytes, filled, bytes.length - 1 - filled);
        filled += read;
        if (filled < bytes.length - 1) {
            atEnd = true;
            if (filled > 0 && bytes[filled - 1] != '\n') {
                bytes[filled++] = '\n';
            }
        }
        for (int i = filled - 1; i >= before; i--) {
            if (bytes[i] == '\n') {
                end = i + 1;
                return;
            }
        }
    }

    /** Whether everything is consumed and nothing more will come. */
    boolean isAtEnd() {
        return atEnd && start == filled;
    }

    /** Whether a line does not end within the bytes that are read of one. */
    boolean isTooLong() {
        return end == 0 && filled >= longestLine;
    }

    /** All that has not been consumed, as a stream for another reader, who does not close what lies beneath. */
    InputStream rest() {
        InputStream left = new ByteArrayInputStream(bytes, start, filled - start);
        InputStream open = new FilterInputStream(in) {
            @Override
            public void close() {
                // Whoever opened it closes it.
            }
        };
        return new SequenceInputStream(left, open);
    }
}
