package org.evenhand.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The test folder with Michelson's runs holds the values of its source, in the source's order. */
class MichelsonFolderTest {

    private static final Path RUNS = Path.of("src/test/resources/michelson/studies/speed-of-light/runs");

    private record Run(String series, double speedKmPerS) {}

    /** Source: NIST StRD, michelso, certified values in thousands of km/s: all digits certified are compared. */
    @Test
    void theHundredSpeedsHaveTheCertifiedMeanSpreadAndAutocorrelation() throws IOException {
        List<Run> runs = runs();
        assertEquals(100, runs.size());
        double mean = mean(runs);
        double squares = 0;
        double products = 0;
        for (int i = 0; i < runs.size(); i++) {
            double deviation = runs.get(i).speedKmPerS() - mean;
            squares += deviation * deviation;
            if (i > 0) {
                products += deviation * (runs.get(i - 1).speedKmPerS() - mean);
            }
        }
        assertEquals(299852.4, mean, 1e-9);
        assertEquals(79.0105478190518, StrictMath.sqrt(squares / 99), 1e-10);
        // Depends on the order of the runs, so it also holds them to the source's order.
        assertEquals(0.535199668621283, products / squares, 1e-12);
    }

    /** Source: R 4.2.2, package datasets, morley: means of experiments 1, 3 and 5, with 299 000 km/s added. */
    @ParameterizedTest(name = "series {0}: {1} km/s")
    @CsvSource({"1, 299909", "3, 299845", "5, 299831.5"})
    void eachSeriesHasTwentyRunsAndTheMeanOfItsExperiment(String series, double meanKmPerS) throws IOException {
        List<Run> ofSeries =
                runs().stream().filter(run -> run.series().equals(series)).toList();
        assertEquals(20, ofSeries.size());
        assertEquals(meanKmPerS, mean(ofSeries), 1e-9);
    }

    private static double mean(List<Run> runs) {
        double sum = 0;
        for (Run run : runs) {
            sum += run.speedKmPerS();
        }
        return sum / runs.size();
    }

    /** In the order of their names. */
    private static List<Run> runs() throws IOException {
        ObjectMapper json = new ObjectMapper();
        List<Run> runs = new ArrayList<>();
        try (Stream<Path> files = Files.list(RUNS)) {
            for (Path file : files.sorted().toList()) {
                JsonNode run = json.readTree(Files.readAllBytes(file));
                String speed = run.path("readings").path("speed").asText();
                runs.add(new Run(
                        run.path("settings").path("series").asText(), Double.parseDouble(speed.replace(" km/s", ""))));
            }
        }
        return runs;
    }
}
