package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.Counts;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.statistics.Grubbs;

/** A value far off the others is told, and not taken away. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1. */
public final class Outlier implements Rule {

    private static final String ORIGIN = "nist-grubbs";

    /** In six values or fewer the test finds an outlier too often, as its source says. */
    private static final int FEWEST = 7;

    private static final RuleFacts FACTS = RuleFacts.of("outlier", Group.REPEATS, Severity.NOTE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelSummary summary : study.evidence().summaries()) {
            summary.outlier()
                    .filter(o -> summary.n() >= FEWEST)
                    .ifPresent(outlier -> report.at(
                                    study.study()
                                            .places()
                                            .of("levels/"
                                                    + study.study().levels().indexOf(summary.level())),
                                    subject(study, summary, outlier))
                            .against(report.limit("G " + Report.number(outlier.critical()), ORIGIN))
                            .meaning(report.say("rules-repeats.outlier.meaning"))
                            .found(
                                    report.say(
                                            "rules-repeats.outlier.found",
                                            summary.level(),
                                            study.measurand(summary.measurand()).title(),
                                            outlier.value(),
                                            summary.unit().symbol(),
                                            outlier.statistic(),
                                            summary.n()),
                                    report.say("rules-repeats.outlier.remedy")));
        }
    }

    /** The run, where each value is one; else the study. */
    private static Subject subject(StudyView study, LevelSummary summary, Grubbs outlier) {
        String id = study.study().id();
        return summary.counts() == Counts.RUNS
                        && summary.runs().size() == summary.values().size()
                ? Subject.run(id, summary.runs().get(outlier.index()))
                : Subject.study(id);
    }
}
