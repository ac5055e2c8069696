package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.ApproachFacts;
import org.evenhand.measure.RunValue;
import org.evenhand.measure.SettledFacts;
import org.evenhand.model.Measurand;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;

/**
 * A slow rise can pass for a settled one. What is still to come of a fitted exponential approach tells them apart. Limit:
 * common practice, no published source.
 */
public final class PlateauFar implements Rule {

    private static final Unit MINUTE = Unit.of("min");
    private static final Unit SECOND = Unit.of("s");

    /** So many standard uncertainties of the plateau tell a remainder from none. */
    private static final double COVERAGE = 2;

    private static final RuleFacts FACTS =
            RuleFacts.of("plateau-far", Group.TIME, Severity.CAVEAT).withLimit("1 K", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            for (Measurand measurand : Shown.of(study, run)) {
                SettledFacts settled = run.measured().settled().get(measurand.id());
                ApproachFacts approach = run.measured().approaches().get(measurand.id());
                if (settled != null && settled.settled() && approach != null && Heat.isUnit(measurand.unit())) {
                    check(study, run, measurand, approach, report);
                }
                if (run.measured().value(measurand.id()) instanceof RunValue.Missing missing
                        && missing.rule().equals(FACTS.id())) {
                    report.at(run.run().places().of("log"), study.subject(run).on(Reach.of(study, run, measurand)))
                            .meaning(report.say("rules-time.plateau-far.meaning"))
                            .found(
                                    report.say(
                                            "rules-time.plateau-far.found",
                                            measurand.title(),
                                            run.run().id(),
                                            missing.why().in(report.words())),
                                    report.say("rules-time.plateau-far.remedy"));
                }
            }
        }
    }

    private static void check(
            StudyView study, LevelRun run, Measurand measurand, ApproachFacts approach, Report report) {
        Report.Applied limit =
                report.limit(study.method(run.run()), measurand.unit().ofDifference());
        double toCome = Math.abs(approach.remaining());
        boolean told = toCome > COVERAGE * approach.plateauUncertainty();
        if (!told || toCome <= limit.value()) {
            return;
        }
        double minutes = SECOND.to(MINUTE).fast().apply(approach.timeConstantS());
        report.at(run.run().places().of("log"), study.subject(run).on(Reach.of(study, run, measurand)))
                .against(limit.limit())
                .meaning(report.say("rules-time.plateau-far.meaning-2"))
                .found(
                        report.say(
                                "rules-time.plateau-far.found-2",
                                measurand.title(),
                                run.run().id(),
                                minutes,
                                toCome,
                                measurand.unit().ofDifference().symbol()),
                        report.say("rules-time.plateau-far.remedy-2"));
    }
}
