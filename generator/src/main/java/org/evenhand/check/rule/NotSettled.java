package org.evenhand.check.rule;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Limit;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Severity;

/**
 * What is still getting hotter has no temperature yet. The method's criterion applies where it has one; else 3 K in 30 min,
 * after IEC 62368-1, B.1.6.
 */
public final class NotSettled implements Rule {

    private static final double WINDOW_S = 30 * 60;

    private static final RuleFacts FACTS =
            RuleFacts.of("not-settled", Group.TIME, Severity.CAVEAT).withLimit("3 K", "iec-62368-settled");

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        Set<String> refused = new HashSet<>();
        for (StudyView.Sides sides : study.sides()) {
            for (Measurand measurand : Shown.of(study, sides)) {
                refuse(study, sides, measurand, refused, report);
            }
        }
        for (LevelRun run : study.countingRuns()) {
            Set<String> columns = new HashSet<>();
            for (Measurand measurand : Shown.of(study, run)) {
                if (isUnsettled(run, measurand)) {
                    if (!refused.contains(key(run, measurand))) {
                        caveat(study, run, measurand, measurand, Reach.of(study, run, measurand), report);
                    }
                } else if (ofCourse(measurand) && columns.add(column(measurand))) {
                    check(study, run, measurand, report);
                }
            }
        }
    }

    private static void refuse(
            StudyView study, StudyView.Sides sides, Measurand measurand, Set<String> refused, Report report) {
        List<LevelRun> unsettled =
                sides.runs().stream().filter(r -> isUnsettled(r, measurand)).toList();
        if (unsettled.isEmpty()) {
            return;
        }
        unsettled.forEach(r -> refused.add(key(r, measurand)));
        LevelRun first = unsettled.get(0);
        report.at(study.place(sides), study.subject(sides))
                .as(Severity.REFUSE)
                .against(criterion(report, study.method(first.run()), measurand))
                .meaning(report.say("rules-time.not-settled.meaning"))
                .found(
                        report.say(
                                "rules-time.not-settled.found",
                                unsettled.size(),
                                sides.runs().size(),
                                measurand.title(),
                                first.run().id(),
                                why(first, measurand, report)),
                        report.say("rules-time.not-settled.remedy"));
    }

    /** @param settled the measurand that did not settle; another than the one concerned where it shares the column */
    private static void caveat(
            StudyView study,
            LevelRun run,
            Measurand concerned,
            Measurand settled,
            Set<MeasurandId> reach,
            Report report) {
        report.at(run.run().places().of("log"), study.subject(run).on(reach))
                .against(criterion(report, study.method(run.run()), settled))
                .meaning(report.say("rules-time.not-settled.meaning-2"))
                .found(
                        report.say(
                                "rules-time.not-settled.found-2",
                                concerned.title(),
                                run.run().id(),
                                why(run, settled, report)),
                        report.say("rules-time.not-settled.remedy-2"));
    }

    /** A temperature that is read from a column as it goes, by the method's criterion for the column or the default. */
    private static void check(StudyView study, LevelRun run, Measurand measurand, Report report) {
        Method method = study.method(run.run());
        // What is told once of a column holds for all that is read from it.
        Set<MeasurandId> reach = Reach.of(study, run, column(measurand));
        Optional<Measurand> criterion = method.measurands().values().stream()
                .filter(m -> isSettled(m) && column(m).equals(column(measurand)))
                .findFirst();
        if (criterion.isPresent()) {
            if (isUnsettled(run, criterion.get())) {
                caveat(study, run, measurand, criterion.get(), reach, report);
            }
            return;
        }
        Optional<Course> course = Course.of(study, run, column(measurand), Ambient.CELSIUS);
        if (course.isEmpty()) {
            return;
        }
        Report.Applied limit = report.limit(method, Heat.KELVIN);
        double lengthS = course.get().lastS() - course.get().firstS();
        // Of a shorter run its second half: what rises too far within less than the window does so within the window
        // too.
        double windowS = lengthS >= WINDOW_S ? WINDOW_S : lengthS / 2;
        double risenK = course.get()
                        .slopePerS(course.get().lastS() - windowS, course.get().lastS())
                * windowS;
        if (!(risenK > limit.value())) {
            return;
        }
        report.at(run.run().places().of("log"), study.subject(run).on(reach))
                .against(limit.limit())
                .meaning(report.say("rules-time.not-settled.meaning-2"))
                .found(
                        report.say(
                                "rules-time.not-settled.found-3",
                                measurand.title(),
                                column(measurand),
                                risenK,
                                windowS / 60,
                                run.run().id()),
                        report.say("rules-time.not-settled.remedy-2"));
    }

    private static boolean isSettled(Measurand measurand) {
        return measurand.reduction() instanceof Reduction.OfColumn of && of.statistic() instanceof Statistic.Settled;
    }

    private static boolean isUnsettled(LevelRun run, Measurand measurand) {
        return isSettled(measurand)
                && run.measured().value(measurand.id()) instanceof RunValue.Missing missing
                && missing.rule().equals(FACTS.id());
    }

    private static boolean ofCourse(Measurand measurand) {
        return measurand.reduction() instanceof Reduction.OfColumn of
                && Heat.isUnit(measurand.unit())
                && (of.statistic() instanceof Statistic.Maximum
                        || of.statistic() instanceof Statistic.Mean
                        || of.statistic() instanceof Statistic.Median
                        || of.statistic() instanceof Statistic.Percentile);
    }

    private static String column(Measurand measurand) {
        return ((Reduction.OfColumn) measurand.reduction()).column();
    }

    private static String why(LevelRun run, Measurand measurand, Report report) {
        return ((RunValue.Missing) run.measured().value(measurand.id())).why().in(report.words());
    }

    private static Limit criterion(Report report, Method method, Measurand measurand) {
        Statistic.Settled settled = (Statistic.Settled) ((Reduction.OfColumn) measurand.reduction()).statistic();
        return new Limit(
                report.say(
                        "rule-origin.in-time",
                        settled.settledBelow().toString(),
                        settled.window().toString()),
                report.ofMethod(method));
    }

    private static String key(LevelRun run, Measurand measurand) {
        return run.run().study() + "/" + run.run().id() + "/" + measurand.id();
    }
}
