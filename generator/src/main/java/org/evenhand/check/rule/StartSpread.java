package org.evenhand.check.rule;

import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Method;
import org.evenhand.model.Severity;

/** Cold starts are not held against warm ones. Limit: common practice, no published source. */
public final class StartSpread implements Rule {

    private static final RuleFacts FACTS =
            RuleFacts.of("start-spread", Group.TIME, Severity.REFUSE).withLimit("2 K", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (StudyView.Sides sides : study.sides()) {
            if (sides.runs().isEmpty()) {
                continue;
            }
            Method method = study.method(sides.runs().get(0).run());
            if (method.needsAmbient()) {
                Heat.columns(method).forEach(column -> check(study, sides, column, report));
            }
        }
    }

    private static void check(StudyView study, StudyView.Sides sides, String column, Report report) {
        LevelRun coldest = null;
        LevelRun warmest = null;
        for (LevelRun run : sides.runs()) {
            OptionalDouble above = Heat.aboveAmbientAtStartK(study, run, column);
            if (above.isEmpty()) {
                Heat.missingOfStart(study, run)
                        .ifPresent(field -> report.at(run.run().places().of("run"), study.subject(run))
                                .notCheckable(field, report.say("rules-time.start-unknown")));
                continue;
            }
            if (coldest == null || above.getAsDouble() < aboveK(study, coldest, column)) {
                coldest = run;
            }
            if (warmest == null || above.getAsDouble() > aboveK(study, warmest, column)) {
                warmest = run;
            }
        }
        if (coldest == null) {
            return;
        }
        Report.Applied limit = report.limit(study.method(coldest.run()), Heat.KELVIN);
        double low = aboveK(study, coldest, column);
        double high = aboveK(study, warmest, column);
        if (high - low <= limit.value()) {
            return;
        }
        report.at(study.place(sides), study.subject(sides))
                .against(limit.limit())
                .meaning(report.say("rules-time.start-spread.meaning"))
                .found(
                        report.say(
                                "rules-time.start-spread.found",
                                column,
                                low,
                                coldest.run().id(),
                                high,
                                warmest.run().id()),
                        report.say("rules-time.start-spread.remedy"));
    }

    private static double aboveK(StudyView study, LevelRun run, String column) {
        return Heat.aboveAmbientAtStartK(study, run, column).orElseThrow();
    }
}
