package org.evenhand.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is wrong with a German sentence is said in German, whatever it is. */
class GermanFaultsTest {

    private static final FixedEvidence EVIDENCE = new FixedEvidence("de");

    /** Short words of English that are no words of German; from memory. */
    private static final Pattern ENGLISH = Pattern.compile(
            "\\b(the|of|and|is|were|with|from|that|this|which|than|not|for|it|its|by|to|are|has|have|write|link)\\b");

    private static final Pattern QUOTED = Pattern.compile("„[^“]*“");

    static Stream<String> faulty() throws IOException {
        Stream<String> listed = SentencesTest.lines("sentences-de.txt").stream()
                .filter(line -> line.contains(" => ") && !line.startsWith("#"))
                .map(line -> line.split(" => ")[0]
                        .replaceAll("[«»]", "")
                        .replace('⏎', '\n')
                        .replace('␣', '\u00a0'));
        return Stream.concat(
                listed,
                Stream.of(
                        "Alle Quillet 3 sind [stabil](evidence:energy).",
                        "Er war 21 % schneller.",
                        "Er ist [schneller](evidence:delay).",
                        "Er war [21 K kühler](evidence:energy) als der Quillet 2.",
                        "Er brauchte [0,8 Wh](evidence:energy).",
                        "Es waren [14 Wh](evidence:rise).",
                        "Er lief lautlos."));
    }

    private static List<ProseFault> faults(String text) {
        return Verification.verify(ProseSource.body("f.md", 1, text), EVIDENCE);
    }

    @ParameterizedTest
    @MethodSource("faulty")
    void isSaidInGerman(String sentence) {
        List<ProseFault> faults = faults(sentence);
        assertFalse(faults.isEmpty(), sentence);
        for (ProseFault fault : faults) {
            for (String text : List.of(fault.message(), fault.remedy())) {
                assertFalse(ENGLISH.matcher(QUOTED.matcher(text).replaceAll("")).find(), text);
            }
        }
    }

    @Test
    void whatDoesNotHoldIsToldWithWhatWouldInGermanWriting() {
        ProseFault fault =
                faults("Es bleibt [31,6 K kühler](evidence:rise) als none.").get(0);
        assertEquals("„31,6 K“ trifft nicht zu", fault.message());
        assertEquals("„30,6 K kühler“ schreiben", fault.remedy());
    }
}
