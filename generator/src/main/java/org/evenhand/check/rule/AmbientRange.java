package org.evenhand.check.rule;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Limit;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Dimension;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/**
 * A method holds within its range of ambient temperatures. Where it states none: 23 ± 5 °C for power after IEC 62301, 23 ±
 * 2 °C for the sound of fans that answer to temperature after ISO 7779.
 */
public final class AmbientRange implements Rule {

    private static final double MIDDLE_CELSIUS = 23;
    private static final Dimension POWER = Unit.of("W").dimension();
    private static final Dimension ENERGY = Unit.of("J").dimension();

    private static final RuleFacts.DefaultLimit FOR_SOUND = new RuleFacts.DefaultLimit("2 K", "iso-7779");

    private static final RuleFacts FACTS =
            RuleFacts.of("ambient-range", Group.SURROUNDINGS, Severity.CAVEAT).withLimit("5 K", "iec-62301-ambient");

    /** The lowest and the highest allowed, in °C. */
    private record Allowed(double lowest, double highest, Limit limit) {}

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            Optional<Allowed> allowed = allowed(study, run, report);
            Optional<Course> course = Ambient.course(study, run);
            OptionalDouble stated = Ambient.stated(run);
            if (allowed.isEmpty()) {
                continue;
            }
            if (course.isPresent()) {
                check(
                        study,
                        run,
                        allowed.get(),
                        List.of(course.get().lowest(), course.get().highest()),
                        "log",
                        report);
            } else if (stated.isPresent()) {
                check(study, run, allowed.get(), List.of(stated.getAsDouble()), "ambient", report);
            } else {
                report.at(run.run().places().of("run"), study.subject(run))
                        .notCheckable("ambient", report.say("rules-surroundings.ambient-range.give"));
            }
        }
    }

    private static void check(
            StudyView study, LevelRun run, Allowed allowed, List<Double> extremes, String field, Report report) {
        for (double ambient : extremes) {
            if (ambient >= allowed.lowest() && ambient <= allowed.highest()) {
                continue;
            }
            report.at(run.run().places().of(field), study.subject(run))
                    .against(allowed.limit())
                    .meaning(report.say("rules-surroundings.ambient-range.meaning"))
                    .found(
                            report.say(
                                    "rules-surroundings.ambient-range.found",
                                    ambient,
                                    run.run().id()),
                            report.say("rules-surroundings.ambient-range.remedy"));
            return;
        }
    }

    private static Optional<Allowed> allowed(StudyView study, LevelRun run, Report report) {
        Method method = study.method(run.run());
        if (!method.needsAmbient()) {
            return Optional.empty();
        }
        if (method.ambientRange().isPresent()) {
            Method.AmbientRange range = method.ambientRange().get();
            return Optional.of(new Allowed(
                    range.lowest().in(Ambient.CELSIUS),
                    range.highest().in(Ambient.CELSIUS),
                    new Limit(
                            report.say(
                                    "figure.range",
                                    range.lowest().toString(),
                                    range.highest().toString()),
                            report.ofMethod(method))));
        }
        List<Measurand> shown = Shown.of(study, run);
        boolean sound = shown.stream().anyMatch(m -> m.unit().kind() == UnitKind.LEVEL)
                && method.cooling().filter(Method.Cooling.CONTROLLED::equals).isPresent();
        boolean power =
                shown.stream().map(m -> m.unit().dimension()).anyMatch(d -> d.equals(POWER) || d.equals(ENERGY));
        Optional<Report.Applied> applied = sound
                ? Optional.of(report.limit(method, Heat.KELVIN, FOR_SOUND))
                : power ? Optional.of(report.limit(method, Heat.KELVIN)) : report.stated(method, Heat.KELVIN);
        return applied.map(a -> new Allowed(
                MIDDLE_CELSIUS - a.value(),
                MIDDLE_CELSIUS + a.value(),
                new Limit("23 °C ± " + a.limit().value(), a.limit().origin())));
    }
}
