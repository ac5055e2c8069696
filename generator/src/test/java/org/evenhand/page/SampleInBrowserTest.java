package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The pages of the sample in a browser: what axe-core 4.14.1 finds against WCAG 2.2 A and AA, whether a page scrolls
 * sideways on a narrow screen (1.4.10), whether the keyboard reaches everything (2.1.1), with and without scripts.
 */
@NeedsChromium
class SampleInBrowserTest {

    /** Of pages that are many and alike one for each study is enough. */
    private static final int OF_A_KIND = 1;

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
    }

    @AfterEach
    void shut() {
        tab.close();
    }

    /** Every page that is the only one of its kind, every answer, and of the runs of each study the first. */
    private static List<String> kinds() {
        Map<String, Integer> seen = new TreeMap<>();
        List<String> pages = new ArrayList<>();
        for (String path : SampleSiteFiles.PAGES.keySet()) {
            String[] parts = path.split("/");
            String kind = parts[0].equals("runs") ? parts[0] + "/" + parts[1] : path;
            if (seen.merge(kind, 1, Integer::sum) <= OF_A_KIND) pages.add(path);
        }
        return pages;
    }

    private static String axe() throws IOException {
        try (InputStream in = Chromium.class.getResourceAsStream("axe.min.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void axeFindsNoViolation(String scheme) throws IOException {
        String axe = axe();
        List<String> violations = new ArrayList<>();
        tab.media(Map.of("prefers-color-scheme", scheme));
        for (String path : kinds()) {
            tab.go(server.url(path));
            // What is folded away is part of the page.
            tab.evaluate("document.querySelectorAll('details').forEach(each => { each.open = true; })");
            tab.evaluate(axe + "; null");
            JsonNode found = tab.evaluate("axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],"
                    + " resultTypes: ['violations']}).then(r => r.violations.map(v =>"
                    + " v.id + ': ' + v.nodes.slice(0, 3).map(n => n.target.join(' ')).join(', ')))");
            found.forEach(each -> violations.add(path + ": " + each.asText()));
        }
        assertEquals(List.of(), violations);
    }

    /** That axe is at work. */
    @Test
    void axeFindsWhatIsWrong() throws IOException {
        tab.go(server.url(Address.INDEX));
        tab.evaluate("document.querySelector('h1').insertAdjacentHTML('afterend', '<img src=\"x.png\">')");
        tab.evaluate(axe() + "; null");
        JsonNode found = tab.evaluate("axe.run().then(r => r.violations.map(v => v.id))");
        assertTrue(found.toString().contains("image-alt"), found::toString);
    }

    /** Compares the middle of the mark with that of the figure's last line, which are some pixels apart: the mark is raised. */
    @Test
    void theMarkOfANoteIsNeverPartedFromItsFigure() {
        tab.go(server.url(Address.answer("heat-spreader")));
        assertTrue(
                tab.evaluate("document.querySelectorAll('.figure-mark').length").asInt() > 0);
        for (int width = 320; width <= 1280; width += 40) {
            tab.size(width, 800);
            assertEquals(
                    0,
                    tab.evaluate("[...document.querySelectorAll('.figure-mark')].filter(mark => {"
                                    + " const line = [...mark.previousElementSibling.getClientRects()].pop();"
                                    + " const box = mark.getBoundingClientRect();"
                                    + " return Math.abs(line.top + line.bottom - box.top - box.bottom) > 18; }).length")
                            .asInt(),
                    width + " px");
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void noPageScrollsSidewaysOnANarrowScreen(boolean script) {
        tab.size(320, 640);
        tab.script(script);
        List<String> wide = new ArrayList<>();
        for (String path : SampleSiteFiles.PAGES.keySet()) {
            tab.go(server.url(path));
            int width = tab.evaluate("document.documentElement.scrollWidth").asInt();
            if (width > 320) wide.add(path + ": " + width);
            assertEquals(List.of(), tab.complaints(), path);
        }
        assertEquals(List.of(), wide);
    }

    /** From the top of the page on, each press of the key is one place further, and none that can be used is left out. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void theKeyboardReachesEverything(boolean script) {
        tab.script(script);
        for (String path : List.of(
                Address.INDEX, Address.CAVEATS, Address.answer("night-run"), Address.run("heat-spreader", "none-1"))) {
            tab.go(server.url(path));
            String usable =
                    "[...document.querySelectorAll('a[href], button, summary, input, select, [tabindex=\"0\"]')]"
                            + ".filter(e => e.checkVisibility({visibilityProperty: true}) && !e.disabled)";
            int all = tab.evaluate(usable + ".length").asInt();
            assertTrue(all > 10, path);
            Set<Integer> reached = new HashSet<>();
            for (int i = 0; i < all + 5 && reached.size() < all; i++) {
                tab.key("Tab");
                int at = tab.evaluate(usable + ".indexOf(document.activeElement)")
                        .asInt();
                if (at >= 0) reached.add(at);
            }
            Set<String> missed = new HashSet<>();
            for (int i = 0; i < all; i++) {
                if (!reached.contains(i))
                    missed.add(tab.evaluate(usable + "[" + i + "].outerHTML.slice(0, 200)")
                            .asText());
            }
            assertEquals(Set.of(), missed, path);
        }
    }
}
