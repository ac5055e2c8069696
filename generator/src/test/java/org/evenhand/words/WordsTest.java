package org.evenhand.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * How languages write numbers, days and quotations: ISO 8601 for English; for German DIN 5008 on days and the decimal
 * comma, and the Unicode CLDR on quotation marks, all three from memory.
 */
class WordsTest {
    private static final Words ENGLISH = Words.english();
    private static final Words GERMAN = Words.in("de");

    @Test
    void scriptAndRegionMakeNoDifferenceAndEnglishStandsInForTheUnknown() {
        assertSame(GERMAN, Words.in("de-AT"));
        assertSame(GERMAN, Words.in("DE"));
        assertSame(ENGLISH, Words.in("tlh"));
        assertEquals("de", GERMAN.language());
    }

    @Test
    void theDecimalMarkerIsTheLanguagesAndOtherPointsStay() {
        assertEquals("31.2 K to 32.1 K.", ENGLISH.number("31.2 K to 32.1 K."));
        assertEquals("31,2 K bis 32,1 K.", GERMAN.number("31.2 K bis 32.1 K."));
        assertEquals("−0,5", GERMAN.number("−0.5"));
        assertEquals("log.csv", GERMAN.number("log.csv"));
    }

    @Test
    void aDayIsWrittenAsTheLanguageDoes() {
        LocalDate day = LocalDate.of(2026, 3, 2);
        assertEquals("2026-03-02", ENGLISH.day(day));
        assertEquals("2.\u00a0März 2026", GERMAN.day(day));
    }

    @Test
    void listsEndWithAWord() {
        assertEquals("", ENGLISH.list(List.of()));
        assertEquals("a", ENGLISH.list(List.of("a")));
        assertEquals("a and b", ENGLISH.list(List.of("a", "b")));
        assertEquals("a, b or c", ENGLISH.either(List.of("a", "b", "c")));
        assertEquals("a, b und c", GERMAN.list(List.of("a", "b", "c")));
        assertEquals("a oder b", GERMAN.either(List.of("a", "b")));
    }

    @Test
    void quotationMarksAreTheLanguages() {
        assertEquals("“Ruhe”", ENGLISH.quoted("Ruhe"));
        assertEquals("„Ruhe“", GERMAN.quoted("Ruhe"));
    }

    @Test
    void numbersUpToTwelveAreWords() {
        assertEquals("none", ENGLISH.inWords(0));
        assertEquals("zwölf", GERMAN.inWords(12));
        assertEquals("13", GERMAN.inWords(13));
        assertEquals("-1", GERMAN.inWords(-1));
    }

    @Test
    void aKeyWithoutWordsIsAnError() {
        assertThrows(IllegalArgumentException.class, () -> ENGLISH.say("language.nothing"));
        assertThrows(IllegalArgumentException.class, () -> ENGLISH.say("nowhere.nothing"));
        assertThrows(IllegalArgumentException.class, () -> ENGLISH.say("nothing"));
    }
}
