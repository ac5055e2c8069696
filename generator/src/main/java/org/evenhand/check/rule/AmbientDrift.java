package org.evenhand.check.rule;

import java.util.Optional;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Method;
import org.evenhand.model.Severity;

/** The room stays as it is while a run lasts. Limit: common practice, no published source. */
public final class AmbientDrift implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("ambient-drift", Group.SURROUNDINGS, Severity.CAVEAT)
            .withLimit("2 K", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            Method method = study.method(run.run());
            Optional<Course> course = Ambient.course(study, run);
            if (!method.needsAmbient()) {
                continue;
            }
            if (course.isPresent()) {
                check(study, run, course.get(), report);
            } else if (method.records().containsKey(Ambient.COLUMN)
                    && run.measured().log().isPresent()) {
                report.at(run.run().places().of("log"), study.subject(run))
                        .notCheckable(Ambient.COLUMN, report.say("rules-surroundings.ambient-drift.give"));
            }
        }
    }

    private static void check(StudyView study, LevelRun run, Course course, Report report) {
        Report.Applied limit = report.limit(study.method(run.run()), Heat.KELVIN);
        if (course.highest() - course.lowest() <= limit.value()) {
            return;
        }
        report.at(run.run().places().of("log"), study.subject(run))
                .against(limit.limit())
                .meaning(report.say("rules-surroundings.ambient-drift.meaning"))
                .found(
                        report.say(
                                "rules-surroundings.ambient-drift.found",
                                course.lowest(),
                                course.highest(),
                                run.run().id()),
                        report.say("rules-surroundings.ambient-drift.remedy"));
    }
}
