package org.evenhand.log;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;

/**
 * A stream that refuses to go on without end: a few compressed bytes can stand for any number of plain ones, and a slow
 * device can take for ever.
 */
final class Bounded extends FilterInputStream {

    private final Limits limits;
    private final Limits.Timing timing;
    private final long most;
    private long read;

    Bounded(InputStream in, Limits limits) {
        super(in);
        this.limits = limits;
        this.timing = limits.begin();
        this.most = limits.of(Quota.LOG_BYTES);
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
        if (read > most) {
            throw new TooMuchException("log-fault.too-large", limits, Quota.LOG_BYTES);
        }
        if (timing.isOver()) {
            throw new TooMuchException("log-fault.too-slow", limits, Quota.FILE_SECONDS);
        }
    }
}
