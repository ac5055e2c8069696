package org.evenhand.check.rule;

import java.util.List;
import java.util.Optional;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Limit;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Severity;

/**
 * A rise above ambient belongs to what is tested only where nothing answers to temperature: neither the cooling nor the
 * clock. After IEC 60950-1, 1.4.12.3.
 */
public final class RiseMisused implements Rule {

    private static final String ORIGIN = "tool default, after IEC 60950-1 1.4.12.3";

    private static final RuleFacts FACTS = RuleFacts.of(
            "rise-misused",
            Group.SURROUNDINGS,
            Severity.REFUSE,
            "rises above ambient compared where cooling or clock answers to temperature");

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (StudyView.Sides sides : study.sides()) {
            boolean rise = Shown.of(study, sides).stream().anyMatch(Heat::isRise);
            if (rise && !sides.runs().isEmpty()) {
                cooling(study, sides, report);
                throttled(study, sides, report);
            }
        }
        study.study().measurands().stream()
                .filter(id -> study.measurand(id).reduction() instanceof Reduction.AmbientLimit)
                .forEach(id -> highestAmbient(study, id, report));
    }

    /** A highest ambient temperature rests on such a rise, so that it must not even be shown; measuring gives no value. */
    private static void highestAmbient(StudyView study, MeasurandId id, Report report) {
        Method method = study.folder().methods().get(id.method());
        Report.Draft draft = report.at(
                        method.places().of("measurands/" + id.measurand()),
                        study.subject().on(id))
                .meaning("Under another ambient temperature the rise would be another one.");
        if (method.cooling().filter(Method.Cooling.FIXED::equals).isEmpty()) {
            draft.against(new Limit("fixed cooling", ORIGIN))
                    .found(
                            "“" + study.measurand(id).title()
                                    + "” has no value: it would carry a rise to another ambient temperature, but the method "
                                    + method.id() + " does not hold its cooling fixed",
                            "find the highest ambient temperature by trial, or hold the cooling at one setting");
            return;
        }
        List<LevelRun> held = study.countingRuns().stream()
                .filter(r -> r.run().method().equals(id.method())
                        && Throttling.of(study, r).orElse(false))
                .toList();
        boolean shown = held.stream()
                .anyMatch(r -> r.measured().value(id.measurand()).number().isPresent());
        if (!held.isEmpty()) {
            draft.as(shown ? Severity.WITHHOLD : Severity.NOTE)
                    .against(new Limit("no throttling", ORIGIN))
                    .found(
                            "“" + study.measurand(id).title() + "” " + (shown ? "is given" : "has no value") + " for "
                                    + held.size() + (held.size() == 1 ? " run" : " runs")
                                    + " whose clock dropped, among them "
                                    + held.get(0).run().id(),
                            shown
                                    ? "let the method yield the time until the clock drops, by which such runs are told"
                                    : "read the time until the clock drops instead");
        }
    }

    private static void cooling(StudyView study, StudyView.Sides sides, Report report) {
        Method method = study.method(sides.runs().get(0).run());
        if (method.cooling().isEmpty()) {
            report.at(method.places().of("method"), study.subject(sides))
                    .notCheckable("cooling", "say in the method whether cooling is fixed or controlled");
        } else if (method.cooling().get() == Method.Cooling.CONTROLLED) {
            report.at(study.place(sides), study.subject(sides))
                    .against(new Limit("fixed cooling", ORIGIN))
                    .meaning("The rise is what the control lets happen, not what the cooling can do.")
                    .found(
                            "“" + sides.measurand().title() + "” is compared, but the method " + method.id()
                                    + " cools as temperature asks for",
                            "hold the cooling at one setting, or compare what the control is for: sound, power, speed");
        }
    }

    private static void throttled(StudyView study, StudyView.Sides sides, Report report) {
        List<LevelRun> held = sides.runs().stream()
                .filter(r -> Throttling.of(study, r).orElse(false))
                .toList();
        for (LevelRun run : sides.runs()) {
            Optional<Boolean> told = Throttling.of(study, run);
            boolean broken = run.run().log().isPresent() && run.measured().log().isEmpty();
            if (told.isEmpty() && !broken) {
                report.at(run.run().places().of("run"), study.subject(run))
                        .notCheckable("clock", "set and log the clock, to tell whether it dropped");
            }
        }
        if (held.isEmpty()) {
            return;
        }
        report.at(study.place(sides), study.subject(sides))
                .against(new Limit("no throttling", ORIGIN))
                .meaning(
                        "A run that was held back settles at its controller's limit, not where its cooling would let it.")
                .found(
                        "“" + sides.measurand().title() + "” is compared, but the clock dropped in "
                                + held.size() + " of " + sides.runs().size() + " runs, among them "
                                + held.get(0).run().id(),
                        "compare the time until the clock drops, or the work done");
    }
}
