package org.evenhand.page.record;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.evenhand.quantity.Figures;

/** Writes moments and durations of runs. */
final class Times {

    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private Times() {}

    /** To the minute, in UTC. */
    static String minute(OffsetDateTime time) {
        return MINUTE.format(time);
    }

    /** The day in UTC. */
    static String day(OffsetDateTime time) {
        return time.withOffsetSameInstant(ZoneOffset.UTC).toLocalDate().toString();
    }

    /** A duration in the unit that suits it: "45 min", "12 h". */
    static String duration(double seconds) {
        double scaled = seconds < 120 ? seconds : seconds < 7200 ? seconds / 60 : seconds / 3600;
        String unit = seconds < 120 ? "s" : seconds < 7200 ? "min" : "h";
        return Figures.at(scaled, Figures.decimalsAlone(scaled)) + Figures.NO_BREAK_SPACE + unit;
    }
}
