package org.evenhand.page.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.evenhand.chart.Charts;
import org.evenhand.chart.LieFactor;
import org.evenhand.chart.LogChart;
import org.evenhand.chart.Mark;
import org.evenhand.check.FolderChecker;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.page.Directory;
import org.evenhand.page.Drawings;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageContexts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whether the chart of every log of the sample is drawn as the file of that log has it. See {@link LieFactor}.
 *
 * <p>Of a log too long to be kept, means are those of longer blocks: only that they lie within their stretch is held
 * here. Where stretches are known exactly, the drawing is held against their means too, by the test of log marks.
 */
class LogLieFactorTest {

    private static final Path SAMPLE =
            Path.of(System.getProperty("evenhand.root", "..")).resolve("sample-results");
    private static final PageContext CONTEXT = PageContexts.of(FolderChecker.check(SAMPLE), SAMPLE);

    /** What the sample's items say of their makers' limits. */
    private static final Map<String, Map<String, Double>> LIMITS = Map.of(
            "quillet-2", Map.of("temperature", 85.0, "clock", 1500.0),
            "quillet-3", Map.of("temperature", 85.0, "clock", 1800.0));

    /** The soak's condition: less than 0.95 of the requested 1800 MHz. */
    private static final double THROTTLED_BELOW_MHZ = 1710;

    /** Vertices are left out that lie within 0.2 px of the line; the file has two decimals. */
    private static final double DRAWN_WITHIN_PX = 0.21;

    static Stream<Path> logs() throws IOException {
        try (Stream<Path> files = Files.walk(SAMPLE)) {
            return files.filter(file -> file.getParent().endsWith("logs")).sorted().toList().stream();
        }
    }

    private static MeasuredRun measured(PageContext context, PlainLog log) {
        return new Directory(context)
                .runs().stream()
                        .filter(run -> run.run().study().equals(log.study())
                                && run.run().id().equals(log.run()))
                        .findFirst()
                        .orElseThrow();
    }

    private static LogDrawing drawing(PageContext context, PlainLog log) {
        MeasuredRun run = measured(context, log);
        var folder = context.checked().folder();
        var method = folder.methods().get(run.run().method());
        LogRows rows = new LogRows(run, method, folder.instruments(), context.words());
        return LogDrawing.of(
                        run,
                        method,
                        Optional.ofNullable(folder.items().get(run.run().item())),
                        rows,
                        context.words())
                .orElseThrow();
    }

    private static String markup(PageContext context, PlainLog log) {
        return drawing(context, log)
                .figure(Optional.empty(), context.drawings())
                .svg()
                .html();
    }

    private static List<double[]> throttled(PlainLog log) {
        double[] timesS = log.timesS();
        double[] clock = log.column("clock");
        List<double[]> spans = new ArrayList<>();
        for (int i = 0; i < clock.length; i++) {
            if (clock[i] < THROTTLED_BELOW_MHZ) {
                int begun = i;
                while (i < clock.length - 1 && clock[i] < THROTTLED_BELOW_MHZ) {
                    i++;
                }
                if (i > begun) { // what begins with the last sample lasts no time
                    spans.add(new double[] {timesS[begun], timesS[i]});
                }
            }
        }
        return spans;
    }

    @ParameterizedTest
    @MethodSource("logs")
    void everythingDrawnLiesWhereTheFileAsks(Path file) throws IOException {
        PlainLog log = PlainLog.of(file);
        LogChart chart = drawing(CONTEXT, log).chart();
        for (int width : new int[] {Charts.COLUMN, Drawings.NARROW}) {
            DrawnLog drawn = DrawnLog.of(chart, width);
            Map<String, TrueToScale> scales = new LinkedHashMap<>();
            TrueToScale times = new TrueToScale();
            Set<String> columns = new TreeSet<>();
            for (LogChart.Panel panel : chart.panels()) {
                columns.add(panel.scale());
                panel.lines().stream()
                        .map(LogChart.Line::label)
                        .filter(label -> !label.isEmpty())
                        .forEach(columns::add);
            }
            assertEquals(columns, drawn.lines().keySet(), "lines with marks");
            assertEquals(log.heads().contains("ambient"), columns.contains("ambient"));
            drawn.lines().forEach((column, marks) -> {
                TrueToScale values = scales.computeIfAbsent(drawn.host(column), unused -> new TrueToScale());
                LogComparison.compare(log, column, marks, values, times);
            });
            String item = measured(CONTEXT, log).run().item();
            for (String column : List.of("temperature", "clock")) {
                List<Mark> limits = drawn.limits().get(column);
                assertEquals(1, limits.size(), column);
                scales.get(column)
                        .add(LIMITS.get(item).get(column), limits.get(0).pixel());
            }
            List<double[]> spans = log.study().equals("heat-spreader") ? throttled(log) : List.of();
            List<Mark> ends = drawn.time().stream()
                    .filter(m -> m.what().startsWith("span "))
                    .toList();
            assertEquals(2 * spans.size() * chart.panels().size(), ends.size(), "shaded in each panel");
            for (int i = 0; i < ends.size(); i++) {
                times.add(spans.get(i / 2 % spans.size())[i % 2], ends.get(i).pixel());
            }
            String what = log.study() + "/" + log.run() + " at " + width;
            scales.forEach((column, pairs) -> pairs.assertTrueToScale(what + ", " + column));
            times.assertTrueToScale(what + ", time");
        }
    }

    private static Mark first(List<Mark> marks, String what) {
        return marks.stream()
                .filter(mark -> mark.what().equals(what))
                .findFirst()
                .orElseThrow();
    }

    /** The paths as they stand on the page go through every point that was marked. */
    @ParameterizedTest
    @MethodSource("logs")
    void thePathsOnThePageGoThroughTheMarks(Path file) throws IOException {
        PlainLog log = PlainLog.of(file);
        List<List<List<double[]>>> paths = SvgLines.of(markup(CONTEXT, log).split("narrow-only")[0]);
        DrawnLog drawn = DrawnLog.of(drawing(CONTEXT, log).chart(), Charts.COLUMN);
        for (String column : drawn.lines().keySet()) {
            List<Mark[]> points = drawn.points(column);
            assertTrue(
                    paths.stream().anyMatch(path -> goesThrough(path, points)),
                    log.run() + ": no path is that of " + column);
        }
    }

    private static boolean goesThrough(List<List<double[]>> path, List<Mark[]> points) {
        return points.stream().allMatch(p -> SvgLines.distance(path, p[1].pixel(), p[0].pixel()) < DRAWN_WITHIN_PX);
    }

    @Test
    void whereALogWasInterruptedNothingIsDrawn(@TempDir Path temp) throws IOException {
        Path folder = temp.resolve("results");
        try (Stream<Path> files = Files.walk(SAMPLE)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(SAMPLE.relativize(file).toString()));
            }
        }
        Path file = folder.resolve("studies/heat-spreader/logs/none-1.csv");
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        lines.subList(61, 101).clear(); // the first line names the columns
        Files.write(file, lines);
        PageContext context = PageContexts.of(FolderChecker.check(folder), folder);
        PlainLog log = PlainLog.of(file);
        double fromS = log.timesS()[59];
        double toS = log.timesS()[60];
        assertEquals(205, toS - fromS);

        DrawnLog drawn = DrawnLog.of(drawing(context, log).chart(), Charts.COLUMN);
        List<List<List<double[]>>> paths = SvgLines.of(markup(context, log).split("narrow-only")[0]);
        assertEquals(
                Set.of("temperature", "clock", "power", "ambient"),
                drawn.lines().keySet());
        for (String column : drawn.lines().keySet()) {
            Mark from = first(drawn.lines().get(column), "gap from");
            Mark to = first(drawn.lines().get(column), "gap to");
            assertEquals(fromS, from.value(), column);
            assertEquals(toS, to.value(), column);
            assertEquals(
                    1,
                    drawn.lines().get(column).stream()
                            .filter(mark -> mark.what().equals("gap from"))
                            .count());
            List<List<double[]>> path = paths.stream()
                    .filter(p -> goesThrough(p, drawn.points(column)))
                    .findFirst()
                    .orElseThrow();
            assertTrue(
                    path.stream()
                            .allMatch(piece -> piece.stream().allMatch(at -> at[0] < from.pixel() + DRAWN_WITHIN_PX)
                                    || piece.stream().allMatch(at -> at[0] > to.pixel() - DRAWN_WITHIN_PX)),
                    column + " is drawn across the gap");
        }
    }

    @Test
    void everyLogOfTheSampleIsHeldAgainstItsFile() throws IOException {
        long drawn = new Directory(CONTEXT)
                .runs().stream().filter(run -> run.log().isPresent()).count();
        assertEquals(54, drawn);
        assertEquals(drawn, logs().count());
    }
}
