package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Real input that nobody here made: A. A. Michelson's hundred measurements of the speed of light of 1879, published as a site.
 *
 * <p>Source of the data: NIST Statistical Reference Datasets, Michelso; the five series as in R's dataset morley. Source of
 * the expected figures: beside each check.
 */
class MichelsonTest {

    private static final Path RESULTS = Path.of("src/test/resources/michelson");
    private static JsonNode evidence;

    @BeforeAll
    static void published(@TempDir Path folder) throws IOException {
        Path site = folder.resolve("site");
        Called.with("publish", RESULTS.toString(), "--to", site.toString()).ended(0);
        evidence = new ObjectMapper()
                .readTree(site.resolve("answers/speed-of-light/evidence.json").toFile());
    }

    /** Source: R 4.2.2, datasets::morley, experiments 1, 3 and 5: mean, sd, t.test; 299 000 km/s added. */
    @ParameterizedTest(name = "series {0}")
    @CsvSource({
        "1, 299909, 104.926039114276, 299859.893102085939, 299958.106897914061",
        "3, 299845, 79.1068564464681, 299807.97685153646, 299882.02314846354",
        "5, 299831.5, 54.219340111304, 299806.124567721328, 299856.875432278672"
    })
    void theSeriesHaveTheFiguresOfMorley(int series, double mean, double deviation, double low, double high) {
        JsonNode summary = evidence.get("summaries").get(series - 1);
        assertEquals(20, summary.get("n").asInt());
        assertEquals("runs", summary.get("counts").asText());
        assertEquals(mean, summary.get("mean").asDouble(), 1e-9);
        assertEquals(deviation, summary.get("standardDeviation").asDouble(), 1e-9);
        assertEquals(low, summary.get("low").asDouble(), 1e-8);
        assertEquals(high, summary.get("high").asDouble(), 1e-8);
    }

    /** Source: R 4.2.2, t.test(x, y) of experiments 1 and 5 of datasets::morley. */
    @Test
    void theDifferenceOfFirstAndLastIsThatOfWelchsTest() {
        JsonNode difference = comparison("first-and-last");
        assertEquals(77.5, difference.get("estimate").asDouble(), 1e-9);
        assertEquals(23.4429613329408, difference.get("low").asDouble(), 1e-8);
        assertEquals(131.557038667059, difference.get("high").asDouble(), 1e-8);
        assertEquals(28.4714129232393, difference.get("degreesOfFreedom").asDouble(), 1e-9);
        assertEquals(0.00653775668865228, difference.get("p").asDouble(), 1e-12);
    }

    /** Source: R 4.2.2, the 90 % interval of t.test on experiments 4 and 5; within 40 km/s fails by its lower end. */
    @Test
    void theFourthAndFifthAreNotShownToBeTheSame() {
        JsonNode near = comparison("near-within-40");
        assertEquals(-11, near.get("estimate").asDouble(), 1e-9);
        assertEquals(-41.5062664007578, near.get("equivalenceLow").asDouble(), 1e-8);
        assertEquals(19.5062664007578, near.get("equivalenceHigh").asDouble(), 1e-8);
        assertEquals("not-shown", near.get("verdict").asText());
        assertEquals(
                "same-within-margin",
                comparison("wide-within-150").get("verdict").asText());
    }

    private static JsonNode comparison(String id) {
        for (JsonNode comparison : evidence.get("comparisons")) {
            if (comparison.get("id").asText().equals(id)) {
                return comparison;
            }
        }
        throw new AssertionError("no comparison " + id);
    }

    /** The mean of all hundred, put together from the published summaries. */
    @Test
    void allTogetherHaveTheCertifiedMean() {
        double sum = 0;
        double squares = 0;
        int n = 0;
        for (JsonNode summary : evidence.get("summaries")) {
            int count = summary.get("n").asInt();
            n += count;
            sum += count * summary.get("mean").asDouble();
        }
        double mean = sum / n;
        for (JsonNode summary : evidence.get("summaries")) {
            int count = summary.get("n").asInt();
            double between = summary.get("mean").asDouble() - mean;
            double within = summary.get("standardDeviation").asDouble();
            squares += count * between * between + (count - 1) * within * within;
        }
        // Source: NIST StRD, Michelso, certified values: mean 299.852400000000, standard deviation 0.0790105478190518,
        // in 1000 km/s; exact to the 15 digits given.
        assertEquals(299852.4, mean, 1e-8);
        assertEquals(79.0105478190518, Math.sqrt(squares / (n - 1)), 1e-9);
    }
}
