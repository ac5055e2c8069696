package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.evenhand.browser.Chromium;
import org.evenhand.browser.NeedsChromium;
import org.evenhand.browser.SiteServer;
import org.evenhand.browser.Tab;
import org.evenhand.page.view.Address;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** What the chart of a log hands to the script that reads it out, and what that says. */
class LogReadoutTest {

    private static final String RUN = Address.run("heat-spreader", "none-1");

    private static long[] sums(String steps) {
        long[] values =
                Arrays.stream(steps.split(" ")).mapToLong(Long::parseLong).toArray();
        Arrays.parallelPrefix(values, Long::sum);
        return values;
    }

    private static JsonNode log(String page) throws IOException {
        Element box = SampleSiteFiles.PAGES.get(page).selectFirst(".log");
        return new ObjectMapper().readTree(box.attr("data-log"));
    }

    /** The log as it was handed in is the other way to the same values. */
    @Test
    void theValuesAreThoseOfTheLog() throws IOException {
        List<String> lines = new String(
                        SampleSiteFiles.FILES.get("runs/heat-spreader/none-1/none-1.csv"), StandardCharsets.UTF_8)
                .lines()
                .toList();
        List<String> heads = List.of(lines.get(0).split(","));
        int checked = 0;
        for (JsonNode column : log(RUN).get("columns")) {
            String name = column.get("title").asText().toLowerCase(java.util.Locale.ROOT);
            int at = heads.indexOf(heads.stream()
                    .filter(h -> h.startsWith(name + " "))
                    .findFirst()
                    .orElseThrow());
            long[] ms = sums(column.get("ms").asText());
            long[] values = sums(column.get("value").asText());
            assertEquals(lines.size() - 1, values.length);
            for (int i = 0; i < values.length; i++) {
                String[] cells = lines.get(i + 1).split(",");
                assertEquals(new BigDecimal(cells[0]).movePointRight(3).longValueExact(), ms[i]);
                double step = Math.pow(10, -column.get("decimals").asInt());
                assertEquals(Double.parseDouble(cells[at]), values[i] * step, step / 2 * 1.0001);
                checked++;
            }
        }
        assertEquals(4 * (lines.size() - 1), checked);
    }

    @Test
    void aThinnedLogKeepsItsExtremes() throws IOException {
        int thinned = 0;
        for (String page : SampleSiteFiles.PAGES.keySet()) {
            if (!page.startsWith("runs/")
                    || SampleSiteFiles.PAGES.get(page).select(".log").isEmpty()) {
                continue;
            }
            for (JsonNode column : log(page).get("columns")) {
                if (column.has("low")) {
                    int decimals = column.get("decimals").asInt();
                    long lowest = LongStream.of(sums(column.get("low").asText()))
                            .min()
                            .orElseThrow();
                    long highest = LongStream.of(sums(column.get("high").asText()))
                            .max()
                            .orElseThrow();
                    Element row = SampleSiteFiles.PAGES.get(page).select("table.log tbody tr").stream()
                            .filter(r -> r.selectFirst("th")
                                    .text()
                                    .equals(column.get("title").asText()))
                            .findFirst()
                            .orElseThrow();
                    assertEquals(
                            cell(row, "Lowest"),
                            BigDecimal.valueOf(lowest, decimals).toPlainString(),
                            page);
                    assertEquals(
                            cell(row, "Highest"),
                            BigDecimal.valueOf(highest, decimals).toPlainString(),
                            page);
                    thinned++;
                }
            }
        }
        assertTrue(thinned > 0, "no log of the sample is long enough to be thinned");
    }

    private static String cell(Element row, String label) {
        return row.selectFirst("td[data-label=" + label + "]").text().replace('\u2212', '-');
    }

    @Test
    @NeedsChromium
    void theKeyboardAndThePointerReadTheLogOut() {
        try (SiteServer server = SiteServer.of(SampleSiteFiles.FILES);
                Tab tab = Chromium.shared().tab()) {
            tab.go(server.url(RUN));
            String told = "document.querySelector('.log input').getAttribute('aria-valuetext')";
            tab.evaluate("document.querySelector('.log input').focus()");
            tab.key("End");
            String last = tab.evaluate(told).asText();
            for (Element row : SampleSiteFiles.PAGES.get(RUN).select("table.log tbody tr")) {
                String said = row.selectFirst("th").text() + " " + cell(row, "Last") + "\u00a0"
                        + row.selectFirst("td.unit").text();
                assertTrue(last.contains(said), said + " is not in " + last);
            }
            tab.key("Home");
            tab.key("ArrowRight");
            assertTrue(tab.evaluate(told).asText().startsWith("5\u202fs, "));
            assertEquals(
                    tab.evaluate(told).asText().replace(", ", ""),
                    tab.evaluate("document.querySelector('.readings').textContent")
                            .asText(),
                    "what is shown is what is said");
            tab.evaluate("document.querySelector('.log').scrollIntoView({behavior: 'instant'})");
            JsonNode place = tab.evaluate(
                    "(() => { const r = document.querySelector('.log .wide-only svg').getBoundingClientRect();"
                            + " return [r.left, r.top]; })()");
            double right = tab.evaluate("JSON.parse(document.querySelector('.log').dataset.log).places[0][2]")
                    .asDouble();
            tab.point(place.get(0).asDouble() + right, place.get(1).asDouble() + 60);
            tab.await(told + ".startsWith('45\u202fmin')");
            assertEquals(last, tab.evaluate(told).asText());
            assertEquals(List.of(), tab.complaints());
        }
    }
}
