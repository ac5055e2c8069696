package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Method;
import org.evenhand.model.Severity;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** A run that differs from what its method asks for says so. Source: ISO/IEC 17025:2017, 7.8.2.1 n. */
public final class DeviationUndeclared implements Rule {

    private static final Unit SECOND = Unit.of("s");

    private static final RuleFacts FACTS = RuleFacts.of("deviation-undeclared", Group.RECORD, Severity.WITHHOLD)
            .withLimit("5 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            Method method = study.method(run.run());
            method.runLength()
                    .filter(l -> !isDeclared(run, "run-length"))
                    .ifPresent(l -> checkLength(study, run, l, report));
            method.settings().forEach((name, value) -> {
                if (!isDeclared(run, name)) {
                    checkSetting(study, run, name, value, report);
                }
            });
        }
    }

    private static void checkLength(StudyView study, LevelRun run, Quantity wanted, Report report) {
        if (run.run().length().isEmpty()) {
            report.at(run.run().places().of("run"), study.subject(run))
                    .notCheckable("length", report.say("rules-record.deviation-undeclared.give"));
            return;
        }
        Quantity length = run.run().length().get();
        Report.Applied limit = report.limit(study.method(run.run()), Unit.ONE);
        double wantedS = wanted.in(SECOND);
        if (Math.abs(length.in(SECOND) - wantedS) <= wantedS * limit.value()) {
            return;
        }
        report.at(run.run().places().of("length"), study.subject(run))
                .against(limit.limit())
                .meaning(report.say("rules-record.deviation-undeclared.meaning"))
                .found(
                        report.say(
                                "rules-record.deviation-undeclared.found",
                                run.run().id(),
                                length,
                                wanted),
                        report.say("rules-record.deviation-undeclared.remedy"));
    }

    private static void checkSetting(StudyView study, LevelRun run, String name, String wanted, Report report) {
        String set = run.run().settings().get(name);
        if (set == null) {
            report.at(run.run().places().of("settings"), study.subject(run))
                    .notCheckable("settings/" + name, report.say("rules-record.deviation-undeclared.give-2", wanted));
        } else if (!isSame(set, wanted)) {
            report.at(run.run().places().of("settings/" + name), study.subject(run))
                    .meaning(report.say("rules-record.deviation-undeclared.meaning"))
                    .found(
                            report.say(
                                    "rules-record.deviation-undeclared.found-2",
                                    run.run().id(),
                                    name,
                                    set,
                                    wanted),
                            report.say("rules-record.deviation-undeclared.remedy-2", name));
        }
    }

    /** 1.8 GHz and 1800 MHz are one setting. */
    private static boolean isSame(String set, String wanted) {
        try {
            Quantity a = Quantity.parseCount(set);
            Quantity b = Quantity.parseCount(wanted);
            return a.unit().convertsTo(b.unit()) && a.in(b.unit()) == b.in(b.unit());
        } catch (MisreadException e) {
            return set.equals(wanted); // words, then
        }
    }

    private static boolean isDeclared(LevelRun run, String from) {
        return run.run().deviations().stream().anyMatch(d -> d.from().equals(from));
    }
}
