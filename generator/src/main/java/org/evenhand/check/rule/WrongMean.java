package org.evenhand.check.rule;

import java.util.List;
import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;
import org.evenhand.statistics.Sample;

/** Rates and ratios have no arithmetic mean, decibels no linear one. Source: T. Hoefler, R. Belli, SC ’15, rules 3 and 4; P. J. Fleming, J. J. Wallace, CACM 29 (1986). */
public final class WrongMean implements Rule {

    private static final RuleFacts FACTS =
            RuleFacts.of("wrong-mean", Group.REPEATS, Severity.WITHHOLD).withLimit("1 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            for (Measurand part : Parts.shown(study, run.run())) {
                checkDecibels(study, run, part, report);
            }
        }
        for (LevelSummary summary : study.evidence().summaries()) {
            if (summary.mean().isPresent()
                    && study.measurand(summary.measurand()).reduction() instanceof Reduction.Derived derived
                    && derived.operation() == Reduction.Operation.QUOTIENT) {
                checkQuotient(study, summary, derived, report);
            }
        }
    }

    private static void checkDecibels(StudyView study, LevelRun run, Measurand part, Report report) {
        boolean linear = part.unit().kind() == UnitKind.LEVEL
                && part.reduction() instanceof Reduction.OfColumn of
                && (of.statistic() instanceof Statistic.Mean || of.statistic() instanceof Statistic.Settled);
        if (linear) {
            Method method = study.method(run.run());
            report.at(
                            method.places().of("measurands/" + part.id() + "/reduce"),
                            Subject.study(study.study().id()))
                    .meaning(report.say("rules-repeats.wrong-mean.meaning"))
                    .found(
                            report.say("rules-repeats.wrong-mean.found", part.title()),
                            report.say("rules-repeats.wrong-mean.remedy"));
        }
    }

    private static void checkQuotient(StudyView study, LevelSummary summary, Reduction.Derived derived, Report report) {
        List<LevelRun> runs = Repeats.inOrder(study, summary);
        if (runs.size() < 2) {
            return;
        }
        Method method = study.method(runs.get(0).run());
        boolean ratio = method.measurands()
                .get(derived.first())
                .unit()
                .dimension()
                .equals(method.measurands().get(derived.second()).unit().dimension());
        double[] values = Repeats.values(runs, summary.measurand());
        OptionalDouble proper = ratio ? geometric(values) : ofTotals(runs, derived, values);
        double arithmetic = Sample.of(values).mean();
        Report.Applied limit = report.limit(method, Unit.ONE);
        if (proper.isPresent()
                && Math.abs(arithmetic - proper.getAsDouble()) > limit.value() * Math.abs(proper.getAsDouble())) {
            report.at(
                            study.study()
                                    .places()
                                    .of("levels/" + study.study().levels().indexOf(summary.level())),
                            Subject.study(study.study().id()))
                    .against(limit.limit())
                    .meaning(
                            ratio
                                    ? report.say("rules-repeats.wrong-mean.meaning-2")
                                    : report.say("rules-repeats.wrong-mean.meaning-3"))
                    .found(
                            report.say(
                                    "rules-repeats.wrong-mean.found-2",
                                    summary.level(),
                                    study.measurand(summary.measurand()).title(),
                                    arithmetic,
                                    ratio
                                            ? report.say("rules-repeats.wrong-mean.found-part")
                                            : report.say("rules-repeats.wrong-mean.found-part-2"),
                                    proper.getAsDouble()),
                            ratio
                                    ? report.say("rules-repeats.wrong-mean.remedy-2")
                                    : report.say("rules-repeats.wrong-mean.remedy-3"));
        }
    }

    /** Absent unless all are positive. */
    private static OptionalDouble geometric(double[] values) {
        double logs = 0;
        for (double value : values) {
            if (!(value > 0)) {
                return OptionalDouble.empty();
            }
            logs += StrictMath.log(value);
        }
        return OptionalDouble.of(StrictMath.exp(logs / values.length));
    }

    /** All that was counted ÷ all that it took, in the unit of the values: the mean weighted by the denominators. */
    private static OptionalDouble ofTotals(List<LevelRun> runs, Reduction.Derived derived, double[] values) {
        double weighted = 0;
        double weights = 0;
        for (int i = 0; i < values.length; i++) {
            OptionalDouble weight =
                    runs.get(i).measured().value(derived.second()).number();
            if (weight.isEmpty() || !(weight.getAsDouble() > 0)) {
                return OptionalDouble.empty();
            }
            weighted += values[i] * weight.getAsDouble();
            weights += weight.getAsDouble();
        }
        return weighted != 0 ? OptionalDouble.of(weighted / weights) : OptionalDouble.empty();
    }
}
