package org.evenhand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.compare.Verdict;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Study;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.Unit;
import org.evenhand.read.FormerAnswer;
import org.evenhand.read.FormerAnswer.FormerFigure;
import org.evenhand.statistics.Interval;

/** Finds the figures that read otherwise than a former publication had them. */
public final class MovedFigures {

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

    /** Figures that both publications have and that differ as written, in the order of the evidence. */
    static List<Moved> of(StudyEvidence evidence, FormerAnswer former) {
        List<Moved> moved = new ArrayList<>();
        for (LevelSummary summary : evidence.summaries()) {
            String address = "level/" + summary.level() + "/" + name(evidence.study(), summary.measurand());
            FormerFigure figure = former.figures().get(address);
            if (figure != null) {
                compare(address, figure, summary.mean(), summary.interval(), summary.unit(), "", moved);
            }
        }
        for (ComparisonResult result : evidence.comparisons()) {
            FormerFigure figure = former.figures().get(result.plan().id());
            if (figure != null && result instanceof ComparisonResult.Contrasted c) {
                String verdict = c.verdict().map(Verdict::word).orElse("");
                compare(c.plan().id(), figure, c.estimate(), c.interval(), c.unit(), verdict, moved);
            }
        }
        return moved;
    }

    private static void compare(
            String address,
            FormerFigure before,
            OptionalDouble value,
            Optional<Interval> interval,
            Unit unit,
            String verdict,
            List<Moved> moved) {
        if (before.verdict().equals("not-comparable")) {
            return; // a refused comparison publishes no figure
        }
        Optional<Interval> formerInterval =
                before.low().isPresent() && before.high().isPresent()
                        ? Optional.of(new Interval(
                                before.low().getAsDouble(), before.high().getAsDouble()))
                        : Optional.empty();
        String old = written(before.value(), formerInterval, before.unit(), before.verdict());
        String now = written(value, interval, unit.symbol(), verdict);
        if (!old.equals(now)) {
            moved.add(new Moved(address, old, now));
        }
    }

    private static String written(OptionalDouble value, Optional<Interval> interval, String unit, String verdict) {
        String number = value.isEmpty()
                ? "none"
                : Figures.value(
                                value.getAsDouble(),
                                interval.map(Interval::halfWidth).orElse(0.0))
                        + (unit.equals("1") || unit.isEmpty() ? "" : " " + unit);
        return verdict.isEmpty() ? number : number + " (" + verdict.toLowerCase(Locale.ROOT) + ")";
    }

    private static String name(Study study, MeasurandId id) {
        return study.methods().size() > 1 ? id.toString() : id.measurand();
    }
}
