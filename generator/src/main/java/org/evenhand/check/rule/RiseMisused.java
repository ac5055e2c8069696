package org.evenhand.check.rule;

import java.util.List;
import java.util.Optional;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Severity;

/**
 * A rise above ambient belongs to what is tested only where nothing answers to temperature: neither the cooling nor the
 * clock. After IEC 60950-1, 1.4.12.3.
 */
public final class RiseMisused implements Rule {

    private static final String ORIGIN = "iec-60950";

    private static final RuleFacts FACTS = RuleFacts.of("rise-misused", Group.SURROUNDINGS, Severity.REFUSE);

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
                .meaning(report.say("rules-surroundings.rise-misused.meaning"));
        if (method.cooling().filter(Method.Cooling.FIXED::equals).isEmpty()) {
            draft.against(report.limit(report.say("rule-origin.fixed-cooling"), ORIGIN))
                    .found(
                            report.say(
                                    "rules-surroundings.rise-misused.found",
                                    study.measurand(id).title(),
                                    method.id()),
                            report.say("rules-surroundings.rise-misused.remedy"));
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
                    .against(report.limit(report.say("rule-origin.no-throttling"), ORIGIN))
                    .found(
                            report.say(
                                    "rules-surroundings.rise-misused.found-2",
                                    study.measurand(id).title(),
                                    shown
                                            ? report.say("rules-surroundings.rise-misused.found-part")
                                            : report.say("rules-surroundings.rise-misused.found-part-2"),
                                    held.size(),
                                    held.get(0).run().id()),
                            shown
                                    ? report.say("rules-surroundings.rise-misused.remedy-2")
                                    : report.say("rules-surroundings.rise-misused.remedy-3"));
        }
    }

    private static void cooling(StudyView study, StudyView.Sides sides, Report report) {
        Method method = study.method(sides.runs().get(0).run());
        if (method.cooling().isEmpty()) {
            report.at(method.places().of("method"), study.subject(sides))
                    .notCheckable("cooling", report.say("rules-surroundings.rise-misused.give"));
        } else if (method.cooling().get() == Method.Cooling.CONTROLLED) {
            report.at(study.place(sides), study.subject(sides))
                    .against(report.limit(report.say("rule-origin.fixed-cooling"), ORIGIN))
                    .meaning(report.say("rules-surroundings.rise-misused.meaning-2"))
                    .found(
                            report.say(
                                    "rules-surroundings.rise-misused.found-3",
                                    sides.measurand().title(),
                                    method.id()),
                            report.say("rules-surroundings.rise-misused.remedy-4"));
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
                        .notCheckable("clock", report.say("rules-surroundings.rise-misused.give-2"));
            }
        }
        if (held.isEmpty()) {
            return;
        }
        report.at(study.place(sides), study.subject(sides))
                .against(report.limit(report.say("rule-origin.no-throttling"), ORIGIN))
                .meaning(report.say("rules-surroundings.rise-misused.meaning-3"))
                .found(
                        report.say(
                                "rules-surroundings.rise-misused.found-4",
                                sides.measurand().title(),
                                held.size(),
                                sides.runs().size(),
                                held.get(0).run().id()),
                        report.say("rules-surroundings.rise-misused.remedy-5"));
    }
}
