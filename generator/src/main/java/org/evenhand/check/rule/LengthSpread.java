package org.evenhand.check.rule;

import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** Runs of unequal length are not held against each other: the longer one had more time to get hot, or to fail. */
public final class LengthSpread implements Rule {

    private static final Unit SECOND = Unit.of("s");

    private static final RuleFacts FACTS =
            RuleFacts.of("length-spread", Group.TIME, Severity.REFUSE).withLimit("5 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (StudyView.Sides sides : study.sides()) {
            LevelRun shortest = null;
            LevelRun longest = null;
            for (LevelRun run : sides.runs()) {
                OptionalDouble length = lengthS(run);
                if (length.isEmpty()) {
                    boolean expected = study.method(run.run()).runLength().isPresent();
                    if (expected) {
                        report.at(run.run().places().of("run"), study.subject(run))
                                .notCheckable("length", report.say("rules-time.length-spread.give"));
                    }
                    continue;
                }
                if (shortest == null || length.getAsDouble() < lengthS(shortest).getAsDouble()) {
                    shortest = run;
                }
                if (longest == null || length.getAsDouble() > lengthS(longest).getAsDouble()) {
                    longest = run;
                }
            }
            if (shortest != null) {
                compare(study, sides, shortest, longest, report);
            }
        }
    }

    private static void compare(
            StudyView study, StudyView.Sides sides, LevelRun shortest, LevelRun longest, Report report) {
        Report.Applied limit = report.limit(study.method(shortest.run()), Unit.ONE);
        double least = lengthS(shortest).getAsDouble();
        double most = lengthS(longest).getAsDouble();
        if (most <= least * (1 + limit.value())) {
            return;
        }
        report.at(study.place(sides), study.subject(sides))
                .against(limit.limit())
                .meaning(report.say("rules-time.length-spread.meaning"))
                .found(
                        report.say(
                                "rules-time.length-spread.found",
                                shortest.run().id(),
                                written(shortest),
                                longest.run().id(),
                                written(longest)),
                        report.say("rules-time.length-spread.remedy"));
    }

    private static String written(LevelRun run) {
        return run.run().length().map(Quantity::toString).orElse("");
    }

    private static OptionalDouble lengthS(LevelRun run) {
        return run.run().length().isPresent()
                ? OptionalDouble.of(run.run().length().get().in(SECOND))
                : OptionalDouble.empty();
    }
}
