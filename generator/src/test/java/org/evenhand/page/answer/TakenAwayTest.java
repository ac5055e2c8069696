package org.evenhand.page.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.evenhand.chart.LevelChart;
import org.evenhand.page.view.Address;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every figure of the sample, wherever it is written: the page's table, the same as CSV, Markdown and HTML, the data at
 * full precision, the chart and its description, the quotation in all its forms. CSV is read by FastCSV, Markdown by
 * commonmark-java, HTML by jsoup, pictures by the Java runtime.
 */
class TakenAwayTest {

    private static final String NB = "\u00a0";

    static Stream<String> studies() {
        return SampleSite.CHECKED.studies().keySet().stream();
    }

    private static String path(String study, String file) {
        return "answers/" + study + "/" + file;
    }

    private static JsonNode evidence(String study) throws IOException {
        return new ObjectMapper().readTree(SampleSite.FILES.get(path(study, "evidence.json")));
    }

    private static List<List<String>> csv(String path) {
        List<List<String>> rows = new ArrayList<>();
        CsvReader.builder().ofCsvRecord(SampleSite.text(path)).forEach(row -> rows.add(row.getFields()));
        return rows;
    }

    private static List<List<String>> table(Document document) {
        return document.select("tr").stream()
                .map(row ->
                        row.select("th, td").stream().map(Element::wholeText).toList())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("studies")
    void aTableIsTheSameInEveryFormInWhichItIsHandedOut(String study) {
        Parser parser =
                Parser.builder().extensions(List.of(TablesExtension.create())).build();
        HtmlRenderer renderer = HtmlRenderer.builder()
                .extensions(List.of(TablesExtension.create()))
                .build();
        String folder = path(study, "tables/");
        for (String file : SampleSite.FILES.keySet()) {
            if (!file.startsWith(folder) || !file.endsWith(".csv")) {
                continue;
            }
            String name = file.substring(0, file.length() - ".csv".length());
            Document markdown = Jsoup.parse(renderer.render(parser.parse(SampleSite.text(name + ".md"))));
            Document html = Jsoup.parse(SampleSite.text(name + ".html.txt"));
            List<List<String>> rows = table(html);
            assertTrue(rows.size() > 1, name);
            assertEquals(rows, table(markdown), name);
            assertEquals(
                    rows.stream()
                            .map(row -> row.stream().map(TakenAwayTest::ascii).toList())
                            .toList(),
                    csv(file).stream()
                            .map(row -> row.stream().map(TakenAwayTest::ascii).toList())
                            .toList(),
                    name);
            for (Document document : List.of(markdown, html)) {
                String address = document.select("a").last().attr("href");
                assertTrue(address.endsWith("/" + study + "/#" + name.substring(folder.length())), address);
                assertTrue(document.text().contains("Source: "), name);
                assertFalseBlank(document.selectFirst("strong").text(), name);
            }
        }
    }

    private static void assertFalseBlank(String text, String name) {
        assertTrue(!text.isBlank(), name);
    }

    /** In data a minus sign is that of ASCII. */
    private static String ascii(String text) {
        return spaced(text).replace('\u2212', '-');
    }

    /** One blank for each stretch of white space, whether it may break or not. */
    private static String spaced(String text) {
        return text.replace(NB, " ").replaceAll("\\s+", " ").strip();
    }

    /** The page's own rows, by what heads their cells. */
    private static Map<String, String> cells(Element row) {
        Map<String, String> cells = new HashMap<>();
        for (Element cell : row.select("td[data-label]")) {
            Element own = cell.clone();
            own.select(".u, .mark, .absent").remove();
            cells.put(cell.attr("data-label"), own.text().strip());
        }
        return cells;
    }

    private static final String LOW = "95" + NB + "% from";
    private static final String HIGH = "95" + NB + "% to";

    @ParameterizedTest
    @MethodSource("studies")
    void theTableHandedOutHasTheFiguresOfTheTableOnThePage(String study) throws IOException {
        Document page = SampleSite.page(study);
        for (Element table : page.select("table.summary, table.comparisons")) {
            List<List<String>> rows = csv(path(study, "tables/" + table.id() + ".csv"));
            List<Element> shown = table.select("tbody > tr");
            assertEquals(shown.size(), rows.size() - 1);
            for (int i = 0; i < shown.size(); i++) {
                Map<String, String> cells = cells(shown.get(i));
                for (String column : List.of("Value", "Estimate", "± U", LOW, HIGH)) {
                    int at = index(rows.get(0), column);
                    if (cells.containsKey(column) && at >= 0) {
                        assertEquals(
                                ascii(cells.get(column)), ascii(rows.get(i + 1).get(at)), table.id());
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("studies")
    void aMedianThatIsInTheDataStandsWithItsIntervalInTheTableHandedOut(String study) {
        if (!SampleSite.FILES.containsKey(path(study, "levels.csv"))) {
            return;
        }
        List<List<String>> levels = csv(path(study, "levels.csv"));
        List<String> titles = levels.get(0);
        List<String> expected = new ArrayList<>();
        for (List<String> level : levels.subList(1, levels.size())) {
            String median = level.get(titles.indexOf("median"));
            if (!median.isEmpty()) {
                String measurand = level.get(titles.indexOf("measurand"));
                List<List<String>> table = csv(path(study, "tables/summary." + Address.slug(measurand) + ".csv"));
                String name = level.get(titles.indexOf("level")) + ", median";
                List<String> row = table.stream()
                        .filter(cells -> cells.get(0).equals(name))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(measurand + " has no row for " + name));
                assertRounded(median, row.get(index(table.get(0), "Value")));
                assertRounded(level.get(titles.indexOf("median-low")), row.get(index(table.get(0), LOW)));
                assertRounded(level.get(titles.indexOf("median-high")), row.get(index(table.get(0), HIGH)));
                expected.add(measurand + " " + name);
            }
        }
        long handedOut = SampleSite.FILES.keySet().stream()
                .filter(file -> file.startsWith(path(study, "tables/summary.")) && file.endsWith(".csv"))
                .flatMap(file -> csv(file).stream())
                .filter(row -> row.get(0).endsWith(", median"))
                .count();
        assertEquals(expected.size(), handedOut);
    }

    /** What is written lies no further from the value than half a unit of its last place. */
    private static void assertRounded(String exact, String written) {
        if (exact.isEmpty()) {
            assertEquals("", written);
            return;
        }
        var shown = new java.math.BigDecimal(written);
        var off = new java.math.BigDecimal(exact).subtract(shown).abs();
        assertTrue(off.multiply(java.math.BigDecimal.valueOf(2)).compareTo(shown.ulp()) <= 0, exact + " as " + written);
    }

    /** A column's heading may have its unit behind it. */
    private static int index(List<String> headings, String column) {
        for (int i = 0; i < headings.size(); i++) {
            if (headings.get(i).equals(column) || headings.get(i).startsWith(column + " [")) {
                return i;
            }
        }
        return -1;
    }

    @ParameterizedTest
    @MethodSource("studies")
    void theDataAtFullPrecisionAreTheSameInJsonCsvAndWhatMachinesReadOnThePage(String study) throws IOException {
        JsonNode evidence = evidence(study);
        Map<String, JsonNode> observed = observations(study);
        int found = 0;
        if (!SampleSite.FILES.containsKey(path(study, "levels.csv"))) {
            assertTrue(observed.isEmpty());
            return;
        }
        List<List<String>> levels = csv(path(study, "levels.csv"));
        for (int i = 1; i < levels.size(); i++) {
            JsonNode summary = evidence.get("summaries").get(i - 1);
            assertNumbers(levels, i, summary, Map.of("mean", "mean", "low", "low", "high", "high"));
            String id = Address.level(
                    summary.get("level").asText(), summary.get("measurand").asText());
            found += assertObserved(observed.get(id), summary.get("mean"), summary, id);
        }
        if (SampleSite.FILES.containsKey(path(study, "comparisons.csv"))) {
            List<List<String>> comparisons = csv(path(study, "comparisons.csv"));
            for (int i = 1; i < comparisons.size(); i++) {
                JsonNode comparison = evidence.get("comparisons").get(i - 1);
                boolean trend = comparison.get("as").asText().equals("trend");
                Map<String, String> fields = trend
                        ? Map.of("estimate", "slope", "low", "slopeLow", "high", "slopeHigh")
                        : Map.of("estimate", "estimate", "low", "low", "high", "high");
                if (comparison.has(fields.get("estimate"))) {
                    assertNumbers(comparisons, i, comparison, fields);
                    String id = Address.comparison(comparison.get("id").asText());
                    found += assertObserved(observed.get(id), comparison.get(fields.get("estimate")), comparison, id);
                }
            }
        }
        assertEquals(observed.size(), found);
    }

    private static void assertNumbers(
            List<List<String>> table, int row, JsonNode entry, Map<String, String> fieldByColumn) {
        fieldByColumn.forEach((column, field) -> {
            String cell = table.get(row).get(table.get(0).indexOf(column));
            JsonNode value = entry.path(field);
            assertEquals(value.isNumber() ? value.decimalValue().toPlainString() : "", plain(cell), column);
        });
    }

    private static String plain(String cell) {
        return cell.isEmpty() ? "" : new java.math.BigDecimal(cell).toPlainString();
    }

    /** One if the figure is there on both sides, nought if on neither. */
    private static int assertObserved(JsonNode observation, JsonNode value, JsonNode entry, String id) {
        if (value.isNull()) {
            assertEquals(null, observation, id);
            return 0;
        }
        assertNotNull(observation, id);
        assertEquals(value.decimalValue(), observation.get("value").decimalValue(), id);
        if (entry.hasNonNull("low")) {
            assertEquals(
                    entry.get("low").decimalValue(), observation.get("minValue").decimalValue(), id);
            assertEquals(
                    entry.get("high").decimalValue(),
                    observation.get("maxValue").decimalValue(),
                    id);
        }
        return 1;
    }

    private static Map<String, JsonNode> observations(String study) throws IOException {
        String data = SampleSite.page(study)
                .selectFirst("script[type=application/ld+json]")
                .data();
        Map<String, JsonNode> observations = new HashMap<>();
        ObjectMapper exact = new ObjectMapper()
                .enable(com.fasterxml.jackson.databind.DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
        for (JsonNode entity : exact.readTree(data).get("@graph")) {
            if (entity.get("@type").asText().equals("Observation")) {
                String address = entity.get("@id").asText();
                observations.put(address.substring(address.indexOf('#') + 1), entity);
            }
        }
        return observations;
    }

    @ParameterizedTest
    @MethodSource("studies")
    void aQuotationSaysTheSameInEveryFormAndInItsPicture(String study) throws IOException {
        Document page = SampleSite.page(study);
        for (Element quotation : page.select("#quote details[id]")) {
            String id = quotation.id().substring("quote.".length());
            Map<String, String> cells = cells(page.getElementById(id));
            String plain = page.getElementById("quote." + id + ".text")
                    .selectFirst("pre")
                    .wholeText();
            String value = cells.getOrDefault("Value", "");
            assertTrue(spaced(plain).contains(spaced(value)), plain);
            String html = page.getElementById("quote." + id + ".html")
                    .selectFirst("pre")
                    .wholeText();
            String bare = spaced(plain);
            // The source leads to the address instead of standing before it.
            String words = bare.substring(0, bare.lastIndexOf(": http"));
            assertEquals(words, spaced(Jsoup.parse(html).text()), id);
            String markdown = page.getElementById("quote." + id + ".markdown")
                    .selectFirst("pre")
                    .wholeText();
            String read = Jsoup.parse(HtmlRenderer.builder()
                            .build()
                            .render(Parser.builder().build().parse(markdown)))
                    .text();
            assertEquals(words, spaced(read), id);
            Element picture = quotation.selectFirst("img");
            assertTrue(picture.attr("alt").endsWith(plain), id);
            assertPicture(path(study, "quotes/" + id + ".png"), picture.attr("width"), picture.attr("height"));
        }
    }

    private static void assertPicture(String path, String width, String height) throws IOException {
        var image = ImageIO.read(new ByteArrayInputStream(SampleSite.FILES.get(path)));
        assertEquals(width, Integer.toString(image.getWidth()), path);
        assertEquals(height, Integer.toString(image.getHeight()), path);
    }

    @ParameterizedTest
    @MethodSource("studies")
    void aChartShowsAndDescribesTheFiguresOfTheTable(String study) {
        Document page = SampleSite.page(study);
        Answer answer = SampleAnswers.of(study);
        for (DrawnChart chart : ChartFigures.of(answer)) {
            String described = page.getElementById(chart.id())
                    .selectFirst(".wide-only svg desc")
                    .wholeText();
            assertEquals(chart.description(), described);
            if (!(chart.figure() instanceof LevelChart levels)) {
                continue;
            }
            Element table = page.getElementById("summary." + chart.name());
            if (table == null) {
                continue; // rates of failures have comparisons for their rows
            }
            List<Element> rows = table.select("tbody > tr:not([id$=.median])");
            assertEquals(rows.size(), levels.levels().size());
            for (int i = 0; i < rows.size(); i++) {
                String value = spaced(cells(rows.get(i)).get("Value"));
                String figure = spaced(levels.levels().get(i).figure());
                assertTrue(figure.startsWith(value), figure);
                assertTrue(spaced(described).contains(": " + figure), described);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("studies")
    void aPastedLinkUnfoldsIntoTheQuestionTheAnswerAndThePictureOfItsFigure(String study) throws IOException {
        Document page = SampleSite.page(study);
        assertEquals(page.selectFirst("h1").text(), meta(page, "og:title"));
        assertEquals(page.selectFirst("link[rel=canonical]").attr("href"), meta(page, "og:url"));
        if (page.select("section.answer .figure").isEmpty()) {
            assertTrue(page.select("meta[property=og:image]").isEmpty());
            return;
        }
        Element shown = page.selectFirst(".answer .short").clone();
        shown.select(".figure-mark, .figure-note").remove();
        String answer = shown.text().replace("\u2060", "");
        assertTrue(spaced(meta(page, "og:description")).startsWith(spaced(answer)), answer);
        String base = SampleSite.CHECKED.folder().publication().orElseThrow().baseUrl();
        String address = meta(page, "og:image");
        assertTrue(address.startsWith(base), address);
        assertPicture(address.substring(base.length()), meta(page, "og:image:width"), meta(page, "og:image:height"));
        String evidence = page.selectFirst("section.answer .figure .value a").attr("href");
        assertTrue(address.endsWith("/quotes/" + evidence.substring(evidence.indexOf('#') + 1) + ".png"), address);
        assertTrue(meta(page, "og:image:alt").contains(meta(page, "og:title")));
    }

    private static String meta(Document page, String property) {
        return page.selectFirst("meta[property=" + property + "]").attr("content");
    }
}
