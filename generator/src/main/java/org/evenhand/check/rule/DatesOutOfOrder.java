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

    private static final RuleFacts FACTS = RuleFacts.of(
            "dates-out-of-order",
            Group.RECORD,
            Severity.WITHHOLD,
            "a run after its answer, a revision before it, or a calibration after the run");

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
                    .notCheckable("answered", "add the date on which the answer was given");
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
                            .notCheckable("started", "add when each run began, with its offset from UTC");
                }
                told = true;
                continue;
            }
            LocalDate day = RunDay.of(run).orElseThrow();
            study.study()
                    .answered()
                    .filter(day::isAfter)
                    .ifPresent(
                            answered -> report.at(run.run().places().of("started"), study.subject(run))
                                    .meaning("An answer cannot rest on a run that had not been made.")
                                    .found(
                                            "the run " + run.run().id() + " began on " + day
                                                    + ", but the question was answered on " + answered,
                                            "correct the date that is wrong; if the run was added later, move “answered” and add a revision"));
            checkCalibrations(study, run, day, report);
        }
    }

    private static void checkCalibrations(StudyView study, LevelRun run, LocalDate day, Report report) {
        for (String id : new TreeSet<>(run.run().instruments().values())) {
            Instrument instrument = study.folder().instruments().get(id);
            if (instrument.calibrated().filter(day::isBefore).isPresent()) {
                report.at(instrument.places().of("calibrated"), study.subject(run))
                        .meaning("The calibration does not stand behind readings that were taken before it.")
                        .found(
                                "“" + id + "” was calibrated on "
                                        + instrument.calibrated().get() + ", after the run "
                                        + run.run().id() + " of " + day,
                                "state the calibration that held on that day; describe the instrument again under a"
                                        + " new name for runs after the new calibration");
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
                        .meaning("Nobody can follow what was known when.")
                        .found(
                                "the revision of " + revision.on() + " comes before "
                                        + (i == 0 ? "the answer" : "the one listed above it") + ", of " + before,
                                "correct the date that is wrong, and list revisions from the oldest to the newest");
            }
            before = revision.on();
        }
    }
}
