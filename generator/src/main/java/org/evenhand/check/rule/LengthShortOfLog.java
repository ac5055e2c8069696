package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;

/** The declared length of a run and the time that its log covers must agree. */
public final class LengthShortOfLog implements Rule {

    private static final Unit SECOND = Unit.of("s");
    private static final double SECONDS_PER_MINUTE = 60;

    private static final RuleFacts FACTS = RuleFacts.of("length-short-of-log", Group.TIME, Severity.WITHHOLD)
            .withLimit("2 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.runs()) {
            if (run.run().log().isEmpty()
                    || run.measured().log().isEmpty()
                    || !run.run().counts()) {
                continue;
            }
            if (run.run().length().isEmpty()) {
                report.at(run.run().places().of("log"), study.subject(run))
                        .notCheckable("length", report.say("rules-time.length-short-of-log.give"));
                continue;
            }
            double declared = run.run().length().get().in(SECOND);
            double logged = run.measured().log().get().durationS();
            Report.Applied limit = report.limit(study.method(run.run()), Unit.ONE);
            if (Math.abs(logged - declared) <= declared * limit.value()) {
                continue;
            }
            report.at(run.run().places().of("length"), study.subject(run))
                    .against(limit.limit())
                    .meaning(report.say("rules-time.length-short-of-log.meaning"))
                    .found(
                            report.say(
                                    "rules-time.length-short-of-log.found",
                                    run.run().length().get(),
                                    logged / SECONDS_PER_MINUTE),
                            report.say("rules-time.length-short-of-log.remedy"));
        }
    }
}
