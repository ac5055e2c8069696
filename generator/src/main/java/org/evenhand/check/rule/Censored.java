package org.evenhand.check.rule;

import java.util.List;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.RunValue;
import org.evenhand.measure.RunValue.AtLeast;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Reduction;
import org.evenhand.model.Run;
import org.evenhand.model.Severity;

/** What did not happen within a run may happen after it. */
public final class Censored implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("censored", Group.TIME, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (MeasurandId id : study.study().measurands()) {
            for (String level : study.study().levels()) {
                List<LevelRun> runs = study.countingRuns().stream()
                        .filter(r -> r.level().equals(level) && r.value(id).isPresent())
                        .toList();
                List<LevelRun> without = runs.stream()
                        .filter(r -> r.value(id).get() instanceof AtLeast)
                        .toList();
                if (!without.isEmpty()) {
                    report(study, id, level, runs.size(), without, report);
                }
            }
        }
    }

    private static void report(
            StudyView study, MeasurandId id, String level, int runs, List<LevelRun> without, Report report) {
        Measurand measurand = study.measurand(id);
        LevelRun shortest = without.get(0);
        for (LevelRun run : without) {
            shortest =
                    bound(run, measurand).bound() < bound(shortest, measurand).bound() ? run : shortest;
        }
        AtLeast bound = bound(shortest, measurand);
        Run first = without.get(0).run();
        String field =
                measurand.reduction() instanceof Reduction.Reading reading ? "readings/" + reading.reading() : "log";
        report.at(first.places().of(field), study.subject(without.get(0)).on(id))
                .meaning(report.say("rules-time.censored.meaning"))
                .found(
                        report.say(
                                "rules-time.censored.found",
                                measurand.title(),
                                without.size(),
                                runs,
                                level,
                                bound.bound(),
                                bound.unit().symbol()),
                        report.say("rules-time.censored.remedy"));
    }

    private static AtLeast bound(LevelRun run, Measurand measurand) {
        RunValue value = run.measured().value(measurand.id());
        return (AtLeast) value;
    }
}
