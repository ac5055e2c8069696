package org.evenhand.log;

import java.time.LocalDate;

/**
 * A point in time as RFC 3339 writes it, with its offset from UTC.
 *
 * @param second of the Unix epoch
 * @param nano within the second
 */
record Stamp(long second, int nano) {

    private static final int LENGTH_TO_SECONDS = 19;

    /** Why a text is no stamp. */
    enum Flaw {
        NOT_A_STAMP,
        NO_OFFSET
    }

    /** Seconds from the other to this. */
    double secondsSince(Stamp other) {
        // One rounding: exact in nanoseconds for a hundred days, and to within a microsecond for a life.
        return (second - other.second) + (nano - other.nano) / 1e9;
    }

    /** The stamp, or null; {@link #flawOf} then tells why. */
    static Stamp parse(String text) {
        if (text.length() <= LENGTH_TO_SECONDS || !hasShape(text)) {
            return null;
        }
        int at = LENGTH_TO_SECONDS;
        int nano = 0;
        if (text.charAt(at) == '.' || text.charAt(at) == ',') {
            at++;
            int start = at;
            int unit = 100_000_000;
            while (at < text.length() && isDigit(text.charAt(at))) {
                nano += (text.charAt(at) - '0') * unit;
                unit /= 10;
                at++;
            }
            if (at == start) {
                return null;
            }
        }
        int offset = offsetSeconds(text, at);
        int month = two(text, 5);
        int day = two(text, 8);
        int hour = two(text, 11);
        int minute = two(text, 14);
        int second = two(text, 17);
        // A leap second is the sixtieth: RFC 3339, 5.7.
        boolean inRange = month >= 1 && month <= 12 && day >= 1 && hour <= 23 && minute <= 59 && second <= 60;
        if (offset == Integer.MIN_VALUE || !inRange) {
            return null;
        }
        int year = two(text, 0) * 100 + two(text, 2);
        LocalDate first = LocalDate.of(year, month, 1);
        if (day > first.lengthOfMonth()) {
            return null;
        }
        long days = first.toEpochDay() + day - 1;
        return new Stamp(days * 86_400 + hour * 3600L + minute * 60L + second - offset, nano);
    }

    /** What a text that {@link #parse} does not read lacks. */
    static Flaw flawOf(String text) {
        return parse(text + "Z") != null ? Flaw.NO_OFFSET : Flaw.NOT_A_STAMP;
    }

    private static boolean hasShape(String text) {
        String shape = "dddd-dd-ddTdd:dd:dd";
        for (int i = 0; i < LENGTH_TO_SECONDS; i++) {
            char want = shape.charAt(i);
            char c = text.charAt(i);
            boolean fits = switch (want) {
                case 'd' -> isDigit(c);
                case 'T' -> c == 'T' || c == 't' || c == ' ';
                default -> c == want;
            };
            if (!fits) {
                return false;
            }
        }
        return true;
    }

    /** Seconds east of UTC; the least int if what stands there is no offset. */
    private static int offsetSeconds(String text, int at) {
        int left = text.length() - at;
        if (left == 1 && (text.charAt(at) == 'Z' || text.charAt(at) == 'z')) {
            return 0;
        }
        boolean sign = left > 0 && (text.charAt(at) == '+' || text.charAt(at) == '-');
        boolean colon = left == 6 && text.charAt(at + 3) == ':';
        if (!sign || !(colon || left == 5)) {
            return Integer.MIN_VALUE;
        }
        int minutesAt = at + (colon ? 4 : 3);
        for (int i : new int[] {at + 1, at + 2, minutesAt, minutesAt + 1}) {
            if (!isDigit(text.charAt(i))) {
                return Integer.MIN_VALUE;
            }
        }
        int hours = two(text, at + 1);
        int minutes = two(text, minutesAt);
        if (hours > 23 || minutes > 59) {
            return Integer.MIN_VALUE;
        }
        int seconds = hours * 3600 + minutes * 60;
        return text.charAt(at) == '-' ? -seconds : seconds;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static int two(String text, int at) {
        return (text.charAt(at) - '0') * 10 + (text.charAt(at + 1) - '0');
    }
}
