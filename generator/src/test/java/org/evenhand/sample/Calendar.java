package org.evenhand.sample;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** When the sample's runs began: working days only, a few places a day, each a few minutes off the round time. */
record Calendar(LocalDate first, LocalTime earliest, int runsADay, int minutesBetween) {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss'Z'", Locale.ROOT);

    /** @param order place of the run in the order of the whole study, from 0 */
    String started(int order, Noise noise) {
        LocalDate day = first;
        for (int left = order / runsADay; left > 0; left--) {
            day = nextWorkingDay(day);
        }
        LocalDateTime start = day.atTime(earliest)
                .plusMinutes((long) (order % runsADay) * minutesBetween)
                .plusMinutes((long) noise.between(0, 12));
        return STAMP.format(start);
    }

    private static LocalDate nextWorkingDay(LocalDate day) {
        LocalDate next = day.plusDays(1);
        while (next.getDayOfWeek() == DayOfWeek.SATURDAY || next.getDayOfWeek() == DayOfWeek.SUNDAY) {
            next = next.plusDays(1);
        }
        return next;
    }
}
