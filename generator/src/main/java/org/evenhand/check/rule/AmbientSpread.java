package org.evenhand.check.rule;

import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Measurand;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/** Absolute temperatures are compared at one ambient temperature only; a rise above ambient bears more. */
public final class AmbientSpread implements Rule {

    private static final Unit KELVIN = Unit.of("K");

    private static final RuleFacts FACTS = RuleFacts.of("ambient-spread", Group.SURROUNDINGS, Severity.REFUSE)
            .withLimit("2 K", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (StudyView.Sides sides : study.sides()) {
            if (sides.runs().isEmpty()
                    || !study.method(sides.runs().get(0).run()).needsAmbient()) {
                continue;
            }
            LevelRun coolest = null;
            LevelRun warmest = null;
            for (LevelRun run : sides.runs()) {
                OptionalDouble ambient = Ambient.of(study, run);
                if (ambient.isEmpty()) {
                    report.at(run.run().places().of("run"), study.subject(run))
                            .notCheckable("ambient", report.say("rules-surroundings.ambient-spread.give"));
                    continue;
                }
                if (coolest == null
                        || ambient.getAsDouble() < Ambient.of(study, coolest).getAsDouble()) {
                    coolest = run;
                }
                if (warmest == null
                        || ambient.getAsDouble() > Ambient.of(study, warmest).getAsDouble()) {
                    warmest = run;
                }
            }
            if (coolest != null) {
                compare(study, sides, coolest, warmest, report);
            }
        }
    }

    private static void compare(
            StudyView study, StudyView.Sides sides, LevelRun coolest, LevelRun warmest, Report report) {
        Report.Applied limit = report.limit(study.method(coolest.run()), KELVIN);
        double low = Ambient.of(study, coolest).getAsDouble();
        double high = Ambient.of(study, warmest).getAsDouble();
        if (high - low <= limit.value()) {
            return;
        }
        Measurand measurand = sides.measurand();
        boolean rise = measurand.unit().dimension().equals(KELVIN.dimension())
                && measurand.unit().kind() == UnitKind.DIFFERENCE;
        report.at(study.place(sides), study.subject(sides))
                .as(rise ? Severity.NOTE : Severity.REFUSE)
                .against(limit.limit())
                .meaning(
                        rise
                                ? report.say("rules-surroundings.ambient-spread.meaning")
                                : report.say("rules-surroundings.ambient-spread.meaning-2"))
                .found(
                        report.say(
                                "rules-surroundings.ambient-spread.found",
                                low,
                                coolest.run().id(),
                                high,
                                warmest.run().id()),
                        report.say("rules-surroundings.ambient-spread.remedy"));
    }
}
