package org.evenhand.check.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Method;
import org.evenhand.model.Severity;

/** Power as it is read, and power with idle taken off, are two measurands. */
public final class IdleBasisMixed implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("idle-basis-mixed", Group.POWER, Severity.REFUSE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (StudyView.Sides sides : study.sides()) {
            Method method = study.method(sides);
            Map<String, LevelRun> seen = new TreeMap<>();
            List<LevelRun> without = new ArrayList<>();
            for (LevelRun run : sides.runs()) {
                String basis = run.run().circumstances().get("idle-basis");
                if (basis == null) {
                    without.add(run);
                } else {
                    seen.putIfAbsent(basis, run);
                }
            }
            // A method's own reduction treats all runs alike; a basis matters once somebody speaks of one.
            if (seen.isEmpty()
                    || Parts.ofPower(method, Parts.of(method, sides.measurand()))
                            .isEmpty()) {
                continue;
            }
            for (LevelRun run : without) {
                report.at(run.run().places().of("run"), study.subject(run))
                        .notCheckable("idle-basis", report.say("rules-power.idle-basis-mixed.give"));
            }
            if (seen.size() > 1) {
                report.at(study.place(sides), study.subject(sides))
                        .meaning(report.say("rules-power.idle-basis-mixed.meaning"))
                        .found(
                                report.say(
                                        "rules-power.idle-basis-mixed.found",
                                        seen.get("gross").run().id(),
                                        seen.get("net").run().id()),
                                report.say("rules-power.idle-basis-mixed.remedy"));
            }
        }
    }
}
