package org.evenhand.check.rule;

import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.BlockSeries;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/** What was asked for is not what was run. */
public final class SettingNotReached implements Rule {

    private static final String REMEDY = "find out why it was ignored, or state what was run";

    private static final RuleFacts FACTS = RuleFacts.of(
                    "setting-not-reached",
                    Group.POWER,
                    Severity.CAVEAT,
                    "a setting that the log says was never in force")
            .withLimit("1 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            study.method(run.run()).records().forEach((column, unit) -> {
                OptionalDouble asked = Stated.setting(run.run(), column, unit);
                BlockSeries blocks = run.measured().means().get(column);
                if (asked.isPresent()
                        && asked.getAsDouble() != 0
                        && blocks != null
                        && unit.kind() == UnitKind.DIFFERENCE) {
                    check(study, run, column, unit, asked.getAsDouble(), blocks, report);
                }
            });
        }
    }

    private static void check(
            StudyView study, LevelRun run, String name, Unit unit, double asked, BlockSeries blocks, Report report) {
        double nearest = blocks.mean(0);
        for (int i = 1; i < blocks.size(); i++) {
            nearest = Math.abs(blocks.mean(i) - asked) < Math.abs(nearest - asked) ? blocks.mean(i) : nearest;
        }
        Report.Applied limit = report.limit(study.method(run.run()), Unit.ONE);
        double off = Math.abs(nearest - asked) / Math.abs(asked);
        if (!(off > limit.value())) {
            return;
        }
        String message = "the run " + run.run().id() + " asks for a " + name + " of " + Report.number(asked) + " "
                + unit.symbol() + ", but the log comes no nearer than " + Report.number(nearest) + " " + unit.symbol();
        boolean refused = false;
        if (name.equals(study.study().factor())) {
            for (StudyView.Sides sides : study.sides()) {
                if (sides.runs().contains(run)) {
                    refused = true;
                    report.at(run.run().places().of("settings/" + name), study.subject(sides))
                            .as(Severity.REFUSE)
                            .against(limit.limit())
                            .meaning("The comparison is not one of the levels that it names.")
                            .found(message, REMEDY);
                }
            }
        }
        if (!refused) {
            report.at(run.run().places().of("settings/" + name), study.subject(run))
                    .against(limit.limit())
                    .meaning("The figures belong to another " + name + " than the one stated.")
                    .found(message, REMEDY);
        }
    }
}
