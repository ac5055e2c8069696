package org.evenhand.check.rule;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.LogFacts.ColumnFacts;
import org.evenhand.model.Method;
import org.evenhand.model.Place;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;

/** An item that says that its voltage is too low is not to be held against others for speed. */
public final class Undervoltage implements Rule {

    private static final String FLAG = "undervoltage";

    private static final RuleFacts FACTS = RuleFacts.of("undervoltage", Group.POWER, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            Method method = study.method(run.run());
            boolean recorded = method.records().containsKey(FLAG);
            Optional<ColumnFacts> column = Stated.column(run, FLAG);
            OptionalDouble count = Stated.reading(run.run(), FLAG, Unit.ONE);
            if (column.isPresent() && column.get().highest() > 0) {
                double raisedS = column.get().mean()
                        / column.get().highest()
                        * run.measured().log().orElseThrow().durationS();
                found(study, run, "log", report.say("rules-power.undervoltage.seconds", raisedS), report);
            } else if (count.isPresent() && count.getAsDouble() > 0) {
                found(
                        study,
                        run,
                        "readings/" + FLAG,
                        report.say("rules-power.undervoltage.times", count.getAsDouble()),
                        report);
            } else if (recorded && column.isEmpty() && run.run().log().isPresent()) {
                report.at(run.run().places().of("log"), study.subject(run))
                        .notCheckable("columns/" + FLAG, report.say("rules-power.undervoltage.give"));
            }
        }
    }

    private static void found(StudyView study, LevelRun run, String field, String message, Report report) {
        Place place = run.run().places().of(field);
        report.at(place, study.subject(run))
                .meaning(report.say("rules-power.undervoltage.meaning"))
                .found(message, report.say("rules-power.undervoltage.remedy"));
        for (StudyView.Sides sides : study.sides()) {
            if (Speed.isOne(sides.measurand()) && sides.runs().contains(run)) {
                report.at(place, study.subject(sides))
                        .as(Severity.REFUSE)
                        .meaning(report.say("rules-power.undervoltage.meaning-2"))
                        .found(
                                report.say(
                                        "rules-power.undervoltage.found",
                                        run.run().id(),
                                        message),
                                report.say("rules-power.undervoltage.remedy"));
            }
        }
    }
}
