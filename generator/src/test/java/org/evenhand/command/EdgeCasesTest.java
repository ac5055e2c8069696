package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Too little to compute with, published: the table at the end of {@code docs/methods.md} says what comes of it. */
class EdgeCasesTest {

    private static final Path RESULTS = Path.of("src/test/resources/edge-cases");
    private static final Path METHODS =
            Path.of(System.getProperty("evenhand.root", "..")).resolve("docs/methods.md");

    @TempDir
    private static Path site;

    /**
     * A line of the table.
     *
     * @param study of the folder
     * @param comparison of the study
     * @param words that its row must hold
     */
    record Line(String study, String comparison, String words) {}

    @BeforeAll
    static void published() {
        Called.with("publish", RESULTS.toString(), "--to", site.toString()).ended(1);
    }

    static List<Line> table() throws IOException {
        String text = Files.readString(METHODS);
        return text.substring(text.indexOf("## What comes of too little"))
                .lines()
                .filter(line -> line.startsWith("| `"))
                .map(line -> line.split("\\|"))
                .map(cells -> new Line(code(cells[1]), code(cells[3]), cells[4].strip()))
                .toList();
    }

    private static String code(String cell) {
        return cell.replace("`", "").strip();
    }

    @ParameterizedTest
    @MethodSource("table")
    void whatIsDocumentedIsWhatIsSaid(Line line) throws IOException {
        Element row = page(line.study()).getElementById("comparison." + line.comparison());
        assertTrue(row != null, line.comparison());
        String said = row.text().replace('\u00a0', ' ');
        assertTrue(said.contains(line.words()), said);
    }

    @Test
    void everyStudyThatIsPublishedStandsInTheTable() throws IOException {
        Set<String> documented = table().stream().map(Line::study).collect(Collectors.toCollection(TreeSet::new));
        documented.addAll(List.of("none", "none-yet", "one-sample", "two-samples"));
        try (Stream<Path> studies = Files.list(RESULTS.resolve("studies"))) {
            assertEquals(
                    studies.map(s -> s.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new)),
                    documented);
        }
    }

    @Test
    void withoutALogThatCanBeReadOrWithoutRunsAFinalStudyIsWithheld() throws IOException {
        for (String study : List.of("none", "one-sample")) {
            assertTrue(page(study).text().contains("Withheld"), study);
            assertEquals(0, evidence(study).get("summaries").size());
        }
    }

    @Test
    void aLevelThatStillWaitsForRunsHasNoValue() throws IOException {
        JsonNode waiting = evidence("none-yet").get("summaries").get(1);
        assertEquals("b", waiting.get("level").asText());
        assertEquals(0, waiting.get("n").asInt());
        for (String field : List.of("mean", "standardDeviation", "low", "high", "typeA")) {
            assertTrue(waiting.get(field).isNull(), field);
        }
    }

    @Test
    void aLogOfTwoSamplesHasWhatTwoSamplesTell() throws IOException {
        JsonNode values = evidence("two-samples").get("runs").get(0).get("values");
        // 2 W and 4 W, 20 s apart: 60 J by the trapezoid.
        assertEquals(60, values.get("energy").get("value").asDouble());
        assertEquals(3, values.get("mean").get("value").asDouble());
        assertEquals(3, values.get("median").get("value").asDouble());
        assertEquals(0, values.get("high").get("value").asDouble());
        assertEquals(20, values.get("until").get("value").asDouble());
        assertTrue(values.get("settled").get("value").isNull());
        assertTrue(values.get("plateau").get("value").isNull());
        // The same two samples 90 s apart: a gap longer than the 60 s of the method.
        JsonNode apart = evidence("two-samples").get("runs").get(1).get("values");
        assertTrue(apart.get("energy").get("value").isNull());
    }

    @Test
    void nowhereStandsWhatIsNotANumber() throws IOException {
        Pattern notANumber = Pattern.compile("\\bNaN\\b|\\bnan\\b|Infinity|[-+]?\\binf\\b|\\bnull\\b");
        int looked = 0;
        try (Stream<Path> files = Files.walk(site)) {
            for (Path file : files.filter(Files::isRegularFile)
                    .filter(f -> !site.relativize(f).startsWith("assets"))
                    .toList()) {
                String name = file.getFileName().toString();
                if (name.matches(".*\\.(html|json|csv|svg|xml|md|txt|atom)")) {
                    String text = Files.readString(file, StandardCharsets.UTF_8);
                    String held = name.endsWith(".json") ? text.replaceAll(": null", "") : text;
                    assertFalse(notANumber.matcher(held).find(), file.toString());
                    looked++;
                }
            }
        }
        assertTrue(looked > 100, looked + " files");
    }

    private static Document page(String study) throws IOException {
        return Jsoup.parse(site.resolve("answers/" + study + "/index.html").toFile());
    }

    private static JsonNode evidence(String study) throws IOException {
        return new ObjectMapper()
                .readTree(site.resolve("answers/" + study + "/evidence.json").toFile());
    }
}
