package org.evenhand.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.compare.Verdict;
import org.evenhand.model.MeasurandId;
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
}
