package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.evenhand.chart.Dot;
import org.evenhand.chart.Estimate;
import org.evenhand.chart.Figure;
import org.evenhand.chart.LevelChart;
import org.evenhand.chart.ScaleChart;
import org.evenhand.chart.SoundChart;
import org.evenhand.compare.Counts;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Reading;
import org.evenhand.page.words.Counting;
import org.evenhand.page.words.LevelFigures;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;
import org.evenhand.words.Judgement;
import org.evenhand.words.Words;

/** One measurand by level: numbers as dots with their mean, judgements as counts, sound over its background. */
final class LevelCharts {

    private static final String BACKGROUND = "background";

    private final Answer answer;
    private final MeasurandId id;
    private final Measurand measurand;
    private final List<LevelSummary> levels;

    LevelCharts(Answer answer, MeasurandId id, List<LevelSummary> levels) {
        this.answer = answer;
        this.id = id;
        this.measurand = answer.names().measurand(id);
        this.levels = levels;
    }

    Figure figure() {
        if (!measurand.isNumeric()) {
            return scale();
        }
        boolean sound = measurand.unit().kind() == UnitKind.LEVEL
                && answer.counting().stream()
                        .anyMatch(r -> r.run().circumstances().containsKey(BACKGROUND));
        return sound ? sound() : numbers();
    }

    /** How to read it; empty where the key of the chart says all. */
    String source() {
        if (!measurand.isNumeric()) {
            return answer.words().say("chart.dot-judgement");
        }
        boolean specimens = levels.stream()
                .anyMatch(s -> s.counts() == Counts.SPECIMENS && s.interval().isPresent());
        return specimens ? answer.words().say("chart.mean-of-specimens") : "";
    }

    /** Each level with its figure, for those who cannot see the drawing. */
    String description() {
        return levels.stream().map(this::described).collect(Collectors.joining("; ")) + ".";
    }

    private String described(LevelSummary s) {
        Words words = answer.words();
        String level = answer.names().level(s.level());
        String label = LevelFigures.label(s, words);
        return s.n() == 0
                ? words.say("chart.level-figure", level, label)
                : words.say(
                        "chart.level-figure-n",
                        level,
                        label,
                        Counting.n(s.n(), s.counts(), s.runs().size(), words));
    }

    private LevelChart numbers() {
        List<LevelChart.Level> rows = levels.stream()
                .map(s -> new LevelChart.Level(
                        answer.names().level(s.level()),
                        dots(s),
                        estimate(s),
                        LevelFigures.label(s, answer.words()),
                        answer.worst(answer.caveats(s))))
                .toList();
        return new LevelChart(axis(), rows, dot(), estimateMeans());
    }

    private SoundChart sound() {
        List<SoundChart.Level> rows = levels.stream()
                .map(s -> new SoundChart.Level(
                        answer.names().level(s.level()),
                        dots(s),
                        estimate(s),
                        background(s),
                        LevelFigures.label(s, answer.words()),
                        answer.worst(answer.caveats(s))))
                .toList();
        return new SoundChart(
                axis(), rows, dot(), estimateMeans(), answer.words().say("chart.below-background"));
    }

    private ScaleChart scale() {
        List<Reading> places = new ArrayList<>(levels.get(0).words().keySet());
        List<ScaleChart.Level> rows = levels.stream()
                .map(s -> new ScaleChart.Level(
                        answer.names().level(s.level()),
                        places.stream().map(p -> s.words().getOrDefault(p, 0)).toList(),
                        answer.worst(answer.caveats(s))))
                .toList();
        return new ScaleChart(
                measurand.title(),
                places.stream().map(p -> Judgement.of(p, answer.words())).toList(),
                rows,
                dot());
    }

    private String axis() {
        return measurand.title()
                + (measurand.unit().isOne() ? "" : " (" + measurand.unit().symbol() + ")");
    }

    private String estimateMeans() {
        return levels.stream().anyMatch(s -> s.interval().isPresent())
                ? answer.words().say("chart.mean-interval")
                : "";
    }

    private String dot() {
        return answer.words().say("chart.one-run");
    }

    private List<Dot> dots(LevelSummary summary) {
        List<Dot> dots = new ArrayList<>();
        for (LevelRun run : answer.behind(summary)) {
            RunValue value = run.value(id).orElseThrow();
            if (value instanceof RunValue.AtLeast atLeast) {
                dots.add(Dot.atLeast(atLeast.bound()));
            } else if (value instanceof RunValue.Known known) {
                dots.add(Dot.at(known.value()));
            }
        }
        return dots;
    }

    private static Optional<Estimate> estimate(LevelSummary summary) {
        return summary.interval()
                .map(i -> Estimate.of(summary.mean().orElseThrow(), i.low(), i.high()))
                .or(() -> summary.mean().isPresent()
                        ? Optional.of(Estimate.alone(summary.mean().getAsDouble()))
                        : Optional.empty());
    }

    /** Mean of what was noted for the runs of a level; nothing if none was, or one of them cannot be read. */
    private Optional<Double> background(LevelSummary summary) {
        List<OptionalDouble> noted = answer.behind(summary).stream()
                .map(r -> r.run().circumstances().get(BACKGROUND))
                .map(b -> decibels(b, measurand.unit()))
                .toList();
        return noted.isEmpty() || noted.stream().anyMatch(OptionalDouble::isEmpty)
                ? Optional.empty()
                : Optional.of(noted.stream()
                        .mapToDouble(OptionalDouble::getAsDouble)
                        .average()
                        .orElseThrow());
    }

    private static OptionalDouble decibels(String written, Unit unit) {
        try {
            return written == null
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Quantity.parse(written, unit).in(unit));
        } catch (MisreadException e) {
            return OptionalDouble.empty();
        }
    }
}
