package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;

/** A single value says nothing of its own spread. */
public final class SingleRun implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("single-run", Group.REPEATS, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (StudyView.Sides sides : study.sides()) {
            for (String level : study.study().levels()) {
                if (sides.at(level).size() == 1) {
                    report.at(study.place(sides), study.subject(sides))
                            .meaning(report.say("rules-repeats.single-run.meaning"))
                            .found(
                                    report.say("rules-repeats.single-run.found", level),
                                    report.say("rules-repeats.single-run.remedy"));
                }
            }
        }
        for (LevelSummary summary : study.evidence().summaries()) {
            boolean compared = study.sides().stream()
                    .anyMatch(s -> s.result()
                                    .plan()
                                    .measurand()
                                    .filter(summary.measurand()::equals)
                                    .isPresent()
                            && s.at(summary.level()).size() == 1);
            if (summary.runs().size() == 1 && summary.words().isEmpty() && !compared) {
                report.at(
                                study.study().places().of("levels"),
                                Subject.run(study.study().id(), summary.runs().get(0))
                                        .on(summary.measurand()))
                        .meaning(report.say("rules-repeats.single-run.meaning"))
                        .found(
                                report.say(
                                        "rules-repeats.single-run.found-2",
                                        summary.level(),
                                        study.measurand(summary.measurand()).title()),
                                report.say("rules-repeats.single-run.remedy"));
            }
        }
    }
}
