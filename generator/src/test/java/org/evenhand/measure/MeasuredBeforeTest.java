package org.evenhand.measure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.SortedMap;
import org.evenhand.cache.Packed;
import org.evenhand.measure.MeasuredBefore.Kept;
import org.evenhand.model.ResultsFolder;
import org.evenhand.read.FolderReader;
import org.junit.jupiter.api.Test;

class MeasuredBeforeTest {

    private static final Path SAMPLE = Path.of(System.getProperty("evenhand.root", ".."), "sample-results");

    @Test
    void everyRunOfTheSampleIsKeptAndComesBackAsItWas() {
        ResultsFolder folder = FolderReader.read(SAMPLE);
        int withLog = 0;
        for (SortedMap<String, MeasuredRun> runs :
                Measurements.measure(folder, SAMPLE).byStudy().values()) {
            for (MeasuredRun run : runs.values()) {
                byte[] packed = Packed.of(Kept.of(run));
                MeasuredRun back =
                        Packed.unpack(packed, Kept.class).orElseThrow().with(run.run());
                assertArrayEquals(packed, Packed.of(Kept.of(back)), run.run().id());
                assertEquals(run.values(), back.values());
                assertEquals(run.log(), back.log());
                withLog += run.log().isPresent() ? 1 : 0;
            }
        }
        assertTrue(withLog > 10, "runs with a log: " + withLog);
    }
}
