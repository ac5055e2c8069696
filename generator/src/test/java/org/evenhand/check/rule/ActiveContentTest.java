package org.evenhand.check.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.evenhand.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a browser would run is found in Markdown; what it would only show is not. */
class ActiveContentTest {

    static Stream<Arguments> active() {
        return Stream.of(
                Arguments.of("<script>alert(1)</script>", "the element <script>"),
                Arguments.of("a <ScRiPt src=//x.example></ScRiPt> b", "the element <script>"),
                Arguments.of("<iframe src='https://x.example/'></iframe>", "the element <iframe>"),
                Arguments.of("a <img src=\"x\" onerror=\"alert(1)\"> b", "the handler “onerror”"),
                Arguments.of("<div\nonclick = 'alert(1)'>", "the handler “onclick”"),
                Arguments.of("a <a href=\"java&#x73;cript:alert(1)\">b</a>", "an address of the kind “javascript:”"),
                Arguments.of("a <a href='&#1;javascript:alert(1)'>b</a>", "an address of the kind “javascript:”"),
                Arguments.of("[a](javascript:alert%281%29)", "a link to a “javascript:” address"),
                Arguments.of("[a](JAVA&#115;CRIPT&colon;alert)", "a link to a “javascript:” address"),
                Arguments.of("[a](<java&Tab;script:alert>)", "a link to a “javascript:” address"),
                Arguments.of("<javascript:alert>", "a link to a “javascript:” address"),
                Arguments.of("[a][b]\n\n[b]: vbscript:x", "a link to a “vbscript:” address"),
                Arguments.of("![a](data:image/svg+xml;base64,AAAA)", "a picture from a “data:” address"),
                Arguments.of("<meta http-equiv=refresh content='0; url=https://x.example'>", "the element <meta>"));
    }

    /** Which characters browsers skip in a scheme: WHATWG URL, "basic URL parser", steps 1 to 3. */
    @ParameterizedTest
    @MethodSource("active")
    void isFound(String markdown, String what) {
        List<String> found = ActiveContent.in(markdown).stream()
                .map(part -> part.said(Words.english()))
                .distinct()
                .toList();
        assertEquals(List.of(what), found);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "T < 85 °C and U > 4.75 V",
                "a <b>bold</b> word, <br> and a <!-- remark -->",
                "`<script>alert(1)</script>`",
                "    <script>\n",
                "```\n<img src=x onerror=alert(1)>\n```\n",
                "[a](https://x.example/?q=javascript:alert) and <https://x.example/>",
                "[](evidence:plate-rise) and [](given:quillet-3/limits/clock)",
                "[a](data-sheet.pdf), [b](./javascript)",
                "the ratio is 3:1, and javascript: is a word",
                "on=1 < 2"
            })
    void isText(String markdown) {
        assertEquals(List.of(), ActiveContent.in(markdown));
    }

    @Test
    void thePlaceIsThatOfThePart() {
        assertEquals(
                List.of(new ActiveContent.Part("link", "javascript", 2, 5, 17)),
                ActiveContent.in("One.\n\nTwo: [a](javascript:b).\n"));
    }

    @Test
    void deepNestingNeitherOverflowsNorStalls() {
        String links = "![".repeat(100) + "a" + "](b)".repeat(100);
        String quotes = ">".repeat(20_000) + " [a](javascript:b)";
        String strong = "**".repeat(20_000) + "a" + "**".repeat(20_000);
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> ActiveContent.in(links));
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> ActiveContent.in(strong));
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> ActiveContent.in(quotes));
    }
}
