package org.evenhand.log;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A stream that refuses to grow without end: a few compressed bytes can stand for any number of plain ones. */
final class Bounded extends FilterInputStream {

    private static final long MOST_BYTES = 8L << 30;

    private long read;

    Bounded(InputStream in) {
        super(in);
    }

    @Override
    public int read() throws IOException {
        int value = super.read();
        count(value < 0 ? 0 : 1);
        return value;
    }

    @Override
    public int read(byte[] target, int offset, int length) throws IOException {
        int count = super.read(target, offset, length);
        count(Math.max(0, count));
        return count;
    }

    private void count(int more) throws IOException {
        read += more;
        if (read > MOST_BYTES) {
            throw new TooLargeException();
        }
    }

    /** The stream is longer than any log. */
    static final class TooLargeException extends IOException {

        private static final long serialVersionUID = 1L;

        TooLargeException() {
            super("the log is larger than " + (MOST_BYTES >> 30) + " GiB when it is decompressed");
        }
    }
}
