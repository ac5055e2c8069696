package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.evenhand.words.Words;
import org.junit.jupiter.api.Test;

/** Where stretches of long logs are drawn, against all their samples. See {@link LieFactor}. */
class LogMarksTest {

    private static final int SAMPLES = 20_000;
    private static final int GAP_FROM = 8_000;
    private static final int GAP_TO = 9_000;

    private static final DoubleUnaryOperator SLOW = t -> 40 + 30 * Math.sin(t / 4_000);
    private static final DoubleUnaryOperator SWINGING = t -> 40 + 10 * Math.sin(t / 4_000) + 20 * Math.sin(t * 1.7);

    private static Trace trace(DoubleUnaryOperator course) {
        Thinner thinner = new Thinner(Thinner.FOR_CHART);
        for (int s = 0; s < SAMPLES; s++) {
            thinner.add(s, s > GAP_FROM && s < GAP_TO ? Double.NaN : course.applyAsDouble(s));
        }
        return thinner.trace();
    }

    private static LogChart chart() {
        return new LogChart(
                "time from start",
                0,
                SAMPLES - 1,
                List.of(
                        new LogChart.Panel(
                                "slow",
                                "slow",
                                List.of(new LogChart.Line("", trace(SLOW), false)),
                                List.of(new LogChart.Limit(75, "limit"))),
                        new LogChart.Panel(
                                "swinging",
                                "swinging",
                                List.of(new LogChart.Line("", trace(SWINGING), false)),
                                List.of())),
                List.of(new LogChart.Span(2_000, 5_000)),
                "shaded");
    }

    private static final List<Mark> MARKS = Charts.marks(chart(), Charts.COLUMN, Words.english());

    /** The marks from one of a panel on, as far as they belong to the same stretch. */
    private static int[] indices(String panel, String what) {
        return IntStream.range(0, MARKS.size())
                .filter(i -> MARKS.get(i).scale().equals(panel)
                        && MARKS.get(i).what().equals(what))
                .toArray();
    }

    private static double[] samples(DoubleUnaryOperator course, double fromS, double toS) {
        return IntStream.rangeClosed((int) fromS, (int) toS)
                .filter(s -> s <= GAP_FROM || s >= GAP_TO)
                .mapToDouble(course::applyAsDouble)
                .toArray();
    }

    @Test
    void everyKindOfMarkIsNoted() {
        assertEquals(
                Set.of(
                        "limit",
                        "span from",
                        "span to",
                        "gap from",
                        "gap to",
                        "first",
                        "low",
                        "high",
                        "last",
                        "mean",
                        "band low",
                        "band high",
                        "band from",
                        "band to"),
                MARKS.stream().map(Mark::what).collect(Collectors.toSet()));
    }

    @Test
    void aStretchIsDrawnFromItsLowestToItsHighestSample() {
        int[] lows = indices("slow", "low");
        assertTrue(lows.length >= Thinner.FOR_CHART / 2);
        double[] values = new double[2 * lows.length];
        double[] pixels = new double[2 * lows.length];
        for (int k = 0; k < lows.length; k++) {
            double fromS = MARKS.get(lows[k] - 1).value();
            double toS = MARKS.get(lows[k] + 3).value();
            double[] samples = samples(SLOW, fromS, toS);
            values[2 * k] = Arrays.stream(samples).min().orElseThrow();
            values[2 * k + 1] = Arrays.stream(samples).max().orElseThrow();
            pixels[2 * k] = MARKS.get(lows[k]).pixel();
            pixels[2 * k + 1] = MARKS.get(lows[k] + 1).pixel();
        }
        LieFactor.assertTrueToScale(values, pixels, "slow");
    }

    @Test
    void aBandReachesFromTheLowestToTheHighestSampleWithTheMeanInIt() {
        int[] lows = indices("swinging", "band low");
        int[] means = indices("swinging", "mean");
        assertEquals(lows.length, means.length);
        assertTrue(lows.length >= Thinner.FOR_CHART / 2);
        double[] values = new double[3 * lows.length];
        double[] pixels = new double[3 * lows.length];
        for (int k = 0; k < lows.length; k++) {
            double[] samples = samples(
                    SWINGING,
                    MARKS.get(lows[k] + 2).value(),
                    MARKS.get(lows[k] + 3).value());
            values[3 * k] = Arrays.stream(samples).min().orElseThrow();
            values[3 * k + 1] = Arrays.stream(samples).max().orElseThrow();
            values[3 * k + 2] = Arrays.stream(samples).average().orElseThrow();
            pixels[3 * k] = MARKS.get(lows[k]).pixel();
            pixels[3 * k + 1] = MARKS.get(lows[k] + 1).pixel();
            pixels[3 * k + 2] = MARKS.get(means[k]).pixel();
        }
        LieFactor.assertTrueToScale(values, pixels, "swinging");
    }

    @Test
    void timeIsTrueToScaleAndNothingLiesInTheGap() {
        List<Mark> time =
                MARKS.stream().filter(mark -> mark.scale().equals("time")).toList();
        LieFactor.assertTrueToScale(
                time.stream().mapToDouble(Mark::value).toArray(),
                time.stream().mapToDouble(Mark::pixel).toArray(),
                "time");
        assertEquals(
                2,
                time.stream()
                        .filter(mark -> mark.what().equals("gap from") && mark.value() == GAP_FROM)
                        .count());
        assertEquals(
                2,
                time.stream()
                        .filter(mark -> mark.what().equals("gap to") && mark.value() == GAP_TO)
                        .count());
        assertTrue(time.stream().noneMatch(mark -> mark.value() > GAP_FROM && mark.value() < GAP_TO));
    }

    @Test
    void nobodyIsTroubledWithMarksWhoDoesNotAskForThem() {
        Sheet sheet = new Sheet(new SvgGraphics("plain"), Charts.COLUMN, 600);
        chart().layout(Words.english()).paint(sheet);
        assertEquals(List.of(), sheet.marks());
    }
}
