package org.evenhand.prose;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** How well quantities without evidence are told from other numbers, on sentences marked by hand. */
class UnlinkedCorpusTest {

    @Test
    void precisionAndRecallAreAbove95Percent() throws IOException {
        FixedEvidence evidence = new FixedEvidence("en");
        int sentences = 0;
        int right = 0;
        List<String> missed = new ArrayList<>();
        List<String> falseAlarms = new ArrayList<>();
        for (String line : SentencesTest.lines("unlinked-corpus.txt")) {
            if (line.isBlank() || (line.startsWith("# ") && !line.startsWith("# 68"))) {
                continue;
            }
            sentences++;
            String marked = line.replace('⏎', '\n').replace('␣', '\u00a0');
            Set<Integer> expected = new TreeSet<>();
            StringBuilder text = new StringBuilder();
            for (char c : marked.toCharArray()) {
                if (c == '«') {
                    expected.add(text.length());
                } else if (c != '»') {
                    text.append(c);
                }
            }
            Set<Integer> found = found(text.toString(), evidence);
            right += (int) expected.stream()
                    .filter(e -> covers(found, e, text.toString()))
                    .count();
            expected.stream().filter(e -> !covers(found, e, text.toString())).forEach(e -> missed.add(line));
            found.stream().filter(f -> !covers(expected, f, text.toString())).forEach(f -> falseAlarms.add(line));
        }
        double precision = right / (double) (right + falseAlarms.size());
        double recall = right / (double) (right + missed.size());
        String report = String.format(
                Locale.ROOT,
                "%d sentences, %d quantities: precision %.3f, recall %.3f%nmissed: %s%nfalse alarms: %s",
                sentences,
                right + missed.size(),
                precision,
                recall,
                missed,
                falseAlarms);
        System.out.println(report);
        assertTrue(sentences >= 300, report);
        assertTrue(precision > 0.95 && recall > 0.95, report);
    }

    private static Set<Integer> found(String text, FixedEvidence evidence) {
        Set<Integer> found = new TreeSet<>();
        for (ProseFault fault : Verification.verify(ProseSource.body("f.md", 1, text), evidence)) {
            if (fault.rule().equals("number-unlinked")) {
                int at = 0;
                for (int line = 1; line < fault.place().line(); line++) {
                    at = text.indexOf('\n', at) + 1;
                }
                found.add(at + fault.place().column() - 1);
            }
        }
        return found;
    }

    /** A mark may begin at the word before the number: "about 20 K", "over 40 min". */
    private static boolean covers(Set<Integer> places, int at, String text) {
        return places.stream()
                .anyMatch(p -> p == at
                        || text.substring(Math.min(p, at), Math.max(p, at)).matches("\\p{L}+ |−"));
    }
}
