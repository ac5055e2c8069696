package org.evenhand.check.rule;

import java.util.Set;
import java.util.TreeSet;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;

/** The mean of a load that drifts depends on when it is taken. Source of the default limit: IEC 62301:2005, 5.3.1. */
public final class PowerUnsteady implements Rule {

    private static final double WINDOW_S = 300;

    private static final RuleFacts FACTS =
            RuleFacts.of("power-unsteady", Group.POWER, Severity.CAVEAT).withLimit("5 %", "iec-62301-steady");

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            Method method = study.method(run.run());
            Set<String> columns = new TreeSet<>();
            for (Measurand part : Parts.shown(study, run.run())) {
                if (part.reduction() instanceof Reduction.OfColumn of && of.statistic() instanceof Statistic.Mean) {
                    Parts.source(method, part)
                            .filter(s -> s.unit().dimension().equals(Parts.WATT.dimension()))
                            .ifPresent(s -> columns.add(s.name()));
                }
            }
            for (String column : columns) {
                Drift.worst(run.measured().means().get(column), WINDOW_S)
                        .ifPresent(drift -> check(study, run, column, drift, report));
            }
        }
    }

    private static void check(StudyView study, LevelRun run, String column, Drift drift, Report report) {
        Report.Applied limit = report.limit(study.method(run.run()), Unit.ONE);
        double share = Math.abs(drift.change() / drift.mean());
        if (!(share > limit.value())) {
            return;
        }
        report.at(run.run().places().of("log"), study.subject(run))
                .against(limit.limit())
                .meaning(report.say("rules-power.power-unsteady.meaning"))
                .found(
                        report.say("rules-power.power-unsteady.found", column, 100 * share, drift.middleS() / 60),
                        report.say("rules-power.power-unsteady.remedy"));
    }
}
