package org.evenhand.prose;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.compare.Verdict;
import org.evenhand.model.Better;
import org.evenhand.model.MeasurandId;
import org.evenhand.prose.Evidence.Count;
import org.evenhand.prose.Evidence.Kind;
import org.evenhand.quantity.Unit;

/** Figures that test sentences speak of, stated here once so that a reader can check the sentences by hand. */
final class FixedEvidence implements EvidenceResolver {

    private final Map<String, Evidence> byAddress = new LinkedHashMap<>();
    private final String language;

    FixedEvidence(String language) {
        this.language = language;
        contrast("energy", Kind.RATIO, "Energy for the hour", "energy", Better.LOWER, "Wh", 0.794, 0.781, 0.807, "1")
                .between(
                        "quillet-3",
                        "Quillet 3 encoder",
                        "quillet-2",
                        "Quillet 2 encoder",
                        Verdict.DIFFERS,
                        true,
                        "5 %");
        contrast(
                        "rise",
                        Kind.DIFFERENCE,
                        "Settled temperature rise",
                        "settled rise",
                        Better.LOWER,
                        "K",
                        -30.6,
                        -31.8,
                        -29.4,
                        "K")
                .between("spreader", "", "none", "", Verdict.DIFFERS, true, "");
        contrast(
                        "speed",
                        Kind.RATIO,
                        "Frames encoded in a second",
                        "frame rate",
                        Better.HIGHER,
                        "frames/s",
                        1.094,
                        1.088,
                        1.1,
                        "1")
                .between("raised clock", "", "rated clock", "", Verdict.DIFFERS, true, "");
        contrast(
                        "boost",
                        Kind.RATIO,
                        "Frames encoded in a second",
                        "frame rate",
                        Better.HIGHER,
                        "frames/s",
                        2.02,
                        1.97,
                        2.07,
                        "1")
                .between("two encoders", "", "one encoder", "", Verdict.DIFFERS, true, "");
        contrast(
                        "cable",
                        Kind.RATIO,
                        "Frames encoded in a second",
                        "frame rate",
                        Better.HIGHER,
                        "frames/s",
                        0.998,
                        0.993,
                        1.003,
                        "1")
                .between("long cable", "", "short cable", "", Verdict.SAME_WITHIN_MARGIN, false, "2 %");
        contrast("delay", Kind.DIFFERENCE, "Delay to the stream", "delay", Better.LOWER, "ms", -6, -20, 8, "ms")
                .between(
                        "quillet-3",
                        "Quillet 3 encoder",
                        "quillet-2",
                        "Quillet 2 encoder",
                        Verdict.NOT_SHOWN,
                        false,
                        "10 ms");
        contrast("start", Kind.DIFFERENCE, "Time to start", "start", Better.LOWER, "s", -8.4, -9.6, -7.2, "s")
                .between("quillet-3", "Quillet 3 encoder", "quillet-2", "Quillet 2 encoder", Verdict.DIFFERS, true, "");
        contrast(
                        "noise",
                        Kind.DIFFERENCE,
                        "Sound level beside the fan",
                        "level",
                        Better.LOWER,
                        "dB(A)",
                        9.7,
                        8.9,
                        10.5,
                        "dB")
                .between("full", "", "half", "", Verdict.DIFFERS, true, "");
        contrast(
                        "share",
                        Kind.DIFFERENCE,
                        "Share below the clock",
                        "share",
                        Better.LOWER,
                        "%",
                        -62,
                        -64.1,
                        -59.9,
                        "percentage points")
                .between("spreader", "", "none", "", Verdict.DIFFERS, true, "");
        contrast("supply", Kind.RATIO, "Mean power", "mean power", Better.LOWER, "W", 0.9, 0.85, 0.95, "1")
                .between("new supply", "", "old supply", "", Verdict.NOT_COMPARABLE, false, "");
        byAddress.put("evidence:trend", trend());
        byAddress.put(
                "evidence:trend/exponent",
                part(
                        "evidence:trend",
                        new Figure(
                                OptionalDouble.of(0.861),
                                OptionalDouble.of(0.845),
                                OptionalDouble.of(0.877),
                                Unit.ONE)));
        byAddress.put("evidence:energy/low", part("evidence:energy", Figure.of(0.781, Unit.ONE)));
        byAddress.put(
                "evidence:holds", count(Kind.SHARE, "Holds the clock", "%", figure(0.9, 0.55498, 0.99747, "1"), 9, 10));
        byAddress.put(
                "evidence:failures",
                count(Kind.FAILURE_RATE, "Failures", "failures", Figure.atMost(0.0624, Unit.of("1/h")), 0, 0));
        byAddress.put("evidence:failures/chance", part("evidence:failures", Figure.of(0.021, Unit.of("%"))));
        byAddress.put("evidence:level/none/energy", level(Kind.LEVEL, "energy", figure(5210, 5180, 5240, "mWh"), ""));
        byAddress.put("evidence:level/quillet-2/energy", ofQuillet2(figure(4310, 4280, 4340, "mWh")));
        byAddress.put("evidence:level/none/onset", level(Kind.LEVEL, "onset", figure(12.4, 11.9, 12.9, "min"), ""));
        byAddress.put("evidence:level/none/dip", level(Kind.LEVEL, "dip", figure(41.3, 38.2, 44.4, "s"), ""));
        byAddress.put("evidence:level/none/hot", level(Kind.LEVEL, "hot", figure(84.6, 83.9, 85.3, "°C"), ""));
        byAddress.put("evidence:level/half/level", level(Kind.LEVEL, "level", figure(28.4, 27.8, 29, "dB(A)"), ""));
        byAddress.put(
                "evidence:level/half/heard",
                level(Kind.LEVEL, "heard", Figure.none(Unit.ONE), "silent in 5 of 6, faint in 1 of 6"));
        byAddress.put("evidence:level/one/power", level(Kind.LEVEL, "power", Figure.of(3.402, Unit.of("W")), ""));
        byAddress.put(
                "evidence:run/spreader-1/onset", level(Kind.RUN, "onset", Figure.atLeast(45, Unit.of("min")), ""));
        byAddress.put("evidence:run/none-1/frames", level(Kind.RUN, "frames", Figure.of(5140, Unit.of("frames")), ""));
        byAddress.put(
                "given:quillet-3/limits/temperature",
                level(Kind.GIVEN, "temperature", Figure.of(85, Unit.of("°C")), "85\u00a0°C"));
        byAddress.put(
                "given:quillet-3/limits/clock",
                level(Kind.GIVEN, "clock", Figure.of(1800, Unit.of("MHz")), "1800\u00a0MHz"));
    }

    @Override
    public Resolution resolve(String address) {
        Evidence evidence = byAddress.get(address);
        return evidence == null ? new Missing("nothing at " + address, "") : new Found(evidence);
    }

    @Override
    public String language() {
        return language;
    }

    @Override
    public List<String> levels() {
        return List.of(
                "none",
                "without",
                "spreader",
                "spreader and fan",
                "quillet-2",
                "quillet 2",
                "quillet-3",
                "quillet 3",
                "quillet-1",
                "quillet 1",
                "short cable",
                "long cable",
                "half",
                "full",
                "raised clock",
                "rated clock",
                "1800 MHz");
    }

    @Override
    public Names names() {
        return NAMES;
    }

    private static final Names NAMES = Names.of(List.of(
            "Quillet 2 encoder", "Quillet 3 encoder", "Quillet 2", "Quillet 3", "Harrow 80 fan", "Volta 500 W supply"));

    private record Draft(
            FixedEvidence all,
            String id,
            Kind kind,
            String title,
            String noun,
            Better better,
            Unit measured,
            Figure figure) {

        void between(
                String level,
                String levelName,
                String against,
                String againstName,
                Verdict verdict,
                boolean differs,
                String margin) {
            all.byAddress.put(
                    "evidence:" + id,
                    new Evidence(
                            new Target.OfComparison("x", id),
                            kind,
                            kind,
                            title,
                            noun,
                            better,
                            measured,
                            figure,
                            Optional.empty(),
                            Optional.of(verdict),
                            differs,
                            margin.isEmpty() ? Optional.empty() : Optional.of(margin.replace(' ', '\u00a0')),
                            Optional.of(side(level, against, levelName)),
                            Optional.of(side(against, level, againstName)),
                            "n = 3 and 3 specimens",
                            "",
                            Count.NONE));
        }

        private static Side side(String level, String other, String name) {
            return Side.of(level, Optional.of(other), name.isEmpty() ? Optional.empty() : Optional.of(name));
        }
    }

    private Draft contrast(
            String id,
            Kind kind,
            String title,
            String noun,
            Better better,
            String measured,
            double value,
            double low,
            double high,
            String unit) {
        return new Draft(this, id, kind, title, noun, better, Unit.of(measured), figure(value, low, high, unit));
    }

    private static Figure figure(double value, double low, double high, String unit) {
        return new Figure(OptionalDouble.of(value), OptionalDouble.of(low), OptionalDouble.of(high), Unit.of(unit));
    }

    private static Evidence trend() {
        return new Evidence(
                new Target.OfComparison("x", "trend"),
                Kind.TREND,
                Kind.TREND,
                "Frames encoded in a second",
                "frame rate",
                Better.HIGHER,
                Unit.of("frames/s"),
                new Figure(
                        OptionalDouble.of(0.000908),
                        OptionalDouble.of(0.000884),
                        OptionalDouble.of(0.000932),
                        FigureText.slopeUnit(Unit.of("frames/s"), Unit.of("MHz"))),
                Optional.of(figure(0.861, 0.845, 0.877, "1")),
                Optional.of(Verdict.DIFFERS),
                true,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "n = 12",
                "",
                Count.NONE);
    }

    private Evidence part(String of, Figure figure) {
        return byAddress.get(of).part(figure, "");
    }

    private static Evidence count(Kind kind, String title, String unit, Figure figure, int successes, int total) {
        return new Evidence(
                new Target.OfComparison("x", title),
                kind,
                kind,
                title,
                title,
                Better.HIGHER,
                Unit.of(unit),
                figure,
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "n = 10 specimens",
                "",
                new Count(successes, total));
    }

    private static Evidence ofQuillet2(Figure figure) {
        return new Evidence(
                new Target.OfLevel("x", "quillet-2", new MeasurandId("m", "energy")),
                Kind.LEVEL,
                Kind.LEVEL,
                "Energy for the hour",
                "energy",
                Better.LOWER,
                figure.unit(),
                figure,
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.of(Side.of("quillet-2", Optional.empty(), Optional.of("Quillet 2 encoder"))),
                Optional.empty(),
                "n = 3 specimens",
                "",
                Count.NONE);
    }

    private static Evidence level(Kind kind, String noun, Figure figure, String words) {
        return new Evidence(
                new Target.OfLevel("x", "none", new MeasurandId("m", noun)),
                kind,
                kind,
                noun,
                noun,
                Better.LOWER,
                figure.unit(),
                figure,
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "n = 6 runs",
                words,
                Count.NONE);
    }
}
