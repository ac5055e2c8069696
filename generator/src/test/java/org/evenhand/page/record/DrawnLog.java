package org.evenhand.page.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenhand.chart.Charts;
import org.evenhand.chart.LogChart;
import org.evenhand.chart.Mark;
import org.evenhand.words.Words;

/**
 * The marks of a log's chart, sorted.
 *
 * @param chart what was drawn
 * @param time all marks on the time axis
 * @param limits of each panel, by the column it is of
 * @param lines of each column, in the order drawn; those of a value are followed by those of its time
 */
record DrawnLog(LogChart chart, List<Mark> time, Map<String, List<Mark>> limits, Map<String, List<Mark>> lines) {

    static DrawnLog of(LogChart chart, int width) {
        List<Mark> time = new ArrayList<>();
        Map<String, List<Mark>> limits = new LinkedHashMap<>();
        Map<String, List<Mark>> lines = new LinkedHashMap<>();
        LogChart.Panel panel = null;
        for (Mark mark : Charts.marks(chart, width, Words.english())) {
            if (mark.scale().equals("time")) {
                time.add(mark);
                if (mark.what().startsWith("span ")) {
                    continue;
                }
            } else {
                panel = chart.panels().stream()
                        .filter(p -> p.title().equals(mark.scale()))
                        .findFirst()
                        .orElseThrow();
            }
            if (mark.what().equals("limit")) {
                limits.computeIfAbsent(panel.scale(), unused -> new ArrayList<>())
                        .add(mark);
            } else {
                boolean behind = mark.what().startsWith("ambient ");
                Mark named = new Mark(
                        mark.scale(),
                        mark.what().replaceFirst("^ambient ", ""),
                        mark.value(),
                        mark.logarithmic(),
                        mark.pixel());
                lines.computeIfAbsent(behind ? "ambient" : panel.scale(), unused -> new ArrayList<>())
                        .add(named);
            }
        }
        return new DrawnLog(chart, time, limits, lines);
    }

    /** The column whose panel a column is drawn in. */
    String host(String column) {
        return chart.panels().stream()
                .filter(panel -> panel.scale().equals(column)
                        || panel.lines().stream().anyMatch(line -> line.label().equals(column)))
                .map(LogChart.Panel::scale)
                .findFirst()
                .orElseThrow();
    }

    /** Every point of a line with its time: its two marks, that of the value first. */
    List<Mark[]> points(String column) {
        List<Mark[]> points = new ArrayList<>();
        List<Mark> marks = lines.get(column);
        for (int i = 0; i < marks.size(); i++) {
            if (List.of("sample", "first", "last", "mean").contains(marks.get(i).what())) {
                Mark time = marks.get(i + 1);
                assertEquals("time", time.scale());
                assertEquals(marks.get(i).what(), time.what());
                points.add(new Mark[] {marks.get(i++), time});
            }
        }
        return points;
    }
}
