package org.evenhand.command;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import org.evenhand.check.Progress;

/**
 * Tells on a terminal how far the work has come, and at the end what took how long.
 *
 * <p>Where nobody watches, in a pipe, it says nothing unless it is asked for the timings.
 */
final class Stages implements Progress {

    private static final long SHOWN_EVERY_NS = 200_000_000;

    /** A stage that has ended. */
    private record Done(String name, long ns) {}

    private final PrintStream err;
    private final boolean watched;
    private final boolean timings;
    private final List<Done> done = new ArrayList<>();
    private final long beganNs = System.nanoTime();
    private final AtomicLong shownNs = new AtomicLong(beganNs);
    private final AtomicLong pieces = new AtomicLong();
    private final AtomicLong rows = new AtomicLong();
    private volatile String stage = "start";
    private volatile int expected;
    private volatile long stageNs = beganNs;

    Stages(PrintStream err, boolean watched, boolean timings) {
        this.err = err;
        this.watched = watched;
        this.timings = timings;
    }

    @Override
    public void begins(String name) {
        long now = System.nanoTime();
        done.add(new Done(stage, now - stageNs));
        stage = name;
        stageNs = now;
        expected = 0;
        pieces.set(0);
        rows.set(0);
        show(name);
    }

    @Override
    public void expects(int count) {
        expected = count;
    }

    @Override
    public void done(long more) {
        long so = pieces.incrementAndGet();
        long all = rows.addAndGet(more);
        long now = System.nanoTime();
        long last = shownNs.get();
        if (watched && now - last > SHOWN_EVERY_NS && shownNs.compareAndSet(last, now)) {
            show(line(stage, so, expected, all, (now - stageNs) / 1e9));
        }
    }

    /** "measure: 120 of 1000 runs, 4.1 million rows a second, 7 s left". */
    static String line(String stage, long done, int expected, long rows, double seconds) {
        double left = done == 0 ? 0 : seconds / done * Math.max(0, expected - done);
        return String.format(
                Locale.ROOT,
                "%s: %d of %d runs, %s rows a second, %.0f s left",
                stage,
                done,
                expected,
                rough(seconds > 0 ? rows / seconds : 0),
                Math.ceil(left));
    }

    private static String rough(double number) {
        return number >= 1e6
                ? String.format(Locale.ROOT, "%.1f million", number / 1e6)
                : String.format(Locale.ROOT, "%.0f", number);
    }

    private void show(String text) {
        if (watched) {
            err.print("\r\u001b[K" + text);
            err.flush();
        }
    }

    /** Ends the last stage, takes the line of progress away, and says what took how long. */
    void end() {
        long now = System.nanoTime();
        done.add(new Done(stage, now - stageNs));
        if (watched) {
            err.print("\r\u001b[K");
        }
        if (timings) {
            done.forEach(d -> err.printf(Locale.ROOT, "%-16s %8.3f s%n", d.name(), d.ns() / 1e9));
            err.printf(Locale.ROOT, "%-16s %8.3f s%n", "all", (now - beganNs) / 1e9);
            err.printf(Locale.ROOT, "%-16s %8.1f MB%n", "most memory", peakBytes() / 1e6);
        } else if (watched) {
            String parts = done.stream()
                    .filter(d -> d.ns() >= 50_000_000)
                    .map(d -> String.format(Locale.ROOT, "%s %.1f s", d.name(), d.ns() / 1e9))
                    .collect(Collectors.joining(", "));
            err.printf(
                    Locale.ROOT,
                    "%.1f s%s; at most %.0f MB of memory%n",
                    (now - beganNs) / 1e9,
                    parts.isEmpty() ? "" : " (" + parts + ")",
                    peakBytes() / 1e6);
        }
        err.flush();
    }

    /** Of objects: the peaks of the parts of the heap need not coincide, so this is a bound from above. */
    private static long peakBytes() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getPeakUsage)
                .mapToLong(usage -> usage.getUsed())
                .sum();
    }
}
