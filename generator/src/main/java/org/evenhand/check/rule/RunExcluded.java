package org.evenhand.check.rule;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;

/**
 * A summary of the runs that somebody kept says little about all of them. Source: Georges, Buytaert and Eeckhout,
 * "Statistically Rigorous Java Performance Evaluation", OOPSLA 2007, on reporting the best of several runs.
 */
public final class RunExcluded implements Rule {

    private static final RuleFacts FACTS =
            RuleFacts.of("run-excluded", Group.RECORD, Severity.CAVEAT).withLimit("25 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.runs()) {
            if (run.run().counts()) {
                continue;
            }
            run.run()
                    .why()
                    .filter(why -> why.codePoints().noneMatch(Character::isLetter))
                    .ifPresent(why -> report.at(run.run().places().of("why"), study.subject(run))
                            .as(Severity.WITHHOLD)
                            .meaning(report.say("rules-record.run-excluded.meaning"))
                            .found(
                                    report.say(
                                            "rules-record.run-excluded.found",
                                            run.run().id(),
                                            word(run, report),
                                            why),
                                    report.say("rules-record.run-excluded.remedy")));
        }
        study.study().levels().forEach(level -> checkLevel(study, level, report));
    }

    private static void checkLevel(StudyView study, String level, Report report) {
        List<LevelRun> all =
                study.runs().stream().filter(r -> r.level().equals(level)).toList();
        List<LevelRun> left = all.stream().filter(r -> !r.run().counts()).toList();
        if (left.size() < 2) {
            return; // one mishap is nobody's choice
        }
        Report.Applied limit = report.limit(study.method(left.get(0).run()), Unit.ONE);
        if (left.size() <= all.size() * limit.value()) {
            return;
        }
        String which = left.stream()
                .map(r -> r.run().id() + " (" + word(r, report) + ")")
                .collect(Collectors.joining(", "));
        int index = study.study().levels().indexOf(level);
        for (LevelRun run : all) {
            if (run.run().counts()) {
                report.at(study.study().places().of("levels/" + index), study.subject(run))
                        .against(limit.limit())
                        .meaning(report.say("rules-record.run-excluded.meaning-2"))
                        .found(
                                report.say("rules-record.run-excluded.found-2", level, left.size(), all.size(), which),
                                report.say("rules-record.run-excluded.remedy-2"));
                return;
            }
        }
    }

    private static String word(LevelRun run, Report report) {
        return report.say("rules-record.outcome-" + run.run().outcome().name().toLowerCase(Locale.ROOT));
    }
}
