package org.evenhand.check.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Instrument;
import org.evenhand.model.Revision;
import org.evenhand.model.Severity;
import org.evenhand.model.Status;
import org.evenhand.model.Study;

/** Calibration, run, answer and revision follow one another. Source: ISO/IEC 17025:2017, 7.8.2.1 h to j. */
public final class DatesOutOfOrder implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("dates-out-of-order", Group.RECORD, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        Study plan = study.study();
        boolean isAnswered = plan.status() != Status.WANTED && plan.status() != Status.DRAFT;
        if (isAnswered && plan.answered().isEmpty()) {
            report.at(plan.places().of("status"), study.subject())
                    .notCheckable("answered", report.say("rules-record.dates-out-of-order.give"));
        }
        checkRuns(study, report);
        plan.answered().ifPresent(answered -> checkRevisions(study, answered, report));
    }

    private static void checkRuns(StudyView study, Report report) {
        boolean told = false;
        for (LevelRun run : study.runs()) {
            if (run.run().started().isEmpty()) {
                if (!told) {
                    report.at(run.run().places().of("run"), study.subject())
                            .notCheckable("started", report.say("rules-record.dates-out-of-order.give-2"));
                }
                told = true;
                continue;
            }
            LocalDate day = RunDay.of(run).orElseThrow();
            study.study()
                    .answered()
                    .filter(day::isAfter)
                    .ifPresent(answered -> report.at(run.run().places().of("started"), study.subject(run))
                            .meaning(report.say("rules-record.dates-out-of-order.meaning"))
                            .found(
                                    report.say(
                                            "rules-record.dates-out-of-order.found",
                                            run.run().id(),
                                            day,
                                            answered),
                                    report.say("rules-record.dates-out-of-order.remedy")));
            checkCalibrations(study, run, day, report);
        }
    }

    private static void checkCalibrations(StudyView study, LevelRun run, LocalDate day, Report report) {
        for (String id : new TreeSet<>(run.run().instruments().values())) {
            Instrument instrument = study.folder().instruments().get(id);
            if (instrument.calibrated().filter(day::isBefore).isPresent()) {
                report.at(instrument.places().of("calibrated"), study.subject(run))
                        .meaning(report.say("rules-record.dates-out-of-order.meaning-2"))
                        .found(
                                report.say(
                                        "rules-record.dates-out-of-order.found-2",
                                        id,
                                        instrument.calibrated().get(),
                                        run.run().id(),
                                        day),
                                report.say("rules-record.dates-out-of-order.remedy-2"));
            }
        }
    }

    private static void checkRevisions(StudyView study, LocalDate answered, Report report) {
        List<Revision> revisions = study.study().revisions();
        LocalDate before = answered;
        for (int i = 0; i < revisions.size(); i++) {
            Revision revision = revisions.get(i);
            if (revision.on().isBefore(before)) {
                report.at(study.study().places().of("revisions/" + i + "/on"), study.subject())
                        .meaning(report.say("rules-record.dates-out-of-order.meaning-3"))
                        .found(
                                report.say(
                                        "rules-record.dates-out-of-order.found-3",
                                        revision.on(),
                                        i == 0
                                                ? report.say("rules-record.dates-out-of-order.found-part")
                                                : report.say("rules-record.dates-out-of-order.found-part-2"),
                                        before),
                                report.say("rules-record.dates-out-of-order.remedy-3"));
            }
            before = revision.on();
        }
    }
}
