package org.evenhand.statistics;

/**
 * A time until an event, or the time up to which none was seen.
 *
 * @param time finite, not negative, in the unit of all others
 * @param observed true if the event happened at this time; false if the watch ended without it (right-censored)
 */
public record CensoredTime(double time, boolean observed) {

    /**
     * @throws IllegalArgumentException if the time is NaN, infinite or negative
     */
    public CensoredTime {
        Arguments.notNegative(time, "time");
    }

    /** A time at which the event happened. */
    public static CensoredTime event(double time) {
        return new CensoredTime(time, true);
    }

    /** A time until which no event was seen. */
    public static CensoredTime censored(double time) {
        return new CensoredTime(time, false);
    }
}
