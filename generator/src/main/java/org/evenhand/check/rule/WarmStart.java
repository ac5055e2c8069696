package org.evenhand.check.rule;

import java.util.List;
import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Severity;

/** A run starts rested: what is still warm from before is nearer to its limit. Limit: common practice. */
public final class WarmStart implements Rule {

    private static final RuleFacts FACTS =
            RuleFacts.of("warm-start", Group.TIME, Severity.CAVEAT).withLimit("2 K", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            if (!study.method(run.run()).needsAmbient()) {
                continue;
            }
            List<String> columns = Heat.columns(study.method(run.run()));
            boolean involvesHeat = !columns.isEmpty()
                    || Shown.of(study, run).stream().anyMatch(m -> m.isNumeric() && Heat.isUnit(m.unit()));
            boolean said = false;
            for (String column : columns) {
                OptionalDouble above = Heat.aboveAmbientAtStartK(study, run, column);
                if (above.isPresent()) {
                    said = true;
                    check(study, run, column, above.getAsDouble(), report);
                }
            }
            if (involvesHeat && !said) {
                Heat.missingOfStart(study, run)
                        .ifPresent(field -> report.at(run.run().places().of("run"), study.subject(run))
                                .notCheckable(field, report.say("rules-time.start-unknown")));
            }
        }
    }

    private static void check(StudyView study, LevelRun run, String column, double aboveK, Report report) {
        Report.Applied limit = report.limit(study.method(run.run()), Heat.KELVIN);
        if (aboveK <= limit.value()) {
            return;
        }
        report.at(run.run().places().of("log"), study.subject(run))
                .against(limit.limit())
                .meaning(report.say("rules-time.warm-start.meaning"))
                .found(
                        report.say("rules-time.warm-start.found", run.run().id(), column, aboveK),
                        report.say("rules-time.warm-start.remedy"));
    }
}
