package org.evenhand.check.rule;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.ApproachFacts;
import org.evenhand.measure.LogFacts;
import org.evenhand.model.Method;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;

/** What happened while no sample was taken is not known. Limits: common practice, no published source. */
public final class LogGaps implements Rule {

    private static final Unit SECOND = Unit.of("s");

    /** A step so many times the usual one has lost a sample. */
    private static final double STEPS_IN_GAP = 1.5;

    private static final double TIME_CONSTANTS_IN_GAP = 0.1;

    private static final RuleFacts FACTS =
            RuleFacts.of("log-gaps", Group.TIME, Severity.CAVEAT).withLimit("2 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            Optional<LogFacts> log = run.measured().log();
            if (log.isPresent()) {
                missing(study, run, log.get(), report);
                longest(study, run, log.get(), report);
            }
        }
    }

    private static void missing(StudyView study, LevelRun run, LogFacts log, Report report) {
        Report.Applied limit = report.limit(study.method(run.run()), Unit.ONE);
        if (log.shareMissing() <= limit.value()) {
            return;
        }
        report.at(run.run().places().of("log"), study.subject(run))
                .against(limit.limit())
                .meaning(report.say("rules-time.log-gaps.meaning"))
                .found(
                        report.say(
                                "rules-time.log-gaps.found",
                                100 * log.shareMissing(),
                                run.run().id(),
                                log.typicalStepS()),
                        report.say("rules-time.log-gaps.remedy"));
    }

    private static void longest(StudyView study, LevelRun run, LogFacts log, Report report) {
        Optional<Report.Applied> limit = gapLimit(study.method(run.run()), run, report);
        boolean gap = log.longestStepS() > STEPS_IN_GAP * log.typicalStepS();
        if (limit.isEmpty() || !gap || log.longestStepS() <= limit.get().value()) {
            return;
        }
        report.at(run.run().places().of("log"), study.subject(run))
                .against(limit.get().limit())
                .meaning(report.say("rules-time.log-gaps.meaning-2"))
                .found(
                        report.say(
                                "rules-time.log-gaps.found-2",
                                run.run().id(),
                                log.longestStepS(),
                                log.longestStepFromS()),
                        report.say("rules-time.log-gaps.remedy"));
    }

    /** As stated in a unit of time, else a tenth of the shortest time constant; nothing if none is known. */
    private static Optional<Report.Applied> gapLimit(Method method, LevelRun run, Report report) {
        Optional<Report.Applied> stated = report.stated(method, SECOND);
        OptionalDouble shortestS = run.measured().approaches().values().stream()
                .filter(a -> a.timeConstantsSeen() >= 1)
                .mapToDouble(ApproachFacts::timeConstantS)
                .min();
        if (stated.isPresent() || shortestS.isEmpty()) {
            return stated;
        }
        String origin = "time-constant";
        String limitS = new java.math.BigDecimal(shortestS.getAsDouble() * TIME_CONSTANTS_IN_GAP)
                .round(new java.math.MathContext(3))
                .toPlainString();
        return Optional.of(report.limit(method, SECOND, new RuleFacts.DefaultLimit(limitS + " s", origin)));
    }
}
