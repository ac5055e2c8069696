package org.evenhand.check.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Instrument;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Origin;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;

/** An instrument vouches for its readings as long as its calibration holds. Source: ISO/IEC 17025:2017, 6.4 and 6.5. */
public final class CalibrationOverdue implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("calibration-overdue", Group.RECORD, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        Map<String, List<LevelRun>> users = new TreeMap<>();
        Map<String, List<LevelRun>> unnamed = new TreeMap<>();
        for (LevelRun run : study.countingRuns()) {
            if (run.run().origin() != Origin.MEASURED) {
                continue; // whose instruments those were, its origin says
            }
            Set<String> used = new TreeSet<>();
            for (String source : Sources.of(study, run)) {
                String instrument = run.run().instruments().get(source);
                if (instrument == null) {
                    unnamed.computeIfAbsent(source, s -> new ArrayList<>()).add(run);
                } else if (used.add(instrument)) {
                    users.computeIfAbsent(instrument, s -> new ArrayList<>()).add(run);
                }
            }
        }
        unnamed.forEach((source, runs) -> each(
                study,
                runs,
                Reach.of(study, runs, (run, by) -> by.equals(source)),
                (run, subject) -> report.at(run.run().places().of("instruments"), subject)
                        .meaning(report.say("rules-record.calibration-overdue.meaning"))
                        .found(
                                report.say(
                                        "rules-record.calibration-overdue.found",
                                        source,
                                        run.run().id()),
                                report.say("rules-record.calibration-overdue.remedy"))));
        users.forEach((id, runs) -> check(study, study.folder().instruments().get(id), runs, report));
    }

    private static void check(StudyView study, Instrument instrument, List<LevelRun> runs, Report report) {
        if (instrument.calibrated().isEmpty() || instrument.calibrationValid().isEmpty()) {
            String lacking = instrument.calibrated().isEmpty() ? "calibrated" : "calibration-valid";
            report.at(instrument.places().of("instrument"), study.subject())
                    .notCheckable(lacking, report.say("rules-record.calibration-overdue.give"));
            return;
        }
        LocalDate due =
                instrument.calibrated().get().plus(instrument.calibrationValid().get());
        List<LevelRun> undated =
                runs.stream().filter(r -> RunDay.of(r).isEmpty()).toList();
        each(
                study,
                undated,
                Set.of(),
                (run, subject) -> report.at(run.run().places().of("run"), subject)
                        .notCheckable("started", report.say("rules-record.calibration-overdue.give-2")));
        List<LevelRun> late = runs.stream()
                .filter(r -> RunDay.of(r).filter(due::isBefore).isPresent())
                .toList();
        each(
                study,
                late,
                Reach.of(
                        study,
                        late,
                        (run, by) ->
                                instrument.id().equals(run.run().instruments().get(by))),
                (run, subject) -> report.at(instrument.places().of("calibration-valid"), subject)
                        .meaning(report.say("rules-record.calibration-overdue.meaning-2"))
                        .found(
                                report.say(
                                        "rules-record.calibration-overdue.found-2",
                                        instrument.id(),
                                        due,
                                        run.run().id(),
                                        RunDay.of(run).orElseThrow()),
                                report.say("rules-record.calibration-overdue.remedy-2")));
    }

    /** Once for the study if all of its runs are touched, else once for each run. */
    private static void each(
            StudyView study, List<LevelRun> runs, Set<MeasurandId> reach, BiConsumer<LevelRun, Subject> action) {
        if (!runs.isEmpty() && runs.size() == study.countingRuns().size()) {
            action.accept(runs.get(0), study.subject().on(reach));
        } else {
            runs.forEach(run -> action.accept(run, study.subject(run).on(reach)));
        }
    }
}
