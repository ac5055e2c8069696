package org.evenhand.command.takein;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the dates and times that loggers write. */
final class Moments {

    /**
     * A moment as far as it is written.
     *
     * @param date absent for a bare time of day
     * @param time of the day
     * @param offset from UTC, where one stands behind it
     */
    record Moment(Optional<LocalDate> date, LocalTime time, Optional<ZoneOffset> offset) {

        Optional<LocalDateTime> local() {
            return date.map(d -> d.atTime(time));
        }
    }

    private static final String DATE =
            "(?:(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})|(\\d{1,2})([./-])(\\d{1,2})[./-](\\d{4}|\\d{2}))";
    private static final String TIME = "(\\d{1,2}):(\\d{2})(?::(\\d{2})(?:[.,](\\d{1,9}))?)?\\s*([AaPp][Mm])?";
    private static final String OFFSET = "\\s*(Z|UTC|GMT|CET|CEST|[+-]\\d{2}:?\\d{2})?";
    private static final Pattern MOMENT = Pattern.compile("(?:" + DATE + "(?:[T\\s,]+))?" + TIME + OFFSET);
    private static final Pattern DAY = Pattern.compile(DATE);
    private static final Map<String, String> ZONES =
            Map.of("UTC", "Z", "GMT", "Z", "Z", "Z", "CET", "+01:00", "CEST", "+02:00");

    private final boolean monthFirst;

    private Moments(boolean monthFirst) {
        this.monthFirst = monthFirst;
    }

    /**
     * A reader for the dates of a column: with slashes the month comes first if a second number is above twelve.
     *
     * @param monthFirst as its owner says; null to find out
     */
    static Moments of(List<String> texts, Boolean monthFirst) {
        return new Moments(monthFirst != null ? monthFirst : order(texts).orElse(false));
    }

    /** Whether it cannot be told which of two numbers is the month. */
    static boolean isUndecided(List<String> texts) {
        return order(texts).isEmpty() && texts.stream().anyMatch(t -> t.matches("\\d{1,2}/\\d{1,2}/\\d{2,4}.*"));
    }

    private static Optional<Boolean> order(List<String> texts) {
        for (String text : texts) {
            Matcher m = Pattern.compile("(\\d{1,2})([./-])(\\d{1,2})[./-]\\d{2,4}.*")
                    .matcher(text);
            if (m.matches()) {
                int first = Integer.parseInt(m.group(1));
                int second = Integer.parseInt(m.group(3));
                if (first > 12 || m.group(2).equals(".")) {
                    return Optional.of(false);
                }
                if (second > 12 || text.matches(".*[AaPp][Mm].*")) {
                    return Optional.of(true);
                }
            }
        }
        return Optional.empty();
    }

    Optional<Moment> parse(String text) {
        Matcher m = MOMENT.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        try {
            int hour = Integer.parseInt(m.group(8));
            String half = m.group(12) == null ? "" : m.group(12).toLowerCase(java.util.Locale.ROOT);
            if (!half.isEmpty()) {
                hour = hour % 12 + (half.equals("pm") ? 12 : 0);
            }
            int second = m.group(10) == null ? 0 : Integer.parseInt(m.group(10));
            int nano = m.group(11) == null ? 0 : Integer.parseInt((m.group(11) + "00000000").substring(0, 9));
            LocalTime time = LocalTime.of(hour, Integer.parseInt(m.group(9)), second, nano);
            return Optional.of(new Moment(date(m), time, offset(m.group(13))));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** A date alone. */
    Optional<LocalDate> parseDate(String text) {
        Matcher m = DAY.matcher(text);
        try {
            return m.matches() ? date(m) : Optional.empty();
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private Optional<LocalDate> date(Matcher m) {
        if (m.group(1) != null) {
            return Optional.of(LocalDate.of(number(m, 1), number(m, 2), number(m, 3)));
        }
        if (m.group(4) == null) {
            return Optional.empty();
        }
        int year = number(m, 7) < 100 ? 2000 + number(m, 7) : number(m, 7);
        boolean swap = monthFirst && !m.group(5).equals(".");
        return Optional.of(
                swap ? LocalDate.of(year, number(m, 4), number(m, 6)) : LocalDate.of(year, number(m, 6), number(m, 4)));
    }

    private static int number(Matcher m, int group) {
        return Integer.parseInt(m.group(group));
    }

    private static Optional<ZoneOffset> offset(String text) {
        return text == null ? Optional.empty() : Optional.of(ZoneOffset.of(ZONES.getOrDefault(text, withColon(text))));
    }

    private static String withColon(String offset) {
        return offset.length() == 5 && offset.charAt(3) != ':'
                ? offset.substring(0, 3) + ":" + offset.substring(3)
                : offset;
    }
}
