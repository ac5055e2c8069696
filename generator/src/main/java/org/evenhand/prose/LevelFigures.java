package org.evenhand.prose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.compare.Counts;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Item;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Reading;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Study;
import org.evenhand.prose.Evidence.Kind;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.Interval;
import org.evenhand.words.Judgement;
import org.evenhand.words.Words;

/** Turns level summaries and values of runs into what sentences say. */
final class LevelFigures {

    private LevelFigures() {}

    static Evidence of(ResultsFolder folder, Study study, LevelSummary summary) {
        FigureText text = FigureText.in(StudyResolver.language(folder));
        String words = summary.words().isEmpty() ? censored(summary, text) : counted(summary.words(), text.words());
        return evidence(
                folder,
                study,
                new Target.OfLevel(study.id(), summary.level(), summary.measurand()),
                Kind.LEVEL,
                summary.measurand(),
                Figure.of(summary.mean(), summary.interval(), summary.unit()),
                summary.level(),
                "n = "
                        + text.words()
                                .say(
                                        summary.counts() == Counts.SPECIMENS
                                                ? "figure.count-specimen"
                                                : "figure.count-run",
                                        summary.n()),
                words);
    }

    static Evidence of(ResultsFolder folder, Study study, LevelRun run, MeasurandId id, RunValue value) {
        Target target = new Target.OfRun(run.run().study(), run.run().id(), id);
        Measurand measurand = measurand(folder, id);
        Words language = FigureText.in(StudyResolver.language(folder)).words();
        String n = language.say("sentence.one-run");
        if (value instanceof RunValue.Known known) {
            double u = known.standardUncertainty();
            Optional<Interval> interval = u > 0
                    ? Optional.of(new Estimate(known.value(), 0, 1, u).interval(LevelSummary.CONFIDENCE))
                    : Optional.empty();
            Figure figure = Figure.of(OptionalDouble.of(known.value()), interval, known.unit());
            return evidence(folder, study, target, Kind.RUN, id, figure, run.level(), n, "");
        }
        if (value instanceof RunValue.AtLeast atLeast) {
            Figure figure = Figure.atLeast(atLeast.bound(), atLeast.unit());
            return evidence(folder, study, target, Kind.RUN, id, figure, run.level(), n, "");
        }
        String words = value instanceof RunValue.Noted noted
                ? Judgement.of(noted.reading(), language)
                : language.say("figure.no-value");
        return evidence(folder, study, target, Kind.RUN, id, Figure.none(measurand.unit()), run.level(), n, words);
    }

    private static Evidence evidence(
            ResultsFolder folder,
            Study study,
            Target target,
            Kind kind,
            MeasurandId id,
            Figure figure,
            String level,
            String n,
            String words) {
        Measurand measurand = measurand(folder, id);
        Optional<String> name = study.factor().equals("item")
                ? Optional.ofNullable(folder.items().get(level)).map(Item::name)
                : Optional.empty();
        return new Evidence(
                target,
                kind,
                kind,
                measurand.title(),
                StudyResolver.noun(id),
                measurand.better(),
                measurand.unit(),
                figure,
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.of(Side.of(level, Optional.empty(), name)),
                Optional.empty(),
                n,
                words,
                Evidence.Count.NONE);
    }

    private static Measurand measurand(ResultsFolder folder, MeasurandId id) {
        return folder.methods().get(id.method()).measurands().get(id.measurand());
    }

    /** Values that are only known to be larger are never averaged, so that there is no number to write. */
    private static String censored(LevelSummary summary, FigureText text) {
        if (summary.n() == 0) {
            return text.words().say("figure.no-value");
        }
        if (summary.censored() == 0) {
            return "";
        }
        double least =
                summary.values().stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        String bound = text.value(Figure.atLeast(least, summary.unit()), false);
        return summary.censored() == summary.n()
                ? text.words().say("sentence.in-each", bound, summary.n())
                : text.words()
                        .say(
                                "sentence.at-least",
                                text.value(Figure.of(least, summary.unit()), false),
                                summary.censored(),
                                summary.n());
    }

    /** "silent in 5 of 6 runs and faint in 1 of 6". */
    private static String counted(Map<Reading, Integer> words, Words language) {
        int total = words.values().stream().mapToInt(Integer::intValue).sum();
        List<String> given = words.entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .map(e -> language.say("sentence.word", Judgement.of(e.getKey(), language), e.getValue(), total))
                .toList();
        return given.isEmpty() ? language.say("figure.no-value") : String.join(", ", given);
    }
}
