package org.evenhand.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.evenhand.model.Place;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Each sentence of the lists is passed or refused at the very characters marked. */
class SentencesTest {

    @TestFactory
    Stream<DynamicTest> english() throws IOException {
        return tests("en");
    }

    @TestFactory
    Stream<DynamicTest> german() throws IOException {
        return tests("de");
    }

    private static Stream<DynamicTest> tests(String language) throws IOException {
        FixedEvidence evidence = new FixedEvidence(language);
        return lines("sentences-" + language + ".txt").stream()
                .filter(line -> !line.isBlank() && (!line.startsWith("#") || line.startsWith("##")))
                .map(line -> DynamicTest.dynamicTest(line, () -> check(line, evidence)));
    }

    static List<String> lines(String file) throws IOException {
        try (InputStream in = SentencesTest.class.getResourceAsStream(file)) {
            return List.of(new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n"));
        }
    }

    /** What is proposed as a patch has to hold itself. */
    @TestFactory
    Stream<DynamicTest> aCorrectionMendsWhatItCorrects() throws IOException {
        FixedEvidence evidence = new FixedEvidence("en");
        return lines("sentences-en.txt").stream()
                .filter(line -> line.contains(" => ") && !line.startsWith("# "))
                .map(line -> Case.read(line).text)
                .filter(text -> correction(text, evidence) != null)
                .map(text -> DynamicTest.dynamicTest(text, () -> {
                    String mended = apply(text, correction(text, evidence));
                    assertEquals(List.of(), Verification.verify(ProseSource.body("f.md", 1, mended), evidence), mended);
                }));
    }

    private static ProseFault.Correction correction(String text, FixedEvidence evidence) {
        List<ProseFault> faults = Verification.verify(ProseSource.body("f.md", 1, text), evidence);
        return faults.size() == 1 ? faults.get(0).correction().orElse(null) : null;
    }

    private static String apply(String text, ProseFault.Correction correction) {
        int at = 0;
        for (int line = 1; line < correction.place().line(); line++) {
            at = text.indexOf('\n', at) + 1;
        }
        at += correction.place().column() - 1;
        return text.substring(0, at)
                + correction.text()
                + text.substring(at + correction.place().length());
    }

    private static void check(String line, FixedEvidence evidence) {
        Case expected = Case.read(line);
        List<ProseFault> faults = Verification.verify(ProseSource.body("f.md", 1, expected.text), evidence);
        assertEquals(
                expected.faults,
                faults.stream()
                        .map(f -> f.rule() + " " + f.place() + "+" + f.place().length())
                        .toList(),
                () -> faults.toString());
        for (int i = 0; i < expected.offers.size(); i++) {
            String offer = expected.offers.get(i);
            String remedy = faults.get(i).remedy().replace('\u00a0', ' ');
            assertTrue(remedy.contains(offer), () -> "“" + offer + "” is not offered: " + remedy);
        }
    }

    /**
     * A line of the list.
     *
     * @param text with the marks taken out
     * @param faults rule and place of each
     * @param offers what the message of each must offer
     */
    private record Case(String text, List<String> faults, List<String> offers) {

        static Case read(String line) {
            String[] sides = line.split(" => ");
            String marked = sides[0].replace('⏎', '\n').replace('␣', '\u00a0');
            StringBuilder text = new StringBuilder();
            List<int[]> marks = new ArrayList<>();
            for (char c : marked.toCharArray()) {
                if (c == '«') {
                    marks.add(new int[] {text.length(), 0});
                } else if (c == '»') {
                    marks.get(marks.size() - 1)[1] = text.length();
                } else {
                    text.append(c);
                }
            }
            List<String> faults = new ArrayList<>();
            List<String> offers = new ArrayList<>();
            if (sides.length > 1) {
                String[] rules = sides[1].split(", (?=[a-z]+-[a-z]+-?[a-z]*)");
                for (int i = 0; i < rules.length; i++) {
                    String[] parts = rules[i].split(": ", 2);
                    faults.add(parts[0] + " " + place(text.toString(), marks.get(i)));
                    offers.add(parts.length > 1 ? parts[1] : "");
                }
            }
            return new Case(text.toString(), faults, offers);
        }

        private static String place(String text, int[] mark) {
            String before = text.substring(0, mark[0]);
            int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
            return new Place("f.md", line, mark[0] - before.lastIndexOf('\n'), mark[1] - mark[0]) + "+"
                    + (mark[1] - mark[0]);
        }
    }
}
