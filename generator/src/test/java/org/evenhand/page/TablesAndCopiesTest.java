package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.evenhand.browser.Chromium;
import org.evenhand.browser.NeedsChromium;
import org.evenhand.browser.SiteServer;
import org.evenhand.browser.Tab;
import org.evenhand.page.view.Address;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What scripts add to tables, quotations and addresses, by the keyboard. */
@NeedsChromium
class TablesAndCopiesTest {

    private static final String ANSWER = Address.answer("heat-spreader");
    private static SiteServer server;
    private Tab tab;

    @BeforeAll
    static void serve() {
        server = SiteServer.of(SampleSiteFiles.FILES);
    }

    @AfterAll
    static void close() {
        if (server != null) server.close();
    }

    @BeforeEach
    void open() {
        tab = Chromium.shared().tab();
        tab.go(server.url(ANSWER));
    }

    @AfterEach
    void noComplaint() {
        List<String> complaints = tab.complaints();
        tab.close();
        assertEquals(List.of(), complaints);
    }

    private List<String> column(int column) {
        List<String> texts = new ArrayList<>();
        for (JsonNode cell : tab.evaluate("[...document.querySelectorAll('#runs-table tbody tr')].map(r => r.cells["
                + column + "].textContent.trim())")) texts.add(cell.asText());
        return texts;
    }

    private String sort(int column) {
        return tab.evaluate("document.querySelectorAll('#runs-table thead th')[" + column + "].ariaSort ?? ''")
                .asText();
    }

    @Test
    void aTableIsOrderedByAColumnOfNumbersWithTheKeyboard() {
        List<String> published = column(4);
        tab.evaluate("document.querySelectorAll('#runs-table thead th')[4].querySelector('button').focus()");
        tab.key("Enter");
        assertEquals("ascending", sort(4));
        List<Double> rising =
                column(4).stream().map(TablesAndCopiesTest::number).toList();
        assertEquals(rising.stream().sorted().toList(), rising);
        assertEquals(
                published.stream().sorted().toList(),
                column(4).stream().sorted().toList(),
                "no row is lost");
        tab.key("Enter");
        assertEquals("descending", sort(4));
        List<Double> falling =
                column(4).stream().map(TablesAndCopiesTest::number).toList();
        assertEquals(rising.stream().sorted(Comparator.reverseOrder()).toList(), falling);
        tab.key(" ");
        assertEquals("", sort(4));
        assertEquals(published, column(4), "as published again");
    }

    private static double number(String cell) {
        return Double.parseDouble(cell.replace('\u2212', '-').replaceFirst("^\\D*?(-?\\d+(\\.\\d+)?)[\\s\\S]*$", "$1"));
    }

    @Test
    void onAPhoneAListOrdersAndTheHiddenHeadingsAreNotStoppedAt() {
        tab.size(360, 800);
        tab.go(server.url(ANSWER));
        assertEquals(
                -1,
                tab.evaluate("document.querySelector('#runs-table thead button').tabIndex")
                        .asInt());
        tab.evaluate("""
                (() => { const s = document.querySelector('#runs-table').previousElementSibling.querySelector('select');
                s.value = '0-'; s.dispatchEvent(new Event('change')); })()""");
        List<String> names = column(0);
        assertTrue(names.get(0).startsWith("spreader-and-fan-6"), names::toString);
        assertTrue(names.get(names.size() - 1).startsWith("none-1"), names::toString);
    }

    @Test
    void aQuotationIsCopiedAsItIsWritten() {
        tab.call(
                "Browser.grantPermissions",
                Map.of("permissions", List.of("clipboardReadWrite", "clipboardSanitizedWrite")));
        tab.evaluate("document.querySelector('#quote details').open = true");
        tab.evaluate("document.querySelector('#quote .snippet .copy').focus()");
        tab.key("Enter");
        tab.await("document.querySelector('#told').textContent === 'Copied'");
        assertEquals(
                tab.evaluate("document.querySelector('#quote .snippet pre').textContent"),
                tab.evaluate("navigator.clipboard.readText()"));
    }

    @Test
    void theAddressOfTheRowThatIsOpenCanBeCopied() {
        tab.call(
                "Browser.grantPermissions",
                Map.of("permissions", List.of("clipboardReadWrite", "clipboardSanitizedWrite")));
        tab.go(server.url(ANSWER + "#level.none.time-to-throttle"));
        tab.await("document.querySelector('tr .copy-address')");
        tab.evaluate("document.querySelector('tr .copy-address').focus()");
        tab.key("Enter");
        tab.await("document.querySelector('#told').textContent === 'Copied'");
        assertEquals(
                SampleSiteFiles.PAGES
                                .get(ANSWER)
                                .selectFirst("link[rel=canonical]")
                                .attr("href") + "#level.none.time-to-throttle",
                tab.evaluate("navigator.clipboard.readText()").asText());
    }

    @Test
    void withoutScriptNoControlIsShownThatNeedsOne() {
        tab.script(false);
        tab.go(server.url(ANSWER));
        assertEquals(
                0,
                tab.evaluate(
                                "[...document.querySelectorAll('button, select, input')].filter(e => !e.hasAttribute('popovertarget') && e.checkVisibility()).length")
                        .asInt());
    }
}
