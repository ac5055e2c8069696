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

    private static final RuleFacts FACTS = RuleFacts.of("setting-not-reached", Group.POWER, Severity.CAVEAT)
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
        String message = report.say(
                "rules-power.setting-not-reached.found", run.run().id(), name, asked, unit.symbol(), nearest);
        boolean refused = false;
        if (name.equals(study.study().factor())) {
            for (StudyView.Sides sides : study.sides()) {
                if (sides.runs().contains(run)) {
                    refused = true;
                    report.at(run.run().places().of("settings/" + name), study.subject(sides))
                            .as(Severity.REFUSE)
                            .against(limit.limit())
                            .meaning(report.say("rules-power.setting-not-reached.meaning"))
                            .found(message, report.say("rules-power.setting-not-reached.remedy"));
                }
            }
        }
        if (!refused) {
            report.at(run.run().places().of("settings/" + name), study.subject(run))
                    .against(limit.limit())
                    .meaning(report.say("rules-power.setting-not-reached.meaning-2", name))
                    .found(message, report.say("rules-power.setting-not-reached.remedy"));
        }
    }
}
