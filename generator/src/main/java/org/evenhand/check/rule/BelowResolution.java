package org.evenhand.check.rule;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.Verdict;
import org.evenhand.model.Comparison;
import org.evenhand.model.Instrument;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.quantity.Dimension;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** A difference of less than two steps of the instrument may be none. */
public final class BelowResolution implements Rule {

    /** Room for decimals that binary numbers cannot hold. */
    private static final double ROUNDING = 1e-9;

    private static final RuleFacts FACTS =
            RuleFacts.of("below-resolution", Group.POWER, Severity.CAVEAT).withLimit("2", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (StudyView.Sides sides : study.sides()) {
            if (sides.result() instanceof ComparisonResult.Contrasted contrasted
                    && contrasted
                            .verdict()
                            .filter(Verdict.SAME_WITHIN_MARGIN::equals)
                            .isEmpty()
                    && showsSteps(sides.measurand())) {
                check(study, sides, report);
            }
        }
    }

    /** Whether a step of the instrument is a step of the value; integrals and times are made of many. */
    private static boolean showsSteps(Measurand measurand) {
        return measurand.reduction() instanceof Reduction.Reading
                || measurand.reduction() instanceof Reduction.OfColumn of
                        && !(of.statistic() instanceof Statistic.Integral)
                        && !(of.statistic() instanceof Statistic.Increase)
                        && !(of.statistic() instanceof Statistic.Asymptote);
    }

    private static void check(StudyView study, StudyView.Sides sides, Report report) {
        Method method = study.method(sides);
        Optional<Parts.Source> source = Parts.source(method, sides.measurand());
        Unit unit = sides.measurand().unit();
        Comparison plan = sides.result().plan();
        OptionalDouble level = mean(sides, plan.level().orElseThrow());
        OptionalDouble against = mean(sides, plan.against().orElseThrow());
        if (source.isEmpty() || level.isEmpty() || against.isEmpty()) {
            return;
        }
        Instrument coarsest = null;
        double step = 0;
        for (LevelRun run : sides.runs()) {
            Optional<Instrument> instrument =
                    study.instrument(run.run(), source.get().name());
            Optional<Quantity> resolution = instrument.flatMap(Instrument::resolution);
            if (resolution.isEmpty()) {
                notCheckable(study, run, source.get(), instrument, report);
            } else if (resolution.get().unit().dimension().equals(unit.dimension())
                    && resolution.get().differenceIn(unit) > step) {
                coarsest = instrument.get();
                step = resolution.get().differenceIn(unit);
            }
        }
        double difference = Math.abs(level.getAsDouble() - against.getAsDouble());
        Report.Applied limit = report.limit(method, Unit.ONE);
        if (coarsest != null && difference < limit.value() * step * (1 - ROUNDING)) {
            report.at(study.place(sides), study.subject(sides))
                    .against(limit.limit())
                    .meaning(report.say("rules-power.below-resolution.meaning"))
                    .found(
                            report.say(
                                    "rules-power.below-resolution.found",
                                    difference,
                                    unit.ofDifference().symbol(),
                                    limit.value(),
                                    coarsest.id(),
                                    coarsest.resolution().orElseThrow()),
                            report.say("rules-power.below-resolution.remedy"));
        }
    }

    private static void notCheckable(
            StudyView study, LevelRun run, Parts.Source source, Optional<Instrument> instrument, Report report) {
        if (source.unit().dimension().equals(Dimension.ONE)) {
            return; // counts have steps of one, and shares and words have none
        }
        if (instrument.isPresent()) {
            report.at(
                            instrument.get().places().of("instrument"),
                            Subject.study(study.study().id()))
                    .notCheckable("resolution", report.say("rules-power.below-resolution.give"));
        } else {
            report.at(run.run().places().of("instruments"), study.subject(run))
                    .notCheckable(
                            "instruments/" + source.name(),
                            report.say("rules-power.below-resolution.give-2", source.name()));
        }
    }

    private static OptionalDouble mean(StudyView.Sides sides, String level) {
        return sides.at(level).stream()
                .map(r ->
                        r.value(sides.result().plan().measurand().orElseThrow()).orElseThrow())
                .filter(v -> v.number().isPresent())
                .mapToDouble(v -> v.number().getAsDouble())
                .average();
    }
}
