package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Severity;

/** Without the temperature of the surroundings no temperature, power or throttling can be judged. */
public final class AmbientMissing implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("ambient-missing", Group.SURROUNDINGS, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            boolean known = Ambient.of(study, run).isPresent();
            if (study.method(run.run()).needsAmbient() && !known) {
                report.at(run.run().places().of("run"), study.subject(run))
                        .meaning(report.say("rules-surroundings.ambient-missing.meaning"))
                        .found(
                                report.say(
                                        "rules-surroundings.ambient-missing.found",
                                        run.run().id()),
                                report.say("rules-surroundings.ambient-missing.remedy"));
            }
        }
    }
}
