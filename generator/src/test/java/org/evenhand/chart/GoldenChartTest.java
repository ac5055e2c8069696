package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.evenhand.words.Words;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Each kind of chart against a drawing that was looked at and found good. What is drawn now is left in
 * {@code target/charts}, to be looked at, and copied to the test resources, when a change is meant.
 */
class GoldenChartTest {

    @TestFactory
    Iterable<DynamicTest> a_chart_is_drawn_as_reviewed() {
        return Samples.all().entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> compare(entry)))
                .toList();
    }

    private static void compare(Map.Entry<String, Figure> entry) throws IOException {
        String name = entry.getKey();
        String svg = Charts.svg(entry.getValue(), caption(name), Charts.COLUMN, Words.english())
                .svg();
        Path drawn = Path.of("target", "charts", name + ".svg");
        Files.createDirectories(drawn.getParent());
        Files.writeString(drawn, svg);
        String narrow = Charts.svg(entry.getValue(), caption(name + "-narrow"), 330, Words.english())
                .svg();
        Files.writeString(drawn.resolveSibling(name + "-narrow.svg"), narrow);
        try (InputStream in = GoldenChartTest.class.getResourceAsStream(name + ".svg")) {
            assertNotNull(in, "no reviewed drawing " + name + ".svg");
            assertEquals(new String(in.readAllBytes(), StandardCharsets.UTF_8), svg);
        }
    }

    static Caption caption(String name) {
        return new Caption("fig-" + name, "Sample of " + name, "Invented values, drawn to test the chart.");
    }
}
