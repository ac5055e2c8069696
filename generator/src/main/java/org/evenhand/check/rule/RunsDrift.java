package org.evenhand.check.rule;

import java.util.List;
import java.util.Optional;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Severity;
import org.evenhand.statistics.Autocorrelation;
import org.evenhand.statistics.Sample;

/** Runs that resemble the one before are not independent. Source: J.-Y. Le Boudec, Performance Evaluation of Computer and Communication Systems, EPFL Press 2010, section 2.4. */
public final class RunsDrift implements Rule {

    private static final int FEWEST = 10;
    private static final double NORMAL_QUANTILE = 1.96;
    private static final String ORIGIN = "le-boudec";

    private static final RuleFacts FACTS = RuleFacts.of("runs-drift", Group.REPEATS, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelSummary summary : study.evidence().summaries()) {
            List<LevelRun> runs = Repeats.inOrder(study, summary);
            if (runs.size() < FEWEST
                    || runs.stream().anyMatch(r -> r.run().started().isEmpty())) {
                continue;
            }
            Optional<Autocorrelation> correlation =
                    Autocorrelation.of(Sample.of(Repeats.values(runs, summary.measurand())));
            double limit = NORMAL_QUANTILE / Math.sqrt(runs.size());
            if (correlation.isPresent() && Math.abs(correlation.get().lag1()) > limit) {
                report.at(
                                study.study()
                                        .places()
                                        .of("levels/" + study.study().levels().indexOf(summary.level())),
                                study.subject(runs.get(0)).on(summary.measurand()))
                        .against(report.limit("±" + Report.number(limit), ORIGIN))
                        .meaning(report.say("rules-repeats.runs-drift.meaning"))
                        .found(
                                report.say(
                                        "rules-repeats.runs-drift.found",
                                        summary.level(),
                                        study.measurand(summary.measurand()).title(),
                                        correlation.get().lag1(),
                                        runs.size()),
                                report.say("rules-repeats.runs-drift.remedy"));
            }
        }
    }
}
