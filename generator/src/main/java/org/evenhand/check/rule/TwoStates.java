package org.evenhand.check.rule;

import java.util.Arrays;
import java.util.List;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Instrument;
import org.evenhand.model.Method;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.DipTest;
import org.evenhand.statistics.Sample;

/** A mean between two states is a value that never occurs. Source of the test: J. A. Hartigan, P. M. Hartigan, Annals of Statistics 13 (1985). */
public final class TwoStates implements Rule {

    private static final int FEWEST = 10;
    private static final double ALPHA = 0.05;

    private static final RuleFacts FACTS = RuleFacts.of("two-states", Group.REPEATS, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelSummary summary : study.evidence().summaries()) {
            List<LevelRun> runs = Repeats.inOrder(study, summary);
            if (runs.size() < FEWEST) {
                continue;
            }
            double[] values = spread(Repeats.values(runs, summary.measurand()), step(study, summary, runs));
            DipTest test = DipTest.of(Sample.of(values));
            if (test.p() < ALPHA) {
                report.at(
                                study.study()
                                        .places()
                                        .of("levels/" + study.study().levels().indexOf(summary.level())),
                                study.subject(runs.get(0)).on(summary.measurand()))
                        .against(report.limit("p 0.05", "dip-test"))
                        .meaning(report.say("rules-repeats.two-states.meaning"))
                        .found(
                                report.say(
                                        "rules-repeats.two-states.found",
                                        summary.level(),
                                        study.measurand(summary.measurand()).title(),
                                        test.dip(),
                                        test.p(),
                                        runs.size()),
                                report.say("rules-repeats.two-states.remedy"));
            }
        }
    }

    /** The step of the instrument, within which equal values may lie anywhere; zero if it is not known. */
    private static double step(StudyView study, LevelSummary summary, List<LevelRun> runs) {
        Method method = study.method(runs.get(0).run());
        Unit unit = summary.unit();
        return Parts.source(method, study.measurand(summary.measurand()))
                .flatMap(s -> study.instrument(runs.get(0).run(), s.name()))
                .flatMap(Instrument::resolution)
                .filter(r -> r.unit().dimension().equals(unit.dimension()))
                .map(r -> r.differenceIn(unit))
                .orElse(0.0);
    }

    /** Lays equal values evenly over one step, for a heap that the instrument's steps make is no group. */
    private static double[] spread(double[] values, double step) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double[] result = sorted.clone();
        for (int from = 0; from < sorted.length; ) {
            int to = from;
            while (to < sorted.length && sorted[to] == sorted[from]) {
                to++;
            }
            for (int i = from; i < to; i++) {
                result[i] = sorted[i] + step * ((i - from + 0.5) / (to - from) - 0.5);
            }
            from = to;
        }
        return result;
    }
}
