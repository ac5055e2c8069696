package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.LogFacts;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Reduction;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;

/** A time until an event is known to one sampling step. Limit: common practice, no published source. */
public final class LogTooCoarse implements Rule {

    private static final Unit SECOND = Unit.of("s");

    private static final RuleFacts FACTS =
            RuleFacts.of("log-too-coarse", Group.TIME, Severity.CAVEAT).withLimit("10 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            if (run.measured().log().isEmpty()) {
                continue;
            }
            for (Measurand measurand : Shown.of(study, run)) {
                boolean happened = run.measured().value(measurand.id()) instanceof RunValue.Known;
                if (measurand.reduction() instanceof Reduction.TimeUntil && happened) {
                    check(study, run, measurand, run.measured().log().get(), report);
                }
            }
        }
    }

    private static void check(StudyView study, LevelRun run, Measurand measurand, LogFacts log, Report report) {
        RunValue.Known known = (RunValue.Known) run.measured().value(measurand.id());
        double valueS = known.unit().to(SECOND).fast().apply(known.value());
        double stepS = log.typicalStepS();
        Report.Applied limit = report.limit(study.method(run.run()), Unit.ONE);
        if (stepS <= limit.value() * valueS) {
            return;
        }
        MeasurandId id = new MeasurandId(run.run().method(), measurand.id());
        report.at(run.run().places().of("log"), study.subject(run).on(id))
                .against(limit.limit())
                .meaning(report.say("rules-time.log-too-coarse.meaning"))
                .found(
                        report.say(
                                "rules-time.log-too-coarse.found",
                                measurand.title(),
                                valueS,
                                run.run().id(),
                                stepS,
                                stepS),
                        report.say("rules-time.log-too-coarse.remedy"));
    }
}
