package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Figures that everybody of the trade can work out in the head, found again on a published site.
 *
 * <p>Source of every expected value here: common practice, no source. The folder is {@code common-practice/} among the test
 * resources; where an interval is wanted, its repeats lie symmetrically around the value named.
 */
class CommonPracticeTest {

    private static final Path RESULTS = Path.of("src/test/resources/common-practice");

    @TempDir
    private static Path folder;

    @BeforeAll
    static void published() {
        Called.with("publish", RESULTS.toString(), "--to", folder.toString()).ended(0);
    }

    @ParameterizedTest(name = "common practice, no source: the {0} task draws {1} W on average")
    @CsvSource({"quick, 5.28", "slow, 4.48"})
    void aTaskHasTheMeanPowerOfItsEnergyAndTime(String level, double watts) throws IOException {
        assertEquals(watts, mean("tasks", level, "power"), 1e-12);
    }

    @Test
    void commonPracticeNoSource88Against112MilliwattHoursIs21point4PercentLessEnergy() throws IOException {
        JsonNode ratio = comparison("tasks", "energy");
        assertEquals(88.0 / 112.0, ratio.get("estimate").asDouble(), 1e-15);
        assertEquals(-21.4, 100 * (ratio.get("estimate").asDouble() - 1), 0.05);
        assertTrue(page("tasks").contains("21.4 % less with quick than with slow"), page("tasks"));
    }

    @Test
    void commonPracticeNoSourceAndItIs27point3PercentMoreWorkPerEnergy() throws IOException {
        JsonNode ratio = comparison("tasks", "work");
        assertEquals(27.3, 100 * (ratio.get("estimate").asDouble() - 1), 0.05);
        assertTrue(page("tasks").contains("27.3 % higher with quick than with slow"), page("tasks"));
    }

    @Test
    void theOnePageNamesTheBaseOfEachAndOffersTheOtherOne() throws IOException {
        String page = page("tasks");
        assertTrue(page.contains("Base: Energy, with slow"), page);
        assertTrue(page.contains("27.3 % more with slow than with quick"), page);
        assertTrue(page.contains("Base: Work per energy, with slow"), page);
        assertTrue(page.contains("21.4 % lower with slow than with quick"), page);
    }

    @Test
    void commonPracticeNoSource282Against136MilliwattHoursIs2point07Times() throws IOException {
        assertEquals(2.07, comparison("encoders", "energy").get("estimate").asDouble(), 0.005);
    }

    @Test
    void commonPracticeNoSourceAQuarterMoreScoreForAQuarterMoreClockScalesInFull() throws IOException {
        JsonNode trend = comparison("clocks", "score");
        assertEquals(1, trend.get("exponent").asDouble(), 1e-12);
        assertTrue(page("clocks").contains("Scaling efficiency, lowest to highest 1.00"), page("clocks"));
    }

    @Test
    void commonPracticeNoSourceFiveVoltAndThreeAmpereAreFifteenWatt() throws IOException {
        assertEquals(15, mean("supply", "wall plug", "most-power"), 0);
    }

    @ParameterizedTest(name = "common practice, no source: no failure in {1} h bounds the rate at {2} per hour")
    @CsvSource({"night, 16, 0.187", "two-days, 48, 0.062"})
    void noFailureBoundsTheRate(String id, double hours, double bound) throws IOException {
        JsonNode rate = comparison("failures", id);
        assertEquals(hours, rate.get("time").asDouble(), 0);
        assertEquals(0, rate.get("events").asInt());
        assertEquals(bound, rate.get("high").asDouble(), 0.0005);
    }

    @Test
    void commonPracticeNoSourceOneOfOneAllowsFrom2point5PercentToAll() throws IOException {
        JsonNode share = comparison("holding", "holds");
        assertEquals(1, share.get("n").asInt());
        assertEquals(0.025, share.get("low").asDouble(), 1e-12);
        assertEquals(1, share.get("high").asDouble(), 0);
    }

    private static JsonNode evidence(String study) throws IOException {
        return new ObjectMapper()
                .readTree(folder.resolve("answers/" + study + "/evidence.json").toFile());
    }

    private static JsonNode comparison(String study, String id) throws IOException {
        for (JsonNode each : evidence(study).get("comparisons")) {
            if (each.get("id").asText().equals(id)) {
                return each;
            }
        }
        throw new AssertionError("no comparison " + id);
    }

    private static double mean(String study, String level, String measurand) throws IOException {
        for (JsonNode each : evidence(study).get("summaries")) {
            if (each.get("level").asText().equals(level)
                    && each.get("measurand").asText().equals(measurand)) {
                return each.get("mean").asDouble();
            }
        }
        throw new AssertionError("no summary of " + measurand + " at " + level);
    }

    /** The text of an answer's page, with plain spaces. */
    private static String page(String study) throws IOException {
        return Jsoup.parse(folder.resolve("answers/" + study + "/index.html").toFile())
                .text()
                .replace('\u00a0', ' ');
    }
}
