package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.model.Severity;
import org.evenhand.model.Status;
import org.evenhand.model.Study;

/**
 * Every run that was planned is there, if only as a failure. Source: Hoefler and Belli, "Scientific Benchmarking of
 * Parallel Computing Systems", SC15, rule 2.
 */
public final class PlannedMissing implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("planned-missing", Group.RECORD, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        Study plan = study.study();
        if (plan.status() == Status.WANTED || plan.status() == Status.DRAFT) {
            return; // the runs may yet come
        }
        if (plan.plannedRuns().isEmpty()) {
            report.at(plan.places().of("levels"), study.subject())
                    .notCheckable("planned-runs", report.say("rules-record.planned-missing.give"));
            levelsWithoutRuns(study, report);
            return;
        }
        int planned = plan.plannedRuns().getAsInt();
        for (String method : plan.methods()) {
            for (int i = 0; i < plan.levels().size(); i++) {
                String level = plan.levels().get(i);
                long shown = study.runs().stream()
                        .filter(r -> r.level().equals(level) && r.run().method().equals(method))
                        .count();
                if (shown < planned) {
                    report.at(plan.places().of("levels/" + i), study.subject())
                            .meaning(report.say("rules-record.planned-missing.meaning"))
                            .found(
                                    report.say("rules-record.planned-missing.found", level, planned, method, shown),
                                    report.say("rules-record.planned-missing.remedy"));
                }
            }
        }
    }

    /** A level that a study names was meant to be tried at least once. */
    private static void levelsWithoutRuns(StudyView study, Report report) {
        Study plan = study.study();
        for (int i = 0; i < plan.levels().size(); i++) {
            String level = plan.levels().get(i);
            if (study.runs().stream().noneMatch(r -> r.level().equals(level))) {
                report.at(plan.places().of("levels/" + i), study.subject())
                        .meaning(report.say("rules-record.planned-missing.meaning-2"))
                        .found(
                                report.say("rules-record.planned-missing.found-2", level),
                                report.say("rules-record.planned-missing.remedy-2"));
            }
        }
    }
}
