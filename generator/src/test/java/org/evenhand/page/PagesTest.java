package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.evenhand.page.view.Address;
import org.evenhand.words.Words;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every page of the example, against what HTML (whatwg.org, sections 3.2.6 on ids, 4.3.11 on headings, 4.9 on tables),
 * WCAG 2.2 (1.3.1, 2.4.1, 3.1.1) and CSP 3 ask of it. The pages are left in {@code target/look} to be looked at.
 */
class PagesTest {
    private static final Map<String, Document> PAGES = new TreeMap<>();

    @BeforeAll
    static void renderAll() throws IOException {
        Templates templates = Templates.bundled();
        Path look = Path.of("target", "look");
        for (var each : ExampleViews.all().entrySet()) {
            String html =
                    templates.render(each.getValue().template(), each.getValue().view(), Words.english());
            write(look.resolve(each.getKey()), html.getBytes(java.nio.charset.StandardCharsets.UTF_8));
            PAGES.put(each.getKey(), Jsoup.parse(html));
        }
        for (String asset : Templates.ASSETS) write(look.resolve(asset), templates.asset(asset));
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }

    static Stream<String> paths() {
        return ExampleViews.all().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("paths")
    void hasOneMainHeadingAndSkipsNoHeadingLevel(String path) {
        Document page = PAGES.get(path);
        assertEquals(1, page.select("h1").size());
        int before = 1;
        for (Element heading : page.select("h1, h2, h3, h4, h5, h6")) {
            int level = heading.tagName().charAt(1) - '0';
            assertTrue(level <= before + 1, "h" + before + " is followed by " + heading);
            before = level;
        }
    }

    @ParameterizedTest
    @MethodSource("paths")
    void hasUniqueIdsWithoutSpaces(String path) {
        Set<String> seen = new HashSet<>();
        for (Element each : PAGES.get(path).select("[id]")) {
            assertTrue(seen.add(each.id()), "twice: " + each.id());
            assertTrue(each.id().matches("\\S+"), each.id());
        }
        for (Element each : PAGES.get(path).select("[aria-labelledby]"))
            assertTrue(seen.contains(each.attr("aria-labelledby")), each.attr("aria-labelledby"));
    }

    @ParameterizedTest
    @MethodSource("paths")
    void linksLeadRelativelyToPlacesThatExist(String path) {
        for (Element link : PAGES.get(path).select("a[href]")) {
            String href = link.attr("href");
            if (href.startsWith("https://")) continue;
            assertFalse(href.startsWith("/") || href.contains(":"), href);
            String[] parts = href.split("#", 2);
            String target = parts[0].isEmpty() ? path : resolve(path, parts[0]);
            assertFalse(target.startsWith(".."), "leaves the site: " + href);
            if (parts.length == 2 && PAGES.containsKey(target))
                assertTrue(PAGES.get(target).getElementById(parts[1]) != null, path + " leads to " + href);
        }
    }

    private static String resolve(String path, String relative) {
        Path folder = Path.of(path).getParent();
        Path target = folder == null ? Path.of(relative) : folder.resolve(relative);
        return target.normalize().toString().replace('\\', '/');
    }

    @ParameterizedTest
    @MethodSource("paths")
    void everyTableHasACaptionAndScopedHeadings(String path) {
        for (Element table : PAGES.get(path).select("table")) {
            assertFalse(table.select("> caption").text().isBlank(), table.id());
            assertTrue(table.select("th:not([scope])").isEmpty(), table.select("th:not([scope])")::toString);
            int width = columns(table.selectFirst("thead > tr"));
            for (Element row : table.select("tbody > tr, tfoot > tr")) assertEquals(width, columns(row), row::toString);
        }
    }

    private static int columns(Element row) {
        return row.children().stream()
                .mapToInt(cell -> cell.hasAttr("colspan") ? Integer.parseInt(cell.attr("colspan")) : 1)
                .sum();
    }

    @ParameterizedTest
    @MethodSource("paths")
    void carriesNothingThatItsSecurityPolicyWouldBlock(String path) {
        Document page = PAGES.get(path);
        Element first = page.head().child(0);
        assertEquals("Content-Security-Policy", first.attr("http-equiv"), "the policy binds only what follows it");
        assertTrue(first.attr("content").startsWith("default-src 'none';"));
        assertTrue(
                page.select("style, [style], iframe, object, embed, form, base").isEmpty());
        for (Element script : page.select("script")) {
            assertTrue(script.data().isEmpty(), "written into the page: " + script);
            assertTrue(script.attr("src").matches("(\\.\\./)*assets/[a-z]+\\.js"), script::toString);
        }
        for (Element each : page.getAllElements())
            each.attributes().forEach(a -> assertFalse(a.getKey().startsWith("on"), a.getKey()));
    }

    @ParameterizedTest
    @MethodSource("paths")
    void hasLanguageLandmarksAndAWayPastTheMenu(String path) {
        Document page = PAGES.get(path);
        assertEquals("en", page.selectFirst("html").attr("lang"));
        assertEquals(1, page.select("main").size());
        assertEquals(
                "#" + page.selectFirst("main").id(),
                page.selectFirst("body > a").attr("href"));
        for (Element region : page.select("[role=region], nav"))
            assertFalse((region.attr("aria-label") + region.attr("aria-labelledby")).isBlank());
        for (Element box : page.select(".scroll")) assertEquals("0", box.attr("tabindex"));
    }

    @ParameterizedTest
    @MethodSource("paths")
    void saysThatInventedDataAreInvented(String path) {
        assertTrue(PAGES.get(path).body().text().contains("Invented data."));
    }

    @Test
    void hostileTextIsShownAndNotObeyed() {
        for (String path : List.of(Address.INDEX, Address.answer("fan-noise"))) {
            String text = PAGES.get(path).body().text();
            assertTrue(text.contains("<script>alert(1)</script> ${7*7}"), path);
        }
        assertTrue(PAGES.get(Address.answer("heat-spreader")).body().text().contains("<b>not metered</b>"));
    }

    @Test
    void aFigureNeverStandsWithoutIntervalAndCount() {
        for (Document page : PAGES.values())
            for (Element figure : page.select(".figure"))
                assertTrue(figure.selectFirst(".support").text().contains("n = "), figure::toString);
    }

    @Test
    void everyRowOfEvidenceHasItsAddress() {
        for (Element row : PAGES.get(Address.answer("heat-spreader"))
                .select(".summary tbody tr, .comparisons tbody tr, .runs tbody tr"))
            assertTrue(row.id().matches("(level|comparison|run)\\..+"), row::toString);
    }
}
