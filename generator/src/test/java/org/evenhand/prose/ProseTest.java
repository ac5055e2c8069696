package org.evenhand.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.evenhand.model.Place;
import org.evenhand.prose.ProseSource.Form;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProseTest {

    private static final SampleEvidence SAMPLE = new SampleEvidence();

    private static Rendered render(String study, String text) {
        ProseSource source = ProseSource.body("studies/x/study.md", 31, text);
        return Prose.render(source, SAMPLE.resolver(study), ProseTest::address, 1);
    }

    private static String address(Target target) {
        return target instanceof Target.OfComparison c
                ? "../answers/x/index.html#comparison." + c.comparison()
                : "#other";
    }

    @Test
    void anEmptyLinkIsFilledWithTheFigureAndCarriesItsInterval() {
        Rendered rendered = render("heat-spreader", "The frames: [](evidence:spreader-frames).");
        Element link = Jsoup.parse(rendered.html()).selectFirst("a.evidence");
        assertEquals("../answers/x/index.html#comparison.spreader-frames", link.attr("href"));
        assertTrue(link.text().matches("1\\.\\d+"), link.text());
        assertTrue(link.attr("title").contains("95\u00a0% interval"), link.attr("title"));
        assertTrue(link.attr("title").contains("n = 6 and 6 specimens"), link.attr("title"));
    }

    @Test
    void theNoteOfAFigureIsOpenedByAButtonWithoutAScript() {
        ProseSource source =
                ProseSource.body("studies/x/study.md", 31, "[1.3](evidence:spreader-frames), [](evidence:fan-rise).");
        EvidenceAddress address = new EvidenceAddress() {
            @Override
            public String of(Target target) {
                return "#there";
            }

            @Override
            public Optional<String> notes() {
                return Optional.of("note.a");
            }
        };
        var page = Jsoup.parse(Prose.render(source, SAMPLE.resolver("heat-spreader"), address, 1)
                .html());
        assertEquals(
                2,
                page.select(
                                "span.figure-bound:has(a.evidence + button.figure-mark[type=button]) + span.figure-note[popover=auto]")
                        .size());
        for (Element button : page.select("button")) {
            Element note = page.getElementById(button.attr("popovertarget"));
            assertTrue(note.text().contains("95 % interval"), note.text());
            assertTrue(note.text().contains("n = 6 and 6 specimens"), note.text());
            assertTrue(button.attr("aria-label").startsWith("±"), "what is seen is part of the name");
        }
        assertEquals(0, page.select("[title]").size());
    }

    @ParameterizedTest(name = "{0} → {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "battery | evidence:battery-energy?as=percent | 21.01 % less",
                "battery | evidence:battery-energy?as=words | 21.01 % less energy than Quillet 2",
                "battery | evidence:delay?as=words | no difference that these runs could show",
                "heat-spreader | evidence:fan-rise?as=words | 13.28 K lower than spreader",
                "supply | evidence:supply-power | not comparable",
                "heat-spreader | evidence:throttle-onset/median/none | 12.38 min",
                "heat-spreader | evidence:throttle-onset/median/spreader | more than 45 min",
                "heat-spreader | evidence:level/spreader/time-to-throttle | more than 45 min in each of 6",
                "heat-spreader | evidence:run/spreader-1/time-to-throttle | more than 45 min",
                "raised-clock-yield | evidence:holds-raised | 9 of 10 (95 % interval 55.5 % to 99.7 %)",
                "raised-clock-yield | evidence:holds-raised/successes | 9",
                "raised-clock-yield | evidence:run/hold-a7/holds | no",
                "cable | evidence:cable-speed/margin | 2 %",
                "cable | given:cable-speed/same-within | 2 %",
                "cable | given:supply-lead/run-length | 20 min",
                "fan-noise | evidence:run/full-1/heard | faint",
                "night-run | evidence:night-failures/events | 0",
            })
    void everyFormAndPartIsWrittenAsDescribed(String study, String address, String expected) {
        Rendered rendered = render(study, "It is [](" + address + ").");
        assertEquals(List.of(), rendered.faults());
        assertEquals(
                "It is " + expected + ".", Jsoup.parse(rendered.html()).text().replace('\u00a0', ' '));
    }

    /** Source of the interval 55.5 % to 99.7 % above: Clopper–Pearson for 9 of 10, as in tables of exact intervals. From memory. */
    @Test
    void aNumberNeverPartsFromItsUnit() {
        Rendered rendered = render("raised-clock-yield", "[](evidence:holds-raised)");
        assertTrue(rendered.html().contains("55.5\u00a0%"), rendered.html());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "evidence:spreader-riese | 32 | did you mean",
                "evidence:level/non/energy | 32 | did you mean “none”?",
                "evidence:level/none/enery | 32 | did you mean “energy”?",
                "evidence:run/none-9/energy | 32 | did you mean",
                "evidence:spreader-energy/hihg | 32 | did you mean “high”?",
                "evidence:spreader-energy?as=precent | 32 | percent",
                "given:quillet-3/limits/temprature | 32 | did you mean “limits/temperature”?",
                "evidence:level/%zz/energy | 32 | %20",
            })
    void anAddressThatLeadsNowhereIsShownAtItsPlaceWithWhatMayBeMeant(String address, int line, String remedy) {
        Rendered rendered = render("heat-spreader", "First line,\nthen [some text](" + address + ") here.");
        assertEquals(1, rendered.faults().size(), rendered.toString());
        ProseFault fault = rendered.faults().get(0);
        assertEquals("reference-unresolved", fault.rule());
        assertEquals(new Place("studies/x/study.md", line, 18, address.length()), fault.place());
        assertTrue(fault.remedy().contains(remedy), fault.remedy());
        assertTrue(rendered.html().contains("some text"));
        assertFalse(rendered.html().contains("<a"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[a](javascript:alert(1))",
                "[a](java&#115;cript:x)",
                "[a](JaVaScRiPt:x)",
                "[a](&#1;javascript:x)",
                "[a](data:text/html;base64,xx)",
                "[a](vbscript:x)",
                "<javascript:alert(1)>",
                "<img src=x onerror=alert(1)>",
                "<script>alert(1)</script>",
                "text <svg onload=alert(1)> text",
                "> <iframe src=x></iframe>",
            })
    void whatCouldRunIsReportedAndDoesNotGetThrough(String text) {
        Rendered rendered = render("heat-spreader", text);
        assertEquals(1, rendered.faults().size(), rendered.toString());
        assertEquals("content-active", rendered.faults().get(0).rule());
        var document = Jsoup.parseBodyFragment(rendered.html());
        assertEquals(0, document.select("script, img, svg, iframe, a").size(), rendered.html());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Here T < 85 °C and T > 20 °C.",
                "A [page](https://example.org/a), a [letter](mailto:a@example.org), a [neighbour](../other/index.html#x).",
                "`<script>` is code.",
                "    <script>code</script>",
                "Two <b>bold</b> words",
            })
    void whatIsHarmlessGetsThroughUnreported(String text) {
        assertEquals(List.of(), render("heat-spreader", text).faults());
    }

    @Test
    void lessThanIsText() {
        assertEquals(
                "<p>T &lt; 85 °C</p>\n", render("heat-spreader", "T < 85 °C").html());
    }

    @Test
    void picturesBecomeWhatTheyShow() {
        String html = render("heat-spreader", "See ![the *box*](https://example.org/x.png) there.")
                .html();
        assertEquals("<p>See the <em>box</em> there.</p>\n", html);
    }

    @Test
    void headingsAreMovedBelowThoseOfThePage() {
        assertEquals(
                "<h3>A</h3>\n<h4>B</h4>\n<h6>C</h6>\n",
                render("heat-spreader", "## A\n### B\n###### C").html());
    }

    @Test
    void aSingleParagraphStandsInlineWhereItIsAField() {
        ProseSource source = ProseSource.field(new Place("f", 4, 8, 9), "A *word*.", Form.INLINE);
        assertEquals(
                "A <em>word</em>.",
                Prose.render(source, SAMPLE.resolver("cable"), t -> "#", 0).html());
    }

    @ParameterizedTest
    @ValueSource(strings = {"> ", "![", "[", "- ", "*a **b ", "<b>", "1. "})
    void nestingWithoutEndIsRefusedOrFlattenedAndNeverOverflows(String piece) {
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            Rendered rendered = render("cable", piece.repeat(20_000));
            assertTrue(
                    rendered.faults().stream().allMatch(f -> f.rule().equals("size-limit")), "only the size matters");
        });
    }

    @Test
    void aTextWithoutEndIsRefused() {
        Rendered rendered = render("cable", "a ".repeat(300_000));
        assertEquals("size-limit", rendered.faults().get(0).rule());
    }

    @Test
    void tablesAreTables() {
        String html = render("heat-spreader", "| a | b |\n|---|---|\n| [](evidence:spreader-frames) | c |")
                .html();
        assertEquals(1, Jsoup.parse(html).select("table td a.evidence").size());
    }
}
