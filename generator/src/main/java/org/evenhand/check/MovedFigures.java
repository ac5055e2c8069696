package org.evenhand.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.compare.Verdict;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Study;
import org.evenhand.prose.Target;
import org.evenhand.quantity.Figures;
import org.evenhand.read.FormerAnswer;
import org.evenhand.read.FormerAnswer.FormerFigure;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.Interval;
import org.evenhand.statistics.LineFit;
import org.evenhand.words.Words;

/** Finds the figures that read otherwise than a former publication had them. */
public final class MovedFigures {

    private static final double CONFIDENCE = LevelSummary.CONFIDENCE;

    private MovedFigures() {}

    /**
     * A figure that moved.
     *
     * @param address within the study: {@code level/none/energy}, or the id of a comparison
     * @param before as it was written
     * @param now as it is written
     */
    public record Moved(String address, String before, String now) {

        @Override
        public String toString() {
            return address + ": " + before + ", now " + now;
        }
    }

    /**
     * Figures that read otherwise, in the order of the evidence; then those that are gone.
     *
     * @param verdict of a comparison; one that is refused shows no figure any more
     * @param words in which they are written
     */
    static List<Moved> of(
            StudyEvidence evidence,
            FormerAnswer former,
            Function<ComparisonResult, Optional<Verdict>> verdict,
            Words words) {
        List<Moved> moved = new ArrayList<>();
        Map<String, Written> present = figures(evidence, verdict);
        present.forEach((address, now) -> {
            FormerFigure before = former.figures().get(address);
            // A refused comparison published no figure.
            if (before != null && !before.verdict().equals(Verdict.NOT_COMPARABLE.word())) {
                String old = new Written(
                                before.value(),
                                interval(before.low(), before.high()),
                                before.unit(),
                                before.verdict(),
                                now.ends())
                        .in(words);
                if (!old.equals(now.in(words))) {
                    moved.add(new Moved(address, old, now.in(words)));
                }
            }
        });
        former.figures().forEach((address, before) -> {
            if (!present.containsKey(address) && before.value().isPresent()) {
                Written old = new Written(
                        before.value(), interval(before.low(), before.high()), before.unit(), before.verdict(), false);
                moved.add(new Moved(address, old.in(words), words.say("moved.gone")));
            }
        });
        return moved;
    }

    private static Map<String, Written> figures(
            StudyEvidence evidence, Function<ComparisonResult, Optional<Verdict>> verdicts) {
        Map<String, Written> figures = new LinkedHashMap<>();
        for (LevelSummary s : evidence.summaries()) {
            String address = "level/" + s.level() + "/" + name(evidence.study(), s.measurand());
            figures.put(address, new Written(s.mean(), s.interval(), s.unit().symbol(), "", false));
        }
        for (ComparisonResult result : evidence.comparisons()) {
            add(result, verdicts.apply(result), figures);
        }
        return figures;
    }

    private static void add(ComparisonResult result, Optional<Verdict> stands, Map<String, Written> figures) {
        String id = result.plan().id();
        String unit = result.unit().symbol();
        String verdict = stands.map(Verdict::word).orElse("");
        if (result instanceof ComparisonResult.Contrasted r) {
            figures.put(id, new Written(r.estimate(), r.interval(), unit, verdict, false));
        } else if (result instanceof ComparisonResult.GeometricMean r) {
            figures.put(id, new Written(r.estimate(), r.interval(), unit, verdict, false));
        } else if (result instanceof ComparisonResult.Share r) {
            figures.put(id, new Written(r.estimate(), r.interval(), unit, verdict, true));
        } else if (result instanceof ComparisonResult.FailureRate r) {
            figures.put(id, new Written(r.estimate(), r.interval(), unit, verdict, true));
        } else if (result instanceof ComparisonResult.Trend r) {
            figures.put(id + "/slope", part(r.line().map(LineFit::slope), verdict));
            figures.put(id + "/exponent", part(r.exponent(), verdict));
        } else if (result instanceof ComparisonResult.Survival r) {
            for (ComparisonResult.Curve c : r.levels()) {
                Optional<Interval> interval =
                        interval(c.curve().medianLow(CONFIDENCE), c.curve().medianHigh(CONFIDENCE));
                figures.put(
                        id + "/median/" + c.level(), new Written(c.curve().median(), interval, unit, verdict, false));
            }
        }
    }

    private static Written part(Optional<Estimate> estimate, String verdict) {
        OptionalDouble value =
                estimate.isPresent() ? OptionalDouble.of(estimate.get().value()) : OptionalDouble.empty();
        return new Written(value, estimate.map(e -> e.interval(CONFIDENCE)), "", verdict, false);
    }

    private static Optional<Interval> interval(OptionalDouble low, OptionalDouble high) {
        return low.isPresent() && high.isPresent()
                ? Optional.of(new Interval(low.getAsDouble(), high.getAsDouble()))
                : Optional.empty();
    }

    /**
     * A figure with what decides how it is written.
     *
     * @param ends whether the interval belongs to what is quoted: of counts it does, since the estimate alone may stay at
     *     zero while the bound moves
     */
    private record Written(
            OptionalDouble value, Optional<Interval> interval, String unit, String verdict, boolean ends) {

        String in(Words words) {
            if (verdict.equals(Verdict.NOT_COMPARABLE.word())) {
                return words.say("table.verdict-" + verdict);
            }
            double u = interval.map(Interval::halfWidth).orElse(0.0);
            String number = value.isEmpty() ? words.say("moved.none") : Figures.value(value.getAsDouble(), u);
            String range = ends && interval.isPresent()
                    ? words.say(
                            "moved.range",
                            number,
                            Figures.value(interval.get().low(), u),
                            Figures.value(interval.get().high(), u))
                    : number;
            String of = unit.equals("1") || unit.isEmpty() || value.isEmpty() ? "" : " " + unit;
            return verdict.isEmpty()
                    ? range + of
                    : words.say("moved.verdict", range + of, words.say("table.verdict-" + verdict));
        }
    }

    /** Whether a link to a figure leads to one that moved, or to what it is part of. */
    static boolean concerns(Moved moved, Target target, Study study) {
        if (target instanceof Target.OfComparison t) {
            return moved.address().equals(t.comparison()) || moved.address().startsWith(t.comparison() + "/");
        }
        return target instanceof Target.OfLevel t
                && moved.address().equals("level/" + t.level() + "/" + name(study, t.measurand()));
    }

    private static String name(Study study, MeasurandId id) {
        return study.methods().size() > 1 ? id.toString() : id.measurand();
    }
}
