package org.evenhand.check.rule;

import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Item;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.quantity.Unit;

/** An item that runs above what its maker states is another item than the one in the shop. */
public final class RaisedClockUnlabelled implements Rule {

    private static final String CLOCK = "clock";
    private static final Unit MEGAHERTZ = Unit.of("MHz");

    private static final RuleFacts FACTS = RuleFacts.of("raised-clock-unlabelled", Group.POWER, Severity.WITHHOLD)
            .withLimit("1 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            OptionalDouble logged = Stated.highestMean(study, run, CLOCK, MEGAHERTZ);
            OptionalDouble stated = Stated.setting(run.run(), CLOCK, MEGAHERTZ);
            if (logged.isPresent()) {
                check(study, run, logged.getAsDouble(), stated, report);
            }
        }
    }

    private static void check(StudyView study, LevelRun run, double loggedMhz, OptionalDouble stated, Report report) {
        Item item = study.item(run.run());
        OptionalDouble rated = Stated.limit(item, CLOCK, MEGAHERTZ);
        if (rated.isEmpty()) {
            report.at(item.places().of("limits"), Subject.study(study.study().id()))
                    .notCheckable("limits/clock", report.say("rules-power.raised-clock-unlabelled.give", item.name()));
            return;
        }
        Report.Applied limit = report.limit(study.method(run.run()), Unit.ONE);
        double most = rated.getAsDouble() * (1 + limit.value());
        boolean labelled = stated.isPresent() && loggedMhz <= stated.getAsDouble() * (1 + limit.value());
        if (loggedMhz > most && !labelled) {
            report.at(run.run().places().of("settings/" + CLOCK), study.subject(run))
                    .against(limit.limit())
                    .meaning(report.say("rules-power.raised-clock-unlabelled.meaning"))
                    .found(
                            report.say("rules-power.raised-clock-unlabelled.found", loggedMhz, rated.getAsDouble()),
                            report.say("rules-power.raised-clock-unlabelled.remedy"));
        }
    }
}
