package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.words.Words;
import org.junit.jupiter.api.Test;

/** Whether lengths on the drawing are as the data. See {@link LieFactor}. */
class IntegrityTest {

    @Test
    void marks_of_every_chart_lie_where_their_values_ask() {
        for (Map.Entry<String, Figure> sample : Samples.all().entrySet()) {
            Map<String, List<Mark>> scales = new LinkedHashMap<>();
            for (Mark mark : Charts.marks(sample.getValue(), Charts.COLUMN, Words.english())) {
                scales.computeIfAbsent(mark.scale(), unused -> new ArrayList<>())
                        .add(mark);
            }
            assertTrue(!scales.isEmpty(), sample.getKey() + " reports no marks");
            scales.forEach((scale, marks) -> {
                double[] values = marks.stream()
                        .mapToDouble(m -> m.logarithmic() ? StrictMath.log(m.value()) : m.value())
                        .toArray();
                double[] pixels = marks.stream().mapToDouble(Mark::pixel).toArray();
                LieFactor.assertTrueToScale(values, pixels, sample.getKey() + ", " + scale);
            });
        }
    }

    @Test
    void the_circles_in_the_file_lie_where_the_runs_ask() {
        double[] runs = {3, 11, 19, 40, 97};
        LevelChart figure = new LevelChart(
                "x", List.of(new LevelChart.Level("a", Samples.dots(runs), Optional.empty(), "", "")), "", "");
        Matcher circle = Pattern.compile("<circle cx=\"([0-9.]+)\" cy=\"([0-9.]+)\"")
                .matcher(Charts.svg(figure, new Caption("c", "", ""), 600, Words.english())
                        .svg());
        List<Double> drawn = new ArrayList<>();
        while (circle.find()) {
            drawn.add(Double.parseDouble(circle.group(1)));
        }
        assertEquals(runs.length, drawn.size());
        LieFactor.assertTrueToScale(
                runs, drawn.stream().mapToDouble(Double::doubleValue).toArray(), "circles");
    }

    @Test
    void half_and_twice_lie_equally_far_from_one() {
        List<Mark> marks = Charts.marks(Samples.ratios(), 600, Words.english());
        double one = pixel(marks, "reference", 1);
        assertEquals(one - pixel(marks, "estimate", 0.5), pixel(marks, "estimate", 2) - one, 1e-9);
    }

    private static double pixel(List<Mark> marks, String what, double value) {
        return marks.stream()
                .filter(mark -> mark.what().equals(what) && mark.value() == value)
                .findFirst()
                .orElseThrow()
                .pixel();
    }

    @Test
    void a_stack_of_twice_the_count_is_twice_as_high() {
        ScaleChart figure = new ScaleChart(
                "x", List.of("a", "b", "c"), List.of(new ScaleChart.Level("l", List.of(4, 8, 0), "")), "");
        List<Mark> marks = Charts.marks(figure, 600, Words.english());
        double foot = marks.get(2).pixel();
        assertEquals(2, (foot - marks.get(1).pixel()) / (foot - marks.get(0).pixel()), 1e-9);
    }

    @Test
    void small_multiples_of_one_scale_have_one_scale() {
        List<Mark> marks = Charts.marks(Samples.multiples(), 600, Words.english());
        Map<String, Double> perUnit = new LinkedHashMap<>();
        for (Mark mark : marks) {
            if (mark.scale().equals("time")) {
                continue;
            }
            Mark other = marks.stream()
                    .filter(m -> m.scale().equals(mark.scale()) && m.value() != mark.value())
                    .findFirst()
                    .orElseThrow();
            perUnit.put(mark.scale(), (mark.pixel() - other.pixel()) / (mark.value() - other.value()));
        }
        assertEquals(4, perUnit.size());
        double first = perUnit.values().iterator().next();
        perUnit.values().forEach(each -> assertEquals(first, each, 1e-6));
    }
}
