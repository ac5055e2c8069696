package org.evenhand.check.rule;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.LogFacts.ColumnFacts;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;

/** A supply whose voltage sags slows down what it feeds, and the item gets the blame. */
public final class VoltageSag implements Rule {

    /** The names under which a log holds the voltage at the input. */
    private static final List<String> INPUTS = List.of("voltage", "input-voltage", "supply-voltage");

    private static final Unit VOLT = Unit.of("V");

    private static final RuleFacts FACTS =
            RuleFacts.of("voltage-sag", Group.POWER, Severity.CAVEAT).withLimit("5 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            for (String column : INPUTS) {
                Unit unit = study.method(run.run()).records().get(column);
                Optional<ColumnFacts> facts = Stated.column(run, column);
                if (unit != null && unit.convertsTo(VOLT) && facts.isPresent()) {
                    check(
                            study,
                            run,
                            column,
                            unit.to(VOLT).fast().apply(facts.get().lowest()),
                            report);
                }
            }
        }
    }

    private static void check(StudyView study, LevelRun run, String column, double lowestV, Report report) {
        OptionalDouble setting = Stated.setting(run.run(), "supply-voltage", VOLT);
        OptionalDouble nominal =
                setting.isPresent() ? setting : Stated.limit(study.item(run.run()), "nominal-voltage", VOLT);
        if (nominal.isEmpty()) {
            report.at(run.run().places().of("settings"), study.subject(run))
                    .notCheckable("settings/supply-voltage", report.say("rules-power.voltage-sag.give"));
            return;
        }
        Report.Applied limit = report.limit(study.method(run.run()), Unit.ONE);
        double sag = 1 - lowestV / nominal.getAsDouble();
        if (sag > limit.value() * (1 + 1e-9)) {
            report.at(run.run().places().of("log"), study.subject(run))
                    .against(limit.limit())
                    .meaning(report.say("rules-power.voltage-sag.meaning"))
                    .found(
                            report.say(
                                    "rules-power.voltage-sag.found", column, lowestV, 100 * sag, nominal.getAsDouble()),
                            report.say("rules-power.voltage-sag.remedy"));
        }
    }
}
