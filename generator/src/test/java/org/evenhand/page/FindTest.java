package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.evenhand.browser.Chromium;
import org.evenhand.browser.NeedsChromium;
import org.evenhand.browser.SiteServer;
import org.evenhand.browser.Tab;
import org.evenhand.page.view.Address;
import org.junit.jupiter.api.Test;

/** Search and filters of the index, and the list that they look through. */
class FindTest {

    private static final String SHOWN =
            "[...document.querySelectorAll('.question')].filter(q => q.checkVisibility()).length";

    private static JsonNode index() throws IOException {
        String text = SampleSiteFiles.text("search-index.js");
        return new ObjectMapper().readTree(text.substring("evenhandFind(".length(), text.lastIndexOf(");")));
    }

    @Test
    void everyPlaceOfTheListExists() throws IOException {
        JsonNode index = index();
        for (JsonNode entry : index.get("entries")) {
            String page = index.get("pages").get(entry.get(2).asInt()).get(1).asText();
            assertNotNull(SampleSiteFiles.PAGES.get(page), page);
            String id = entry.get(3).asText();
            if (!id.isEmpty()) {
                assertNotNull(SampleSiteFiles.PAGES.get(page).getElementById(id), page + "#" + id);
            }
        }
    }

    @Test
    void everyRowOfEvidenceIsInTheList() throws IOException {
        JsonNode index = index();
        List<String> listed = new java.util.ArrayList<>();
        index.get("entries")
                .forEach(entry -> listed.add(
                        index.get("pages").get(entry.get(2).asInt()).get(1).asText() + "#"
                                + entry.get(3).asText()));
        SampleSiteFiles.PAGES.forEach((path, page) -> {
            if (path.startsWith("answers/")) {
                page.select(".comparisons tbody tr")
                        .forEach(row -> assertTrue(listed.contains(path + "#" + row.id()), row.id()));
            }
        });
    }

    @Test
    @NeedsChromium
    void aWordNarrowsTheQuestionsAndFindsFiguresAndCaveatsAndStaysInTheAddress() {
        try (SiteServer server = SiteServer.of(SampleSiteFiles.FILES);
                Tab tab = Chromium.shared().tab()) {
            tab.go(server.url(Address.INDEX));
            int all = tab.evaluate(SHOWN).asInt();
            tab.evaluate("document.querySelector('#find [name=word]').focus()");
            tab.type("spreád TIME");
            tab.await("document.querySelectorAll('#found li').length > 0");
            assertTrue(tab.evaluate(SHOWN).asInt() < all);
            assertTrue(tab.evaluate("document.querySelector('#find [role=status]').textContent")
                    .asText()
                    .contains("Found in answers and records: "));
            tab.await("location.hash.includes('word=spre')");
            String asked = tab.evaluate("location.hash").asText();
            tab.go("about:blank");
            tab.go(server.url(Address.INDEX + asked));
            tab.await("document.querySelectorAll('#found li').length > 0");
            String first =
                    tab.evaluate("document.querySelector('#found li a').href").asText();
            tab.evaluate("document.querySelector('#find button').click()");
            assertEquals(all, tab.evaluate(SHOWN).asInt());
            assertEquals("", tab.evaluate("location.hash").asText());
            tab.go(first);
            assertTrue(
                    tab.evaluate("document.querySelector(':target') !== null").asBoolean(), first);
            assertEquals(List.of(), tab.complaints());
        }
    }

    @Test
    @NeedsChromium
    void questionsAreNarrowedByItemMethodAndState() {
        try (SiteServer server = SiteServer.of(SampleSiteFiles.FILES);
                Tab tab = Chromium.shared().tab()) {
            tab.go(server.url(Address.INDEX + "#state=wanted"));
            assertEquals(
                    SampleSiteFiles.PAGES
                            .get(Address.INDEX)
                            .select(".question .state-wanted")
                            .size(),
                    tab.evaluate(SHOWN).asInt());
            tab.go(server.url(Address.INDEX + "#item=quillet-2&method=encode-battery"));
            tab.await("document.querySelector('#find [name=item]').value === 'quillet-2'");
            assertEquals(
                    SampleSiteFiles.PAGES.get(Address.INDEX).select(".question").stream()
                            .filter(q -> !q.select(".about a[href^='items/quillet-2/']")
                                            .isEmpty()
                                    && !q.select(".about a[href^='methods/encode-battery/']")
                                            .isEmpty())
                            .count(),
                    tab.evaluate(SHOWN).asLong());
            assertEquals(List.of(), tab.complaints());
        }
    }

    @Test
    @NeedsChromium
    void aFolderOnDiskIsSearchedToo() {
        try (Tab tab = Chromium.shared().tab()) {
            Path folder = Path.of("target", "sample-site").toAbsolutePath();
            assertTrue(SampleSiteFiles.FILES.containsKey(Address.INDEX));
            tab.go(folder.resolve(Address.INDEX).toUri() + "#word=meter");
            tab.await("document.querySelectorAll('#found li').length > 0");
            assertEquals(List.of(), tab.complaints());
        }
    }
}
