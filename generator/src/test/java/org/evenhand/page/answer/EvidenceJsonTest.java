package org.evenhand.page.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.evenhand.compare.ComparisonResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The fields of evidence.json, as the format names them. */
class EvidenceJsonTest {

    private static final List<String> SUMMARY = List.of(
            "level",
            "measurand",
            "unit",
            "n",
            "counts",
            "mean",
            "standardDeviation",
            "low",
            "high",
            "confidence",
            "typeA",
            "typeB",
            "median",
            "medianLow",
            "medianHigh",
            "runs");
    private static final List<String> COMPARISON = List.of("id", "as", "measurand", "unit", "verdict", "caveats");
    private static final List<String> CONTRAST = List.of(
            "level",
            "against",
            "estimate",
            "low",
            "high",
            "confidence",
            "degreesOfFreedom",
            "p",
            "pAdjusted",
            "margin",
            "equivalenceLow",
            "equivalenceHigh");
    private static final Map<String, List<String>> BY_KIND = Map.of(
            "difference", CONTRAST,
            "ratio", CONTRAST,
            "trend", List.of("slope", "slopeLow", "slopeHigh", "intercept", "exponent", "exponentLow", "exponentHigh"),
            "time-until", List.of("levels", "chiSquare", "p", "test"),
            "proportion", List.of("level", "successes", "n", "estimate", "low", "high", "confidence"),
            "failure-rate", List.of("level", "events", "time", "estimate", "low", "high", "confidence"),
            "geometric-mean", List.of("of", "estimate", "low", "high", "confidence"));

    static Stream<String> studies() {
        return AnswerFiguresTest.studies();
    }

    @ParameterizedTest
    @MethodSource("studies")
    void hasEachFieldOfItsKindAndNoOther(String study) throws IOException {
        JsonNode evidence = AnswerFiguresTest.evidence(study);
        assertEquals(List.of("summaries", "comparisons", "runs", "findings"), names(evidence));
        evidence.get("summaries").forEach(s -> assertEquals(SUMMARY, names(s)));
        for (JsonNode comparison : evidence.get("comparisons")) {
            List<String> expected = new ArrayList<>(COMPARISON);
            expected.addAll(BY_KIND.get(comparison.get("as").asText()));
            assertEquals(expected, names(comparison));
            if (comparison.has("levels")) {
                comparison
                        .get("levels")
                        .forEach(l -> assertEquals(List.of("level", "n", "events", "median", "low", "high"), names(l)));
            }
        }
        for (JsonNode run : evidence.get("runs")) {
            assertEquals(List.of("run", "level", "specimen", "values"), names(run));
            run.get("values")
                    .forEach(v -> assertEquals(
                            List.of("value", "unit", "censored", "bound", "standardUncertainty"), names(v)));
        }
        evidence.get("findings")
                .forEach(f -> assertEquals(
                        List.of("rule", "severity", "outcome", "file", "line", "column", "message"), names(f)));
        assertFalse(evidence.toString().contains("NaN"));
    }

    @ParameterizedTest
    @MethodSource("studies")
    void numbersReadBackAsTheComputedOnes(String study) throws IOException {
        JsonNode comparisons = AnswerFiguresTest.evidence(study).get("comparisons");
        List<ComparisonResult> results =
                SampleSite.CHECKED.studies().get(study).evidence().comparisons();
        for (int i = 0; i < results.size(); i++) {
            if (results.get(i) instanceof ComparisonResult.Contrasted r
                    && !comparisons.get(i).get("estimate").isNull()) {
                assertEquals(
                        r.estimate().orElseThrow(),
                        comparisons.get(i).get("estimate").asDouble());
                assertEquals(
                        r.interval().orElseThrow().low(),
                        comparisons.get(i).get("low").asDouble());
                assertEquals(r.p().orElseThrow(), comparisons.get(i).get("p").asDouble());
            }
        }
    }

    @Test
    void aRefusedComparisonHasNoFigure() throws IOException {
        for (JsonNode comparison : AnswerFiguresTest.evidence("supply").get("comparisons")) {
            assertEquals("not-comparable", comparison.get("verdict").asText());
            for (String field : List.of("estimate", "low", "high", "p", "pAdjusted")) {
                assertTrue(comparison.get(field).isNull(), field);
            }
            assertTrue(comparison.get("caveats").toString().contains("ambient-spread"));
        }
    }

    @Test
    void aTimeThatWasCutOffIsABoundAndMarkedSo() throws IOException {
        for (JsonNode run : AnswerFiguresTest.evidence("heat-spreader").get("runs")) {
            JsonNode time = run.get("values").get("time-to-throttle");
            assertEquals(
                    !run.get("level").asText().equals("none"),
                    time.get("censored").asBoolean());
        }
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
