package org.evenhand.page.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.evenhand.chart.LogChart;
import org.evenhand.chart.Trace;
import org.evenhand.log.ThinSeries;
import org.evenhand.log.Thinner;
import org.evenhand.measure.BlockSeries;
import org.evenhand.model.Method;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.evenhand.read.FolderReader;
import org.junit.jupiter.api.Test;

/** Shaded stretches and drawn lines against logs whose course is known. The sample's soak throttles below 1710 MHz. */
class LogSpansTest {

    private static final ResultsFolder SAMPLE =
            FolderReader.read(Path.of(System.getProperty("evenhand.root", "..")).resolve("sample-results"));
    private static final Run RUN = SAMPLE.studies().get("heat-spreader").runs().get(0);
    private static final Method METHOD = SAMPLE.methods().get("thermal-soak");
    private static final int BUCKETS = 200;

    private static ThinSeries clock(double stepS, double endS, DoubleUnaryOperator clockMhz) {
        Thinner thinner = new Thinner(BUCKETS);
        for (int i = 0; i * stepS <= endS; i++) {
            thinner.add(i * stepS, clockMhz.applyAsDouble(i * stepS));
        }
        return thinner.series(10 * stepS);
    }

    private static LogSpans spans(ThinSeries clock) {
        return LogSpans.of(RUN, METHOD, Map.of("clock", clock), org.evenhand.words.Words.english());
    }

    @Test
    void aStretchBeginsWithTheFirstSampleBelowAndEndsWithTheNextThatIsNot() {
        LogSpans found = spans(clock(1, 600, t -> t >= 120 && t < 180 ? 1000 : 1800));
        assertEquals(List.of(new LogChart.Span(120, 180)), found.spans());
        assertEquals("clock below 1710\u00a0MHz", found.meaning());
    }

    @Test
    void aStretchThatLastsIsClosedByTheEndOfTheLog() {
        assertEquals(
                List.of(new LogChart.Span(500, 600)),
                spans(clock(1, 600, t -> t >= 500 ? 1000 : 1800)).spans());
    }

    @Test
    void noneIsFoundWhereTheClockHolds() {
        LogSpans found = spans(clock(1, 600, t -> 1711));
        assertTrue(found.spans().isEmpty());
        assertFalse(found.tooFast());
    }

    @Test
    void aThinnedLogShowsItsStretchesToWithinItsThinning() {
        LogSpans found = spans(clock(0.1, 2700, t -> t >= 900 && t < 1200 ? 1000 : 1800));
        assertEquals(1, found.spans().size());
        double bucketS = 2 * 2700.0 / BUCKETS;
        assertEquals(900, found.spans().get(0).fromS(), bucketS);
        assertEquals(1200, found.spans().get(0).toS(), bucketS);
    }

    @Test
    void whatComesAndGoesFasterThanTheThinningIsNotShaded() {
        LogSpans found = spans(clock(0.1, 2700, t -> Math.floor(t) % 2 == 0 ? 1000 : 1800));
        assertTrue(found.tooFast());
        assertTrue(found.spans().isEmpty());
    }

    @Test
    void theMeanOfAThinnedTraceIsThatOfItsSamplesAndNotOfItsExtremes() {
        // Nine samples of ten at 1800, one at 1000: the mean is 1720, the middle of the extremes 1400.
        ThinSeries series = clock(1, 20_000, t -> t % 10 == 0 ? 1000 : 1800);
        BlockSeries means = new BlockSeries(10_000, new double[] {5_000, 15_000}, new double[] {1720, 1720});
        Trace trace = LogTrace.of(series, means, 20_001);
        assertTrue(trace.thinned());
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Trace.Bucket bucket : trace.buckets()) {
            low = Math.min(low, bucket.low());
            high = Math.max(high, bucket.high());
            if (bucket.low() < 1720 && bucket.high() > 1720) {
                assertEquals(1720, bucket.mean(), 1e-9);
            }
        }
        assertEquals(1000, low);
        assertEquals(1800, high);
    }
}
