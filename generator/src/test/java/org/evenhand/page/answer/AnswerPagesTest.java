package org.evenhand.page.answer;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.evenhand.check.FolderChecker;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AnswerPagesTest {

    static Stream<String> studies() {
        return AnswerFiguresTest.studies();
    }

    @ParameterizedTest
    @MethodSource("studies")
    void linksAndFragmentsLeadToWhatIsThere(String study) {
        String path = "answers/" + study + "/index.html";
        for (Element link : SampleSite.page(study).select("a[href]")) {
            String href = link.attr("href");
            if (href.startsWith("https://")) {
                continue;
            }
            String[] parts = href.split("#", 2);
            String target = parts[0].isEmpty() ? path : resolved(path, parts[0]);
            // The site writes the manifest, when everything else is there.
            if (!target.equals("manifest-sha256.txt")) {
                assertTrue(SampleSite.FILES.containsKey(target), href);
            }
            if (parts.length == 2) {
                assertNotNull(Jsoup.parse(SampleSite.text(target)).getElementById(parts[1]), href);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("studies")
    void everyIdIsUniqueAndEveryDrawingHasTitleAndDescription(String study) {
        Document page = SampleSite.page(study);
        Set<String> ids = new HashSet<>();
        page.select("[id]").forEach(e -> assertTrue(ids.add(e.id()), e.id()));
        for (Element svg : page.select("svg")) {
            assertFalse(svg.selectFirst("title").text().isBlank());
            assertTrue(svg.selectFirst("desc").text().length() > 10, svg.selectFirst("desc")::text);
        }
    }

    @ParameterizedTest
    @MethodSource("studies")
    void aQuotationCarriesItsNumberOfValuesAndThePermalink(String study) {
        for (Element quotation : SampleSite.page(study).select("#quote details")) {
            String evidence = quotation.id().substring("quote.".length());
            assertEquals(4, quotation.select("pre").size());
            for (Element form : quotation.select("pre")) {
                assertTrue(form.text().contains("n = "), form::text);
                assertTrue(
                        form.text().contains("https://results.example.org/relay/answers/" + study + "/#" + evidence),
                        form::text);
            }
        }
    }

    @Test
    void aRefusedComparisonSaysSoInRowPanelAndQuotationAndIsNotDrawn() {
        Document page = SampleSite.page("supply");
        Element row = page.getElementById("comparison.supply-power");
        assertEquals("Not comparable", row.selectFirst(".verdict").text());
        assertTrue(row.selectFirst(".words").text().startsWith("Refused: beside the supply, the firmware differs too"));
        assertTrue(page.select("#chart\\.comparisons-ratios").isEmpty(), "an axis without a mark says nothing");
        String panel = page.select("#comparability .refused").text();
        assertTrue(panel.contains("Mean power: new supply against old supply. Ambient was"), panel);
        assertTrue(panel.contains("The limit is 2 K (the publication's tolerances)"), panel);
        assertTrue(page.getElementById("quote.comparison.supply-power").text().contains("not comparable"));
        assertFalse(page.getElementById("comparison.supply-power").text().contains("0.79"), "the ratio is not shown");
    }

    @Test
    void aPercentageNamesItsBaseAndOffersTheOtherWayRound() {
        Element row = SampleSite.page("heat-spreader").getElementById("comparison.spreader-energy");
        assertEquals(
                "22.1 % more with spreader than without cooling.",
                row.selectFirst(".words").text());
        assertEquals(
                "Base: Energy taken in the soak, without cooling",
                row.selectFirst(".base").text());
        assertTrue(row.text().contains("18.09 % less without cooling than with spreader"), row::text);
    }

    @Test
    void aWantedQuestionSaysWhichRunsWouldAnswerIt() {
        String notice = SampleSite.page("winter-start").selectFirst(".notice").text();
        assertTrue(notice.contains("10 runs at each of these levels of night temperature"), notice);
        assertTrue(notice.contains("Start after a cold night"), notice);
        assertTrue(SampleSite.page("winter-start")
                .select("#evidence, #charts, #quote")
                .isEmpty());
    }

    @Test
    void aWithheldStudyShowsWhyAndNoFigure(@TempDir Path folder) throws IOException {
        copy(SampleSite.FOLDER, folder);
        Path run = folder.resolve("studies/cable/runs/long-1.json");
        Files.writeString(run, Files.readString(run).replace("20 min", "20 mim"));
        Path broken = folder.resolve("studies/battery/study.md");
        Files.writeString(broken, Files.readString(broken).replace("factor: item", "factor: [item"));
        Files.writeString(folder.resolve("studies/raised-clock/logs/clock-1500-1.csv.gz"), "not a log");
        Map<String, byte[]> files = SampleSite.build(FolderChecker.check(folder), folder);

        Document cable = parse(files, "answers/cable/index.html");
        assertEquals("Withheld", cable.selectFirst(".head .state").text());
        assertTrue(
                cable.select("#answer .short").text().contains("mim"),
                cable.select("#answer").text());
        assertTrue(cable.select("table").isEmpty());
        Document battery = parse(files, "answers/battery/index.html");
        assertEquals("Withheld", battery.selectFirst(".head .state").text());
        assertFalse(battery.select("#findings .finding").isEmpty());
        Document clock = parse(files, "answers/raised-clock/index.html");
        assertEquals("Withheld", clock.selectFirst(".head .state").text());
        assertEquals(
                "How much faster is the raised clock, and does speed follow the clock?",
                clock.select("h1").text());
        assertTrue(clock.select("#answer .short").text().contains("clock-1500-1"), clock.select("#answer")::text);
        assertTrue(clock.select("#runs a").size() >= 12, "its runs stay open");
        String evidence = new String(files.get("answers/raised-clock/evidence.json"), StandardCharsets.UTF_8);
        assertTrue(evidence.contains("file-unreadable") && !evidence.contains("\"mean\""), evidence);
        assertTrue(files.containsKey("answers/heat-spreader/levels.csv"), "the others are published");
        assertFalse(files.containsKey("answers/cable/levels.csv"));
    }

    @Test
    void theSameFolderGivesTheSameBytesWhateverTheLocale() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(new Locale("tr", "TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kolkata"));
            Map<String, byte[]> again = SampleSite.build(FolderChecker.check(SampleSite.FOLDER), SampleSite.FOLDER);
            assertEquals(SampleSite.FILES.keySet(), again.keySet());
            again.forEach((path, bytes) -> assertArrayEquals(SampleSite.FILES.get(path), bytes, path));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    private static Document parse(Map<String, byte[]> files, String path) {
        return Jsoup.parse(new String(files.get(path), StandardCharsets.UTF_8));
    }

    private static String resolved(String from, String relative) {
        return Path.of(from)
                .getParent()
                .resolve(relative)
                .normalize()
                .toString()
                .replace('\\', '/');
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }
}
