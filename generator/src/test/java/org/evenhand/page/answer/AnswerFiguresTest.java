package org.evenhand.page.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.stream.Stream;
import org.evenhand.page.view.Address;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Rounds the figures of each evidence.json anew, by the rule of JCGM 100:2008, 7.2.6 as docs/methods.md words it, and holds
 * the pages to them. The rounding here is the test's own.
 */
class AnswerFiguresTest {

    private static final String NB = "\u00a0";

    static Stream<String> studies() {
        return SampleSite.CHECKED.studies().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("studies")
    void levelsShowWhatTheEvidenceHolds(String study) throws IOException {
        Document page = SampleSite.page(study);
        int compared = 0;
        for (JsonNode summary : evidence(study).get("summaries")) {
            if (summary.get("low").isNull()) {
                continue;
            }
            String id = Address.level(
                    summary.get("level").asText(), summary.get("measurand").asText());
            Element row = page.getElementById(id);
            assertNotNull(row, id);
            int decimals = decimals(summary.get("low"), summary.get("high"), 1);
            assertEquals(written(summary.get("mean"), decimals, 1), cell(row, "Value"), id);
            assertEquals(written(summary.get("low"), decimals, 1), cell(row, "95" + NB + "% from"), id);
            assertEquals(written(summary.get("high"), decimals, 1), cell(row, "95" + NB + "% to"), id);
            String quote = page.getElementById("quote." + id).text();
            assertTrue(quote.contains(" " + cell(row, "Value")), quote);
            compared++;
        }
        boolean numeric = SampleSite.CHECKED.studies().get(study).evidence().summaries().stream()
                .anyMatch(s -> s.interval().isPresent());
        assertEquals(numeric, compared > 0);
    }

    @ParameterizedTest
    @MethodSource("studies")
    void comparisonsShowWhatTheEvidenceHolds(String study) throws IOException {
        Document page = SampleSite.page(study);
        for (JsonNode comparison : evidence(study).get("comparisons")) {
            Element row =
                    page.getElementById(Address.comparison(comparison.get("id").asText()));
            boolean trend = comparison.get("as").asText().equals("trend");
            JsonNode estimate = comparison.get(trend ? "slope" : "estimate");
            JsonNode low = comparison.get(trend ? "slopeLow" : "low");
            JsonNode high = comparison.get(trend ? "slopeHigh" : "high");
            if (estimate == null || estimate.isNull() || low.isNull()) {
                assertTrue(row == null || cell(row, "Estimate").equals("–"), comparison::toString);
                continue;
            }
            double scale = comparison.get("as").asText().equals("proportion") ? 100 : 1;
            int decimals = decimals(low, high, scale);
            // One more digit than the rule where a share's limit would else be rounded to all or none.
            decimals += scale == 100 ? 1 : 0;
            assertEquals(
                    estimate.asDouble() == 0 ? "0" : written(estimate, decimals, scale), cell(row, "Estimate"), study);
            assertEquals(
                    low.asDouble() == 0 ? "0" : written(low, decimals, scale), cell(row, "95" + NB + "% from"), study);
            assertEquals(written(high, decimals, scale), cell(row, "95" + NB + "% to"), study);
        }
    }

    @ParameterizedTest
    @MethodSource("studies")
    void chartsNameTheFiguresOfTheTables(String study) throws IOException {
        Document page = SampleSite.page(study);
        for (JsonNode summary : evidence(study).get("summaries")) {
            if (!summary.get("low").isNull()) {
                Element row = page.getElementById(Address.level(
                        summary.get("level").asText(), summary.get("measurand").asText()));
                Element chart = page.getElementById(
                        Address.chart(summary.get("measurand").asText()));
                String figure = cell(row, "Value") + " ± " + cell(row, "± U") + " ";
                assertTrue(chart.selectFirst("desc").text().contains(figure), figure);
            }
        }
    }

    private static String cell(Element row, String label) {
        return row.selectFirst("td[data-label=\"" + label + "\"]").text().strip();
    }

    static JsonNode evidence(String study) throws IOException {
        return new ObjectMapper().readTree(SampleSite.FILES.get("answers/" + study + "/evidence.json"));
    }

    private static int decimals(JsonNode low, JsonNode high, double scale) {
        BigDecimal half = new BigDecimal(scale * (high.asDouble() - low.asDouble()) / 2)
                .round(new MathContext(2, RoundingMode.HALF_UP));
        return half.scale() + 2 - half.precision();
    }

    private static String written(JsonNode number, int decimals, double scale) {
        BigDecimal rounded = new BigDecimal(scale * number.asDouble()).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.setScale(Math.max(0, decimals), RoundingMode.UNNECESSARY)
                .toPlainString()
                .replace('-', '\u2212');
    }
}
