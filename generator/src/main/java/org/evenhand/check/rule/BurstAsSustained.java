package org.evenhand.check.rule;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Better;
import org.evenhand.model.Measurand;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/** What is done in the first minute is not always what is done for long. Limit: common practice, no published source. */
public final class BurstAsSustained implements Rule {

    private static final double FIRST_S = 60;
    private static final double LAST_S = 600;

    private static final RuleFacts FACTS =
            RuleFacts.of("burst-as-sustained", Group.TIME, Severity.CAVEAT).withLimit("5 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            for (Measurand measurand : Shown.of(study, run)) {
                if (measurand.reduction() instanceof Reduction.OfColumn of
                        && isPerformance(measurand, of.statistic())) {
                    check(study, run, measurand, of.column(), report);
                }
            }
        }
    }

    private static boolean isPerformance(Measurand measurand, Statistic statistic) {
        return measurand.better() == Better.HIGHER
                && measurand.unit().kind() == UnitKind.DIFFERENCE
                && !Heat.isUnit(measurand.unit())
                && (statistic instanceof Statistic.Mean
                        || statistic instanceof Statistic.Median
                        || statistic instanceof Statistic.Maximum
                        || statistic instanceof Statistic.Percentile);
    }

    private static void check(StudyView study, LevelRun run, Measurand measurand, String column, Report report) {
        Unit unit = study.method(run.run()).records().get(column);
        Optional<Course> course = Course.of(study, run, column, unit);
        if (course.isEmpty()) {
            return;
        }
        double startS = course.get().firstS();
        double endS = course.get().lastS();
        OptionalDouble first = course.get().mean(startS, startS + FIRST_S);
        OptionalDouble last = course.get().mean(Math.max(endS - LAST_S, startS + FIRST_S), endS);
        Report.Applied limit = report.limit(study.method(run.run()), Unit.ONE);
        boolean longEnough = endS - startS >= 2 * FIRST_S && last.isPresent();
        if (!longEnough || !(last.getAsDouble() < first.getAsDouble() * (1 - limit.value()))) {
            return;
        }
        report.at(run.run().places().of("log"), study.subject(run).on(Reach.of(study, run, measurand)))
                .against(limit.limit())
                .meaning(report.say("rules-time.burst-as-sustained.meaning"))
                .found(
                        report.say(
                                "rules-time.burst-as-sustained.found",
                                measurand.title(),
                                column,
                                first.getAsDouble(),
                                unit.symbol(),
                                run.run().id(),
                                last.getAsDouble(),
                                unit.symbol()),
                        report.say("rules-time.burst-as-sustained.remedy"));
    }
}
