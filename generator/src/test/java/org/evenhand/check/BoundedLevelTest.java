package org.evenhand.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.compare.Verdict;
import org.evenhand.model.MeasurandId;
import org.evenhand.page.Pages;
import org.evenhand.page.Templates;
import org.evenhand.quantity.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A level that the background hides stays a bound wherever it goes; ISO 3746:2010, 8.3.3, calls it no more than that. */
class BoundedLevelTest {

    @Test
    void isCountedButNeverAveragedNorCompared(@TempDir Path folder) {
        RuleCase tooNear = RuleCase.all().stream()
                .filter(c -> c.rule().equals("background-near") && c.name().equals("triggers"))
                .findFirst()
                .orElseThrow();
        CheckedStudy study =
                FolderChecker.check(tooNear.assembleIn(folder)).studies().get("fan");
        StudyEvidence evidence = study.evidence();
        LevelSummary half =
                evidence.summary("half", new MeasurandId("fan-sound", "level")).orElseThrow();
        assertEquals(3, half.n());
        assertEquals(1, half.atMost());
        assertEquals(0, half.censored());
        assertTrue(half.mean().isEmpty());
        assertTrue(half.interval().isEmpty());
        ComparisonResult louder = evidence.comparison("louder").orElseThrow();
        assertTrue(((ComparisonResult.Contrasted) louder).estimate().isEmpty());
        assertTrue(
                louder.why().get(0).contains("smaller than a bound"),
                louder.why().toString());
        assertEquals(Optional.of(Verdict.NOT_COMPARABLE), study.verdict(louder));
    }

    @Test
    void isPublishedWithItsBound(@TempDir Path folder) throws IOException {
        RuleCase tooNear = RuleCase.all().stream()
                .filter(c -> c.rule().equals("background-near") && c.name().equals("triggers"))
                .findFirst()
                .orElseThrow();
        Path root = tooNear.assembleIn(folder);
        Map<String, byte[]> site = new ConcurrentHashMap<>();
        Pages.build(FolderChecker.check(root), root, Templates.bundled(), "test", site::put);
        List<JsonNode> bounds = new ArrayList<>();
        new ObjectMapper()
                .readTree(site.get("answers/fan/evidence.json"))
                .get("runs")
                .forEach(run -> {
                    JsonNode level = run.get("values").get("level");
                    if (!level.get("bound").isNull()) {
                        bounds.add(level);
                    }
                });
        assertEquals(1, bounds.size());
        assertEquals("at most", bounds.get(0).get("bound").asText());
        assertTrue(bounds.get(0).get("censored").asBoolean());
        assertTrue(bounds.get(0).get("standardUncertainty").isNull());
        double bound = bounds.get(0).get("value").asDouble();
        String page = new String(site.get("answers/fan/index.html"), StandardCharsets.UTF_8);
        assertTrue(page.contains("≤\u00a0" + Figures.value(bound, 0)), "≤ " + bound);
    }
}
