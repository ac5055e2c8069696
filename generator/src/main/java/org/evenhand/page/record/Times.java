package org.evenhand.page.record;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Locale;
import org.evenhand.quantity.Figures;
import org.evenhand.words.Words;

/** Writes moments and durations of runs. */
final class Times {

    private Times() {}

    /** To the minute, in UTC. */
    static String minute(OffsetDateTime time, Words words) {
        OffsetDateTime at = time.withOffsetSameInstant(ZoneOffset.UTC);
        return words.say(
                "log.minute",
                String.format(Locale.ROOT, "%04d", at.getYear()),
                twoDigits(at.getMonthValue()),
                twoDigits(at.getDayOfMonth()),
                twoDigits(at.getHour()),
                twoDigits(at.getMinute()));
    }

    private static String twoDigits(int number) {
        return String.format(Locale.ROOT, "%02d", number);
    }

    /** The day in UTC. */
    static String day(OffsetDateTime time) {
        return time.withOffsetSameInstant(ZoneOffset.UTC).toLocalDate().toString();
    }

    /** A duration in the unit that suits it: "45 min", "12 h". */
    static String duration(double seconds, Words words) {
        double scaled = seconds < 120 ? seconds : seconds < 7200 ? seconds / 60 : seconds / 3600;
        String unit = seconds < 120 ? "s" : seconds < 7200 ? "min" : "h";
        return words.number(Figures.at(scaled, Figures.decimalsAlone(scaled))) + Figures.NO_BREAK_SPACE + unit;
    }
}
