package org.evenhand.prose;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How well quantities without evidence are told from other numbers, on sentences marked by hand. */
class UnlinkedCorpusTest {

    /** By which the search was made; then by other voices, marked before it saw them, of which the first mended it since. */
    private static final List<String> FILES =
            List.of("unlinked-corpus.txt", "unlinked-held-out.txt", "unlinked-held-out-2.txt");

    /** What was found of what is marked in some sentences. */
    private record Count(int sentences, int right, List<String> missed, List<String> falseAlarms) {

        double precision() {
            return right / (double) (right + falseAlarms.size());
        }

        double recall() {
            return right / (double) (right + missed.size());
        }

        Count plus(Count other) {
            return new Count(
                    sentences + other.sentences,
                    right + other.right,
                    Stream.concat(missed.stream(), other.missed.stream()).toList(),
                    Stream.concat(falseAlarms.stream(), other.falseAlarms.stream())
                            .toList());
        }

        String report(String of) {
            return String.format(
                    Locale.ROOT,
                    "%s: %d sentences, %d quantities: precision %.3f, recall %.3f%nmissed: %s%nfalse alarms: %s",
                    of,
                    sentences,
                    right + missed.size(),
                    precision(),
                    recall(),
                    missed,
                    falseAlarms);
        }
    }

    @Test
    void precisionAndRecallAreAbove95PercentOverAllAndAbove90PercentOnEachSet() throws IOException {
        Count all = new Count(0, 0, List.of(), List.of());
        for (String file : FILES) {
            Count count = count(file);
            System.out.println(count.report(file));
            assertTrue(count.sentences() >= 150, count.report(file));
            assertTrue(count.precision() > 0.9 && count.recall() > 0.9, count.report(file));
            all = all.plus(count);
        }
        System.out.println(all.report("together").lines().findFirst().orElseThrow());
        assertTrue(all.sentences() >= 300, all.report("together"));
        assertTrue(all.precision() > 0.95 && all.recall() > 0.95, all.report("together"));
    }

    private static Count count(String file) throws IOException {
        FixedEvidence evidence = new FixedEvidence("en");
        int sentences = 0;
        int right = 0;
        List<String> missed = new ArrayList<>();
        List<String> falseAlarms = new ArrayList<>();
        for (String line : SentencesTest.lines(file)) {
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
        return new Count(sentences, right, missed, falseAlarms);
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
                        || text.substring(Math.min(p, at), Math.max(p, at)).matches("\\p{L}+ |−|±"));
    }
}
