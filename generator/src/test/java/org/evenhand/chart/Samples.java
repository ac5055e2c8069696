package org.evenhand.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A figure of each kind, with invented values. */
final class Samples {

    private Samples() {}

    static Map<String, Figure> all() {
        Map<String, Figure> all = new LinkedHashMap<>();
        all.put("levels", levels());
        all.put("levels-censored", censored());
        all.put("differences", differences());
        all.put("ratios", ratios());
        all.put("log", log());
        all.put("log-multiples", multiples());
        all.put("trend", trend());
        all.put("survival", survival());
        all.put("scale", scale());
        all.put("sound", sound());
        all.put("proportions", proportions());
        all.put("plate", plate());
        return all;
    }

    static Plate plate() {
        return new Plate(
                Optional.of(sound()),
                List.of(
                        new Plate.Line(Plate.Style.TITLE, "Can the fan be heard at the microphone, and from how far?"),
                        new Plate.Line(Plate.Style.FIGURE, "Sound level at 1 m, full speed: 37.6 dB"),
                        new Plate.Line(
                                Plate.Style.TEXT,
                                "95 % interval 36.8 dB to 38.4 dB; n = 5 runs; Harrow 40 mm fan; ambient 21.1 °C to"
                                        + " 22.4 °C; door shut, compressor off, microphone at the height of the table.")),
                List.of(
                        new Plate.Line(Plate.Style.CAVEAT, "Caveat: all runs were made on one specimen."),
                        new Plate.Line(
                                Plate.Style.SOURCE,
                                "https://results.example.org/relay/answers/a-study-with-a-name-that-does-not-end/"
                                        + "index.html#level.full-speed.sound-level-at-one-metre-from-the-grille")));
    }

    static LevelChart levels() {
        return new LevelChart(
                "Settled temperature rise above ambient (K)",
                List.of(
                        new LevelChart.Level(
                                "none",
                                dots(58.2, 58.9, 59.4, 59.3, 60.1),
                                Optional.of(Estimate.of(59.18, 58.3, 60.06)),
                                "59.2 ± 0.9 K",
                                ""),
                        new LevelChart.Level(
                                "spreader",
                                dots(31.0, 31.2, 31.1, 32.4, 30.4),
                                Optional.of(Estimate.of(31.22, 30.3, 32.14)),
                                "31.2 ± 0.9 K",
                                "ambient 2.6 K warmer"),
                        new LevelChart.Level(
                                "spreader and fan",
                                dots(18.7),
                                Optional.of(Estimate.alone(18.7)),
                                "18.7 K, single run",
                                "")),
                "one run",
                "mean with 95 % interval");
    }

    static LevelChart censored() {
        return new LevelChart(
                "Time until the clock first drops (min)",
                List.of(
                        new LevelChart.Level("none", dots(7.4, 8.1, 8.3, 9.6), Optional.empty(), "median 8.2 min", ""),
                        new LevelChart.Level(
                                "a spreader with a name so long that it has to be broken",
                                List.of(Dot.at(38.2), Dot.atLeast(45), Dot.atLeast(45), Dot.atLeast(45)),
                                Optional.empty(),
                                "at least 45 min in 3 of 4",
                                "three runs ended first")),
                "one run",
                "");
    }

    static ComparisonChart differences() {
        return new ComparisonChart(
                "Difference of settled rise, against no spreader (K)",
                false,
                List.of(
                        new ComparisonChart.Comparison(
                                "spreader",
                                Optional.of(Estimate.of(-27.96, -29.2, -26.7)),
                                Optional.of(new Interval(-2, 2)),
                                "−28.0 K",
                                "lower",
                                ""),
                        new ComparisonChart.Comparison(
                                "thin pad",
                                Optional.of(Estimate.of(-0.6, -1.7, 0.5)),
                                Optional.of(new Interval(-2, 2)),
                                "−0.6 K",
                                "same within 2 K",
                                ""),
                        new ComparisonChart.Comparison(
                                "thick pad",
                                Optional.of(Estimate.of(1.4, -3.1, 5.9)),
                                Optional.of(new Interval(-2, 2)),
                                "1.4 K",
                                "difference not shown",
                                "three runs only"),
                        new ComparisonChart.Comparison(
                                "spreader and fan",
                                Optional.empty(),
                                Optional.empty(),
                                "two things were changed at once",
                                "not comparable",
                                "")),
                new ComparisonChart.Sides("cooler", "warmer"),
                "difference of means with 95 % interval",
                "counts as the same");
    }

    static ComparisonChart ratios() {
        return new ComparisonChart(
                "Energy for an hour of programme, Quillet 3 ÷ Quillet 2",
                true,
                List.of(
                        new ComparisonChart.Comparison(
                                "light load",
                                Optional.of(Estimate.of(0.5, 0.46, 0.54)),
                                Optional.empty(),
                                "0.50",
                                "less",
                                ""),
                        new ComparisonChart.Comparison(
                                "full load",
                                Optional.of(Estimate.of(2.0, 1.84, 2.17)),
                                Optional.empty(),
                                "2.00",
                                "more",
                                ""),
                        new ComparisonChart.Comparison(
                                "long cable",
                                Optional.of(Estimate.of(1.004, 0.99, 1.02)),
                                Optional.of(new Interval(0.97, 1 / 0.97)),
                                "1.004",
                                "same within 3 %",
                                "")),
                new ComparisonChart.Sides("less with Quillet 3", "more"),
                "ratio of means with 95 % interval",
                "counts as the same");
    }

    static LogChart log() {
        List<LogChart.Line> temperature = List.of(
                new LogChart.Line("none-1", warming(59, 380, 1), false),
                new LogChart.Line("spreader-1", warming(31, 620, 2), false),
                new LogChart.Line("ambient", warming(0.8, 900, 3), true));
        List<LogChart.Line> power = List.of(
                new LogChart.Line("none-1", saw(4.2, 0.3, 4), false),
                new LogChart.Line("spreader-1", saw(4.6, 0.3, 5), false));
        return new LogChart(
                "time from start",
                0,
                2700,
                List.of(
                        new LogChart.Panel(
                                "Temperature (°C)", "t", temperature, List.of(new LogChart.Limit(85, "limit 85 °C"))),
                        new LogChart.Panel("Power (W)", "p", power, List.of())),
                List.of(new LogChart.Span(520, 700), new LogChart.Span(1500, 1503)),
                "none-1 throttled");
    }

    static LogChart multiples() {
        List<LogChart.Panel> panels = new ArrayList<>();
        for (int i = 1; i <= 4; i++) {
            panels.add(new LogChart.Panel(
                    "none-" + i + ", temperature (°C)",
                    "t",
                    List.of(
                            new LogChart.Line("", warming(54 + 2 * i, 300 + 40 * i, 10 + i), false),
                            new LogChart.Line("ambient", warming(0.8, 900, 20 + i), true)),
                    List.of()));
        }
        return new LogChart("time from start", 0, 2700, panels, List.of(), "");
    }

    static TrendChart trend() {
        List<TrendChart.Point> points = new ArrayList<>();
        List<TrendChart.FitPoint> fit = new ArrayList<>();
        for (int clock = 1200; clock <= 1800; clock += 200) {
            for (int run = 0; run < 3; run++) {
                points.add(new TrendChart.Point(clock, 22 + (clock - 1200) * 0.009 + noise(clock + run) * 0.5));
            }
        }
        for (int clock = 1200; clock <= 1800; clock += 25) {
            double y = 22.1 + (clock - 1200) * 0.009;
            double half = 0.25 + 0.25 * Math.abs(clock - 1500) / 300.0;
            fit.add(new TrendChart.FitPoint(clock, y, Optional.of(new Interval(y - half, y + half))));
        }
        return new TrendChart(
                "Clock (MHz)",
                "Frame rate (frames per second)",
                points,
                fit,
                Optional.of(22.1 / 1200),
                new TrendChart.Means("one run", "fitted line", "95 % band", "in proportion to the clock"));
    }

    static SurvivalChart survival() {
        return new SurvivalChart(
                "Runs not yet throttled",
                "time from start",
                2700,
                List.of(
                        new SurvivalChart.Curve(
                                "none",
                                List.of(
                                        new SurvivalChart.Step(444, 0.8),
                                        new SurvivalChart.Step(486, 0.6),
                                        new SurvivalChart.Step(498, 0.4),
                                        new SurvivalChart.Step(576, 0.2),
                                        new SurvivalChart.Step(610, 0)),
                                List.of(),
                                610),
                        new SurvivalChart.Curve(
                                "spreader",
                                List.of(new SurvivalChart.Step(2292, 0.75)),
                                List.of(1800.0, 2700.0, 2700.0, 2700.0),
                                2700),
                        new SurvivalChart.Curve("spreader and fan", List.of(), List.of(2700.0, 2700.0, 2700.0), 2700)),
                "run ended before it happened");
    }

    static ScaleChart scale() {
        return new ScaleChart(
                "Heard in the studio",
                List.of("silent", "faint", "clear", "loud"),
                List.of(
                        new ScaleChart.Level("fan off", List.of(8, 0, 0, 0), ""),
                        new ScaleChart.Level("fan at half speed", List.of(5, 2, 1, 0), ""),
                        new ScaleChart.Level("fan at full speed", List.of(0, 1, 3, 4), "listeners knew the setting")),
                "one listener");
    }

    static SoundChart sound() {
        return new SoundChart(
                "Sound pressure level at 1 m (dB)",
                List.of(
                        new SoundChart.Level(
                                "fan off",
                                List.of(Dot.atMost(24.1), Dot.atMost(24.3), Dot.atMost(23.9)),
                                Optional.empty(),
                                Optional.of(24.6),
                                "at most 24.3 dB",
                                ""),
                        new SoundChart.Level(
                                "half speed",
                                dots(27.9, 28.1, 28.4),
                                Optional.of(Estimate.of(28.14, 27.4, 28.9)),
                                Optional.of(24.6),
                                "28.1 ± 0.8 dB",
                                "within 6 dB of the background"),
                        new SoundChart.Level(
                                "full speed",
                                dots(36.2, 36.6, 36.4),
                                Optional.of(Estimate.of(36.4, 35.9, 36.9)),
                                Optional.of(24.6),
                                "36.4 ± 0.5 dB",
                                "")),
                "one run",
                "energetic mean with 95 % interval",
                "at or below the background");
    }

    static ProportionChart proportions() {
        // Exact intervals of Clopper and Pearson, from memory of common tables; here they only have to be drawn.
        return new ProportionChart(
                "Specimens that hold the clock (%)",
                List.of(
                        new ProportionChart.Group("1800 MHz", 8, 8, new Interval(0.631, 1), "8 of 8", ""),
                        new ProportionChart.Group("1950 MHz", 7, 8, new Interval(0.473, 0.997), "7 of 8", ""),
                        new ProportionChart.Group(
                                "2100 MHz", 0, 3, new Interval(0, 0.708), "0 of 3", "three specimens")),
                "share with exact 95 % interval");
    }

    static List<Dot> dots(double... values) {
        List<Dot> dots = new ArrayList<>();
        for (double value : values) {
            dots.add(Dot.at(value));
        }
        return dots;
    }

    /** An exponential approach with noise and an interruption, one sample a second. */
    static Trace warming(double riseK, double timeConstantS, int seed) {
        Thinner thinner = new Thinner(Thinner.FOR_CHART);
        for (int s = 0; s <= 2700; s++) {
            double value = 21.4 + riseK * (1 - StrictMath.exp(-s / timeConstantS)) + 0.3 * noise(s * 31 + seed);
            thinner.add(s, s >= 1900 && s < 2000 && seed == 1 ? Double.NaN : value);
        }
        return thinner.trace();
    }

    private static Trace saw(double level, double swing, int seed) {
        Thinner thinner = new Thinner(Thinner.FOR_CHART);
        for (int s = 0; s <= 2700; s++) {
            thinner.add(s, level + swing * noise(s * 17 + seed));
        }
        return thinner.trace();
    }

    /** A fixed sequence between -1 and 1. */
    private static double noise(int n) {
        long mixed = (n + 1) * 0x9E3779B97F4A7C15L;
        mixed = (mixed ^ (mixed >>> 29)) * 0xBF58476D1CE4E5B9L;
        return ((mixed >>> 33) % 20_001) / 10_000.0 - 1;
    }
}
