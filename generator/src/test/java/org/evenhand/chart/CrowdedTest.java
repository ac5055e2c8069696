package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.evenhand.words.Words;
import org.junit.jupiter.api.Test;

/** Figures with too much, too little or always the same. */
class CrowdedTest {

    static Map<String, Figure> crowded() {
        Map<String, Figure> all = new LinkedHashMap<>();
        Random random = new Random(3);
        List<Dot> cloud = new ArrayList<>();
        List<Dot> ended = new ArrayList<>();
        for (int i = 0; i < 80; i++) {
            cloud.add(Dot.at(50 + random.nextGaussian()));
        }
        for (int i = 0; i < 9; i++) {
            ended.add(Dot.atLeast(45));
        }
        Estimate mean = Estimate.of(50, 49.8, 50.2);
        all.put(
                "runs",
                new LevelChart(
                        "Anything (W)",
                        List.of(
                                new LevelChart.Level("many", cloud, Optional.of(mean), "50.0 ± 0.2 W", ""),
                                new LevelChart.Level(
                                        "ended", ended, Optional.empty(), "at least 45 W", "all ended first")),
                        "one run",
                        "mean"));
        all.put(
                "same",
                new LevelChart(
                        "Anything (W)",
                        List.of(new LevelChart.Level(
                                "", Samples.dots(0, 0, 0), Optional.of(Estimate.of(0, 0, 0)), "", "")),
                        "",
                        ""));
        all.put(
                "empty",
                new LevelChart(
                        "Anything (W)",
                        List.of(new LevelChart.Level("nothing yet", List.of(), Optional.empty(), "", "")),
                        "",
                        ""));
        List<ComparisonChart.Comparison> refused = List.of(new ComparisonChart.Comparison(
                "word".repeat(40),
                Optional.empty(),
                Optional.empty(),
                "reason ".repeat(30),
                "not comparable",
                "note ".repeat(20)));
        all.put(
                "refused",
                new ComparisonChart(
                        "Ratio", true, refused, new ComparisonChart.Sides("a".repeat(99), "b".repeat(99)), "", ""));
        List<LogChart.Panel> panels = new ArrayList<>();
        for (String quantity : List.of("Temperature (°C)", "Clock (MHz)", "Power (W)")) {
            List<LogChart.Line> lines = new ArrayList<>();
            for (int run = 0; run < 6; run++) {
                Thinner thinner = new Thinner(Thinner.FOR_CHART);
                for (int s = 0; s < 40_000; s++) {
                    thinner.add(s, s % 9000 < 60 ? Double.NaN : run * 2 + random.nextGaussian());
                }
                lines.add(new LogChart.Line("a long label of run " + run, thinner.trace(), false));
            }
            panels.add(new LogChart.Panel(quantity, quantity, lines, List.of(new LogChart.Limit(14, "limit"))));
        }
        all.put("logs", new LogChart("time from start", 0, 40_000, panels, List.of(), ""));
        LogChart.Line nothing = new LogChart.Line("nothing", new Thinner(5).trace(), false);
        LogChart.Panel blank = new LogChart.Panel("Empty (W)", "e", List.of(nothing), List.of());
        all.put(
                "blank",
                new LogChart("time", 0, 0.004, List.of(blank), List.of(new LogChart.Span(-5, 9)), "throttled"));
        all.put(
                "counts",
                new ScaleChart(
                        "Heard",
                        List.of("silent", "loud"),
                        List.of(new ScaleChart.Level("many", List.of(400, 30), "")),
                        "one listener"));
        return all;
    }

    @Test
    void each_is_drawn_and_stays_small() throws IOException {
        for (Map.Entry<String, Figure> each : crowded().entrySet()) {
            for (int width : new int[] {280, 600}) {
                String svg = Charts.svg(
                                each.getValue(), new Caption("c-" + each.getKey(), "", ""), width, Words.english())
                        .svg();
                Path drawn = Path.of("target", "charts", "crowded-" + each.getKey() + "-" + width + ".svg");
                Files.createDirectories(drawn.getParent());
                Files.writeString(drawn, svg);
                ByteArrayOutputStream packed = new ByteArrayOutputStream();
                try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
                    gzip.write(svg.getBytes(StandardCharsets.UTF_8));
                }
                assertTrue(packed.size() < 40_000, each.getKey() + ": " + packed.size());
            }
        }
    }

    @Test
    void runs_of_one_value_do_not_hide_each_other() {
        String svg = Charts.svg(
                        new LevelChart(
                                "x",
                                List.of(new LevelChart.Level(
                                        "a", Samples.dots(5, 5, 5, 5, 5), Optional.empty(), "", "")),
                                "",
                                ""),
                        new Caption("c", "", ""),
                        600,
                        Words.english())
                .svg();
        long heights = Pattern.compile("<circle cx=\"[0-9.]+\" (cy=\"[0-9.]+\")")
                .matcher(svg)
                .results()
                .map(result -> result.group(1))
                .distinct()
                .count();
        assertEquals(5, heights);
    }
}
