package org.evenhand.page.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.evenhand.chart.Charts;
import org.evenhand.chart.Dot;
import org.evenhand.chart.LevelChart;
import org.evenhand.chart.LieFactor;
import org.evenhand.chart.Mark;
import org.evenhand.words.Words;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whether every chart of the sample's answers is drawn as its data are. See {@link LieFactor}. */
class LieFactorTest {

    static Stream<String> studies() {
        return SampleSite.CHECKED.studies().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("studies")
    void everyMarkLiesWhereItsValueAsks(String study) {
        Answer answer = SampleAnswers.of(study);
        for (DrawnChart chart : ChartFigures.of(answer)) {
            Map<String, List<Mark>> scales = new LinkedHashMap<>();
            Charts.marks(chart.figure(), Charts.COLUMN, Words.english())
                    .forEach(mark -> scales.computeIfAbsent(mark.scale(), unused -> new ArrayList<>())
                            .add(mark));
            assertTrue(!scales.isEmpty(), chart.name() + " reports no marks");
            scales.forEach((scale, marks) -> LieFactor.assertTrueToScale(
                    marks.stream()
                            .mapToDouble(m -> m.logarithmic() ? Math.log(m.value()) : m.value())
                            .toArray(),
                    marks.stream().mapToDouble(Mark::pixel).toArray(),
                    study + ", " + chart.name() + ", " + scale));
        }
    }

    /** The circles as they stand on the page, against the values of the runs, of which one circle is each. */
    @ParameterizedTest
    @MethodSource("studies")
    void theDotsOnThePageLieWhereTheRunsAsk(String study) {
        Answer answer = SampleAnswers.of(study);
        for (DrawnChart chart : ChartFigures.of(answer)) {
            if (!(chart.figure() instanceof LevelChart levels)) {
                continue;
            }
            if (levels.levels().stream()
                    .flatMap(level -> level.dots().stream())
                    .anyMatch(dot -> dot.bound() != Dot.Bound.EXACT)) {
                continue; // a bound is drawn as a sign of several strokes
            }
            double[] runs = levels.levels().stream()
                    .flatMap(level -> level.dots().stream())
                    .mapToDouble(Dot::value)
                    .sorted()
                    .toArray();
            List<Element> circles =
                    SampleSite.page(study).getElementById(chart.id()).select(".wide-only svg circle.c-s1-f");
            double lowest = circles.stream()
                    .mapToDouble(circle -> Double.parseDouble(circle.attr("cy")))
                    .max()
                    .orElse(0);
            // The lowest one is the sample of the key.
            double[] drawn = circles.stream()
                    .filter(circle -> Double.parseDouble(circle.attr("cy")) < lowest)
                    .mapToDouble(circle -> Double.parseDouble(circle.attr("cx")))
                    .sorted()
                    .toArray();
            assertEquals(runs.length, drawn.length, study + ", " + chart.name());
            LieFactor.assertTrueToScale(runs, drawn, study + ", " + chart.name());
        }
    }
}
