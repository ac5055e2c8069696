package org.evenhand.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Texts made to exhaust whoever reads Markdown: the pathological cases that the authors of CommonMark's reference
 * implementation test (test/pathological_tests.py of cmark, from memory), at the largest size that is read, in paragraphs of
 * the largest size that is read and in one, and ten megabytes of single characters.
 */
class ExhaustingMarkdownTest {

    private static final int LARGEST = (int) Quota.PROSE_CHARACTERS.usual();
    private static final FixedEvidence EVIDENCE = new FixedEvidence("en");

    static Stream<String> pumped() {
        List<String> all = new ArrayList<>();
        for (String part : List.of(
                "*a **a ",
                "_a __a ",
                "a**b",
                "*",
                "_",
                "`",
                "[",
                "]",
                "![",
                "[a](",
                "[a](<b",
                "> ",
                "* ",
                "- ",
                "1. ",
                "#",
                "&",
                "<",
                "<a ",
                "<!--",
                "\\",
                "~",
                "|",
                "a|",
                "| - ",
                "[a]: b\n",
                "[a]\n",
                "“",
                "‘",
                "\"",
                ".",
                "!? ",
                "1 ",
                "e. ",
                "a.b ",
                "± ",
                "1 of ",
                "5 °C ",
                "no ",
                "than ",
                "[1 W](evidence:fan-rise) ",
                "[](evidence:fan-rise)",
                "*[a](b)*",
                "`` ` ",
                "\t",
                "\n",
                " \n",
                "5 W than 6 W ",
                "x 5 % ",
                "    ")) {
            all.add(part.repeat(LARGEST / part.length()));
            all.add((part.repeat((Markdown.LONGEST_PARAGRAPH - 2) / part.length()) + "\n\n").repeat(10));
        }
        StringBuilder backticks = new StringBuilder();
        for (int i = 1; backticks.length() + i < LARGEST; i++) {
            backticks.append('e').append("`".repeat(i));
        }
        all.add(backticks.toString());
        all.add("[".repeat(LARGEST / 2) + "]".repeat(LARGEST / 2));
        all.add("> ".repeat(LARGEST / 4) + "a\n" + "* ".repeat(LARGEST / 4));
        all.add("**x [a*b**c*](d)".repeat(LARGEST / 16));
        StringBuilder nested = new StringBuilder();
        for (int i = 0; nested.length() + i < LARGEST; i++) {
            nested.append(" ".repeat(i)).append("* a\n");
        }
        all.add(nested.toString());
        all.add("a\n" + "|a".repeat(LARGEST / 4) + "\n" + "|-".repeat(LARGEST / 4 - 1));
        for (String one : List.of("*", "[", "`", "> ", "_")) {
            all.add(one.repeat(10_000_000 / one.length()));
        }
        return all.stream();
    }

    /**
     * The time is generous: it is there to tell seconds from hours, not fast from slow. Alone on a machine of two cores the
     * slowest takes some four seconds.
     */
    @ParameterizedTest(name = "{index}")
    @MethodSource("pumped")
    void everyTextIsRenderedAndVerifiedOrRefused(String text) {
        ProseSource source = ProseSource.body("study.md", 1, text);
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            Rendered rendered = Prose.render(source, EVIDENCE, target -> "#", 1);
            MarkdownFuzz.check(rendered.html());
            List<ProseFault> faults = Verification.verify(source, EVIDENCE);
            boolean isOne = !text.contains("\n") && text.strip().length() > Markdown.LONGEST_PARAGRAPH;
            if (isOne || text.length() > Markdown.LONGEST) {
                assertEquals("size-limit", rendered.faults().get(0).rule());
                assertEquals("size-limit", faults.get(0).rule());
            }
        });
    }

    @Test
    void aParagraphJustShortEnoughIsRead() {
        String longest = "a".repeat(Markdown.LONGEST_PARAGRAPH);
        for (String text : List.of(
                longest, longest + "\n\n" + longest, "> " + longest.substring(2) + "\n>\n> " + longest.substring(2))) {
            assertEquals(
                    List.of(),
                    Prose.render(ProseSource.body("study.md", 1, text), EVIDENCE, t -> "#", 1)
                            .faults());
        }
        // Lines that look like an end and are none.
        for (String line : List.of("\n    >\n", "\n    > \n", "\n")) {
            String half = "a".repeat(Markdown.LONGEST_PARAGRAPH / 2);
            assertEquals(
                    "size-limit",
                    Prose.render(ProseSource.body("study.md", 1, half + line + half), EVIDENCE, t -> "#", 1)
                            .faults()
                            .get(0)
                            .rule());
        }
    }

    @Test
    void aTextThatTakesTooLongIsGivenUp() {
        // A clock that is a second later whenever it is looked at.
        AtomicLong seconds = new AtomicLong();
        Limits limits = Limits.DEFAULT.timedBy(() -> seconds.getAndIncrement() * 1_000_000_000L);
        ProseText text = ProseText.read(ProseSource.body("study.md", 1, "One.\n\n".repeat(20)));
        List<ProseFault> faults =
                Verification.of(EVIDENCE, limits.with(Quota.FILE_SECONDS, 5)).verify(text, Verification.Extent.ALL);
        assertEquals("size-limit", faults.get(0).rule());
        assertEquals(
                List.of(),
                Verification.of(EVIDENCE, limits.with(Quota.FILE_SECONDS, 50)).verify(text, Verification.Extent.ALL));
    }
}
