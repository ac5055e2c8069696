package org.evenhand.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.OffsetDateTime;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StampTest {

    @ParameterizedTest(name = "RFC 3339, 5.8: {0} is {1} of the epoch and {2}")
    @CsvSource({
        "1985-04-12T23:20:50.52Z, 482196050, 520000000",
        "1996-12-19T16:39:57-08:00, 851042397, 0",
        "1990-12-31T23:59:60Z, 662688000, 0",
        "1990-12-31T15:59:60-08:00, 662688000, 0",
        "1937-01-01T12:00:27.87+00:20, -1041337173, 870000000",
    })
    void the_examples_of_the_standard_are_read(String text, long second, int nano) {
        assertEquals(new Stamp(second, nano), Stamp.parse(text));
    }

    @Test
    void stamps_agree_with_those_of_the_java_library() {
        Random random = new Random(5);
        for (int i = 0; i < 2000; i++) {
            String text = String.format(
                    java.util.Locale.ROOT,
                    "%04d-%02d-%02dT%02d:%02d:%02d.%03d%s%02d:%02d",
                    1900 + random.nextInt(200),
                    1 + random.nextInt(12),
                    1 + random.nextInt(28),
                    random.nextInt(24),
                    random.nextInt(60),
                    random.nextInt(60),
                    random.nextInt(1000),
                    random.nextBoolean() ? "+" : "-",
                    random.nextInt(15),
                    random.nextInt(60));
            OffsetDateTime expected = OffsetDateTime.parse(text);
            assertEquals(new Stamp(expected.toEpochSecond(), expected.getNano()), Stamp.parse(text), text);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-02-29T00:00:00Z",
                "2026-13-01T00:00:00Z",
                "2026-01-01T24:00:00Z",
                "2026-01-01T00:00:00+25:00",
                "2026-01-01T00:00:00.Z",
                "2026-01-01",
                "01/02/2026 10:00:00Z",
                "2026-01-01T00:00:00+1",
            })
    void what_is_no_point_in_time_is_refused(String text) {
        assertNull(Stamp.parse(text));
    }

    @Test
    void what_only_lacks_its_offset_is_told_apart() {
        assertEquals(Stamp.Flaw.NO_OFFSET, Stamp.flawOf("2026-01-01T00:00:00"));
        assertEquals(Stamp.Flaw.NOT_A_STAMP, Stamp.flawOf("yesterday"));
        assertNotNull(Stamp.parse("2026-01-01 00:00:00+0130"));
    }
}
