package org.evenhand.model;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.LongSupplier;

/**
 * How much of anything is read; honest use stays far below.
 *
 * @param changed what differs from {@link Quota#usual}
 * @param nanoseconds a running clock, for the time that one file may take; one that stands still lets it take any
 */
public record Limits(Map<Quota, Long> changed, LongSupplier nanoseconds) {

    /** The usual ones, with no watch on the time. */
    public static final Limits DEFAULT = new Limits(Map.of(), () -> 0);

    public Limits {
        changed = Map.copyOf(changed);
    }

    /** How much is read. */
    public long of(Quota quota) {
        return changed.getOrDefault(quota, quota.usual());
    }

    /** How much is read, where more than 2³¹ − 1 can never be. */
    public int asInt(Quota quota) {
        return (int) Math.min(of(quota), Integer.MAX_VALUE - 16);
    }

    /** The same but for one. */
    public Limits with(Quota quota, long value) {
        Map<Quota, Long> all = new EnumMap<>(Quota.class);
        all.putAll(changed);
        all.put(quota, value);
        return new Limits(all, nanoseconds);
    }

    /** The same, with a clock that runs. */
    public Limits timedBy(LongSupplier clock) {
        return new Limits(changed, clock);
    }

    /** Starts to time a file. */
    public Timing begin() {
        return new Timing(nanoseconds, nanoseconds.getAsLong(), of(Quota.FILE_SECONDS));
    }

    /** The time that one file has taken. */
    public record Timing(LongSupplier nanoseconds, long start, long seconds) {

        public boolean isOver() {
            // By difference: the clock may start anywhere, and wrap.
            return (nanoseconds.getAsLong() - start) / 1_000_000_000L > seconds;
        }
    }
}
