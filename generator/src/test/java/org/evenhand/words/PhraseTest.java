package org.evenhand.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is to be said before its language is known. */
class PhraseTest {

    private static final Words GERMAN = Words.in("de");

    @Test
    void itIsWordedWhenTheLanguageIsKnown() {
        Phrase phrase = Phrase.of("missing.part", "Erwärmung", Phrase.of("missing.no-log"));
        assertEquals("“Erwärmung” is missing: the run has no log", phrase.in(Words.english()));
        assertEquals("„Erwärmung“ fehlt: der Lauf hat keine Aufzeichnung", phrase.in(GERMAN));
    }

    @Test
    void aNumberGetsTheMarkerOfTheLanguageAndANameStaysAsItIs() {
        Phrase phrase = Phrase.of("missing.reading-unit", "firmware-6.1", "2.5 K", "W");
        assertEquals("die Ablesung „firmware-6.1“, 2,5 K, lässt sich nicht in W umrechnen", phrase.in(GERMAN));
    }

    @Test
    void aRoundedNumberHasNoZerosAtItsEnd() {
        assertEquals("120", Phrase.rounded(120, 6));
        assertEquals("1.04", Phrase.rounded(1.0449, 3));
        assertEquals("2700", Phrase.rounded(2700.0000001, 6));
        assertEquals("0", Phrase.rounded(0, 3));
        assertEquals("-0.5", Phrase.rounded(-0.5, 3));
    }

    @Test
    void anythingElseIsNoArgument() {
        assertThrows(IllegalArgumentException.class, () -> new Phrase("missing.told", List.of(2.5)));
    }
}
