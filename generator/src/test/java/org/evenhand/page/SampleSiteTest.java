package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TimeZone;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.evenhand.check.FolderChecker;
import org.evenhand.model.Run;
import org.evenhand.model.Study;
import org.evenhand.page.overview.Headers;
import org.evenhand.page.view.Address;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every page of the sample as a reader gets it. What is asked of HTML: whatwg.org, 3.2.6 (ids) and 4.3.11 (headings). The
 * budgets of bytes are our own.
 */
class SampleSiteTest {

    private static final int CHART_BYTES = 40_000;
    private static final int PAGE_BYTES = 150_000;

    static Stream<String> paths() {
        return SampleSiteFiles.PAGES.keySet().stream();
    }

    static List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        for (Study study : SampleSiteFiles.CHECKED.folder().studies().values()) {
            runs.addAll(study.runs());
        }
        return runs;
    }

    @ParameterizedTest
    @MethodSource("paths")
    void everyLinkOfTheSiteLeadsToAPlaceThatExists(String path) {
        Document page = SampleSiteFiles.PAGES.get(path);
        for (Element element : page.select("[href], [src]")) {
            String href = element.hasAttr("href") ? element.attr("href") : element.attr("src");
            if (href.startsWith("http") || href.endsWith("manifest-sha256.txt")) {
                continue; // the manifest lists what is here, and comes last
            }
            String[] parts = href.split("#", 2);
            String target = parts[0].isEmpty() ? path : resolved(path, parts[0]);
            assertTrue(SampleSiteFiles.FILES.containsKey(target), () -> path + " leads to " + href);
            if (parts.length == 2) {
                assertNotNull(
                        SampleSiteFiles.PAGES
                                .get(target)
                                .getElementById(URLDecoder.decode(parts[1], StandardCharsets.UTF_8)),
                        () -> path + " leads to " + href);
            }
        }
    }

    private static String resolved(String from, String href) {
        String path = URLDecoder.decode(href.replace("+", "%2B"), StandardCharsets.UTF_8);
        return java.nio.file.Path.of(from)
                .resolveSibling(path)
                .normalize()
                .toString()
                .replace('\\', '/');
    }

    @ParameterizedTest
    @MethodSource("paths")
    void aPageHasOneMainHeadingSkipsNoLevelAndUsesEachIdOnce(String path) {
        Document page = SampleSiteFiles.PAGES.get(path);
        assertEquals(1, page.select("h1").size());
        int before = 1;
        for (Element heading : page.select("h1, h2, h3, h4, h5, h6")) {
            int level = heading.tagName().charAt(1) - '0';
            assertTrue(level <= before + 1, "h" + before + " is followed by " + heading);
            before = level;
        }
        Set<String> seen = new HashSet<>();
        for (Element each : page.select("[id]")) {
            assertTrue(seen.add(each.id()), "twice: " + each.id());
        }
    }

    @ParameterizedTest
    @MethodSource("paths")
    void noSectionIsEmptyAndNoWordIsLeftFromTheProgram(String path) {
        Document page = SampleSiteFiles.PAGES.get(path);
        for (Element section : page.select("section")) {
            assertTrue(section.children().size() > 1, () -> path + ": " + section.id());
        }
        String text = page.text();
        for (String leak : List.of("Optional", "null", "NaN", "Infinity", "${")) {
            assertFalse(text.contains(leak), () -> path + " says " + leak);
        }
    }

    @ParameterizedTest
    @MethodSource("paths")
    void aPageAndEachOfItsChartsIsSmallOnTheWire(String path) throws IOException {
        assertTrue(gzipped(SampleSiteFiles.FILES.get(path)) < PAGE_BYTES, path);
        for (Element svg : SampleSiteFiles.PAGES.get(path).select("svg")) {
            assertTrue(gzipped(svg.outerHtml().getBytes(StandardCharsets.UTF_8)) < CHART_BYTES, path);
        }
    }

    private static int gzipped(byte[] bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(bytes);
        }
        return out.size();
    }

    @ParameterizedTest
    @MethodSource("paths")
    void thePolicyOfAPageIsThatOfTheHeaders(String path) {
        Element first = SampleSiteFiles.PAGES.get(path).head().child(0);
        // The digest of the page's own data comes on top.
        assertEquals(Headers.POLICY, first.attr("content").replaceFirst(" 'sha256-[^']+'", ""));
        assertTrue(SampleSiteFiles.text("_headers").contains("Content-Security-Policy: " + Headers.POLICY + ";"));
    }

    @ParameterizedTest
    @MethodSource("runs")
    void aRunHandsOnItsFilesByteForByteUnderTheDigestThatItShows(Run run) throws IOException, NoSuchAlgorithmException {
        String page = Address.run(run.study(), run.id());
        List<String> files = new ArrayList<>(List.of(run.places().file().file()));
        run.log().ifPresent(log -> files.add(log.file()));
        for (String file : files) {
            String path = page.replace("index.html", file.substring(file.lastIndexOf('/') + 1));
            byte[] raw = Files.readAllBytes(SampleSiteFiles.SAMPLE.resolve(file));
            assertArrayEquals(raw, SampleSiteFiles.FILES.get(path), path);
            String digest = HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(raw));
            assertEquals(
                    1,
                    SampleSiteFiles.PAGES
                            .get(page)
                            .select("td.digest:contains(" + digest + ")")
                            .size(),
                    path);
        }
    }

    @ParameterizedTest
    @MethodSource("runs")
    void aRunWithALogShowsItAsAChartAndAsATable(Run run) {
        Document page = SampleSiteFiles.PAGES.get(Address.run(run.study(), run.id()));
        int expected = run.log().isPresent() ? 1 : 0;
        assertEquals(
                expected, page.select("figure.chart .wide-only svg[role=img]").size());
        assertEquals(expected, page.select("table.log").size());
    }

    @ParameterizedTest
    @MethodSource("runs")
    void aValueReadsTheSameOnItsRunAndOnItsAnswer(Run run) {
        Document own = SampleSiteFiles.PAGES.get(Address.run(run.study(), run.id()));
        Document answer = SampleSiteFiles.PAGES.get(Address.answer(run.study()));
        for (Element row : own.select("tr[id^=value.]")) {
            Element there = answer.getElementById(row.id());
            if (there == null) {
                continue; // a measurand that the study does not show
            }
            Element cell = there.clone();
            cell.select(".u, .mark, .absent").remove();
            Element here = row.selectFirst("td.n").clone();
            here.select(".absent").remove();
            assertEquals(cell.text().strip(), here.text().strip(), row.id());
        }
    }

    @Test
    void throttledStretchesAreShadedWhereTheClockFell() {
        Document throttled = SampleSiteFiles.PAGES.get(Address.run("heat-spreader", "none-1"));
        Document cool = SampleSiteFiles.PAGES.get(Address.run("heat-spreader", "spreader-1"));
        assertTrue(throttled.select("svg desc").text().replace('\u00a0', ' ').contains("Shaded: clock below 1710 MHz"));
        assertFalse(cool.select("svg desc").text().contains("Shaded"));
    }

    @Test
    void theIndexShowsEveryQuestionWithItsStateAndItsFigure() {
        Document index = SampleSiteFiles.PAGES.get(Address.INDEX);
        assertEquals(
                SampleSiteFiles.CHECKED.studies().size(),
                index.select("article.question").size());
        for (Element question : index.select("article.question")) {
            boolean wanted = !question.select(".state-wanted").isEmpty();
            assertEquals(wanted ? 0 : 1, question.select(".figure").size(), question.text());
        }
        String winter = index.select("article:has(.state-wanted)").text().replace('\u00a0', ' ');
        assertTrue(winter.contains("10 runs at 20 °C, 10 runs at 0 °C, 10 runs at \u221210 °C"), winter);
    }

    @Test
    void theCaveatsOfTheImperfectStudyAreGatheredByRule() {
        Document caveats = SampleSiteFiles.PAGES.get(Address.CAVEATS);
        for (String rule :
                List.of("ambient-spread", "length-spread", "several-things-changed", "single-run", "single-specimen")) {
            Element group = caveats.getElementById(Address.caveatGroup(rule));
            assertNotNull(group, rule);
            assertEquals(
                    1,
                    group.select("a[href*=answers/supply/index.html#finding." + rule + "]")
                            .size(),
                    rule);
        }
    }

    @Test
    void noTwoFilesDifferOnlyInCapitals() {
        Set<String> seen = new HashSet<>();
        SampleSiteFiles.FILES.keySet().forEach(path -> assertTrue(seen.add(path.toLowerCase(Locale.ROOT)), path));
    }

    @Test
    void theSameFolderGivesTheSameBytesInAnotherLocaleAndTimeZone() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kolkata"));
            SortedMap<String, byte[]> again =
                    SampleSiteFiles.build(FolderChecker.check(SampleSiteFiles.SAMPLE), SampleSiteFiles.SAMPLE);
            assertEquals(SampleSiteFiles.FILES.keySet(), again.keySet());
            for (Map.Entry<String, byte[]> file : again.entrySet()) {
                assertArrayEquals(SampleSiteFiles.FILES.get(file.getKey()), file.getValue(), file.getKey());
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }
}
