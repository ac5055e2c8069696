package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.evenhand.browser.Chromium;
import org.evenhand.browser.NeedsChromium;
import org.evenhand.browser.SiteServer;
import org.evenhand.browser.Tab;
import org.evenhand.page.view.Address;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The page on which a reader picks two levels. */
class CompareTest {

    private static final Document PAGE = SampleSiteFiles.PAGES.get(Address.COMPARE);

    private static String pick(String first, String second) {
        return """
                (() => { const [a, b] = document.querySelectorAll('#pick select'); a.value = '%s'; b.value = '%s';
                b.dispatchEvent(new Event('change', { bubbles: true }));
                return document.querySelector('#picked').innerText; })()""".formatted(first, second);
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\u00a0\u202f]+", " ").strip();
    }

    @Test
    void everyTwoLevelsOfAMeasurandStandOnThePageOnceWithWhatMayBeSaid() {
        for (Element section : PAGE.select("main > section")) {
            int levels = section.select("tr[data-level]").size();
            assertEquals(
                    levels * (levels - 1) / 2, section.select("tr[data-first]").size(), section.id());
            for (Element pair : section.select("tr[data-first]")) {
                for (String side : List.of("data-first", "data-second")) {
                    assertNotNull(section.selectFirst("tr[data-level=\"" + pair.attr(side) + "\"]"));
                }
                assertFalse(pair.select(".says").text().isBlank(), pair::toString);
            }
        }
    }

    @Test
    void aPairThatAnAnswerRefusesIsRefusedHereWithEveryRule() {
        Element pair = PAGE.selectFirst("tr[data-first='supply/new supply']");
        assertEquals(1, pair.select(".verdict-not-comparable").size());
        for (Element refused :
                SampleSiteFiles.PAGES.get(Address.answer("supply")).select(".refused li .rule")) {
            assertTrue(PAGE.select("tr[data-first='supply/new supply']").text().contains(refused.text()));
        }
    }

    @Test
    @NeedsChromium
    void twoPickedLevelsAreToldAsThePageHasThemAndStayInTheAddress() {
        try (SiteServer server = SiteServer.of(SampleSiteFiles.FILES);
                Tab tab = Chromium.shared().tab()) {
            tab.go(server.url(Address.COMPARE));
            String told = tab.evaluate(pick("heat-spreader/none", "heat-spreader/spreader"))
                    .asText();
            for (Element pair :
                    PAGE.select("tr[data-first='heat-spreader/spreader'][data-second='heat-spreader/none']")) {
                assertTrue(told.contains(pair.selectFirst(".verdict").text()), told);
                assertTrue(plain(told).contains(plain(pair.select(".words").text())), told);
            }
            assertTrue(told.contains("rise-misused"), told);
            String address = tab.evaluate("location.hash").asText();
            tab.go("about:blank");
            tab.go(server.url(Address.COMPARE + address));
            assertEquals(
                    told,
                    tab.evaluate("document.querySelector('#picked').innerText").asText());
            assertTrue(tab.evaluate(pick("heat-spreader/none", "raised-clock/1800 MHz"))
                    .asText()
                    .startsWith("The two have no measurand in common"));
            assertTrue(tab.evaluate(pick("heat-spreader/none", "heat-spreader/none"))
                    .asText()
                    .startsWith("That is one level twice"));
            assertEquals(List.of(), tab.complaints());
        }
    }
}
