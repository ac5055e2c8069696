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

/** Limits that were active must be shown. Source: T. Hoefler, R. Belli, SC ’15, rule 9. */
public final class Throttled implements Rule {

    private static final String CLOCK = "clock";
    private static final Unit SECOND = Unit.of("s");

    /** A clock below this share of the one asked for is held back; common practice, no published source. */
    private static final double SHARE = 0.95;

    private static final RuleFacts FACTS =
            RuleFacts.of("throttled", Group.POWER, Severity.CAVEAT).withLimit("0 s", "hoefler-belli");

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            Unit clock = study.method(run.run()).records().get(CLOCK);
            OptionalDouble asked = clock == null ? OptionalDouble.empty() : Stated.setting(run.run(), CLOCK, clock);
            BlockSeries blocks = run.measured().means().get(CLOCK);
            if (asked.isPresent() && blocks != null) {
                double throttledS = belowS(blocks, asked.getAsDouble() * SHARE, run);
                check(study, run, throttledS, report);
            } else if (clock != null && blocks != null && !run.run().settings().containsKey(CLOCK)) {
                report.at(run.run().places().of("settings"), study.subject(run))
                        .notCheckable("settings/" + CLOCK, report.say("rules-power.throttled.give"));
            }
        }
    }

    private static void check(StudyView study, LevelRun run, double throttledS, Report report) {
        Report.Applied limit = report.limit(study.method(run.run()), SECOND);
        if (!(throttledS > limit.value())) {
            return;
        }
        report.at(run.run().places().of("log"), study.subject(run))
                .as(isShown(study, run) ? Severity.NOTE : Severity.CAVEAT)
                .against(limit.limit())
                .meaning(report.say("rules-power.throttled.meaning"))
                .found(
                        report.say(
                                "rules-power.throttled.found",
                                100 * SHARE,
                                throttledS,
                                run.measured().log().orElseThrow().durationS()),
                        report.say("rules-power.throttled.remedy"));
    }

    /** Whether the study shows how much the item was held back. */
    private static boolean isShown(StudyView study, LevelRun run) {
        return Parts.shown(study, run.run()).stream()
                .anyMatch(m -> m.reduction()
                        .watched()
                        .filter(c -> c.column().equals(CLOCK))
                        .isPresent());
    }

    private static double belowS(BlockSeries blocks, double threshold, LevelRun run) {
        int below = 0;
        for (int i = 0; i < blocks.size(); i++) {
            below += blocks.mean(i) < threshold ? 1 : 0;
        }
        return run.measured().log().orElseThrow().durationS() * below / Math.max(1, blocks.size());
    }
}
