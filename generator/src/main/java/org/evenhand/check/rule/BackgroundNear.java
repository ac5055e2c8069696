package org.evenhand.check.rule;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.LogFacts.ColumnFacts;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Place;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;

/** A level is known only as far as it stands out of its background. Source: ISO 3744:2010 (6 dB), ISO 3746:2010, 8.3.3 (3 dB). */
public final class BackgroundNear implements Rule {

    private static final Unit DECIBEL = Unit.of("dB");
    private static final double LEAST_DB = 3;
    private static final double ROUNDING_DB = 1e-9;

    private static final RuleFacts FACTS =
            RuleFacts.of("background-near", Group.SOUND, Severity.CAVEAT).withLimit("6 dB", "iso-3744");

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            Method method = study.method(run.run());
            for (Measurand measurand : Levels.shown(study, run)) {
                Optional<Parts.Source> source = Parts.source(method, measurand);
                OptionalDouble background = Stated.circumstance(run.run(), "background", measurand.unit());
                OptionalDouble together = source.isPresent() ? together(run, source.get()) : OptionalDouble.empty();
                if (background.isPresent() && together.isPresent()) {
                    check(study, run, measurand, together.getAsDouble(), background.getAsDouble(), report);
                }
            }
        }
    }

    /** What the meter showed, the background in it. */
    private static OptionalDouble together(LevelRun run, Parts.Source source) {
        Optional<ColumnFacts> column = Stated.column(run, source.name());
        return column.isPresent()
                ? OptionalDouble.of(column.get().mean())
                : Stated.reading(run.run(), source.name(), source.unit());
    }

    private static void check(
            StudyView study, LevelRun run, Measurand measurand, double levelDb, double backgroundDb, Report report) {
        Report.Applied limit = report.limit(study.method(run.run()), DECIBEL);
        double difference = levelDb - backgroundDb;
        if (difference >= limit.value() - ROUNDING_DB) {
            return;
        }
        boolean bound = difference < LEAST_DB - ROUNDING_DB;
        String message = report.say(
                "rules-sound.background-near.found",
                run.run().id(),
                levelDb,
                backgroundDb,
                measurand.unit().symbol(),
                bound
                        ? report.say("rules-sound.background-near.bound")
                        : report.say("rules-sound.background-near.survey"));
        Place place = run.run().places().of("background");
        report.at(place, study.subject(run))
                .against(limit.limit())
                .meaning(
                        bound
                                ? report.say("rules-sound.background-near.meaning")
                                : report.say("rules-sound.background-near.meaning-2"))
                .found(message, report.say("rules-sound.background-near.remedy"));
        for (StudyView.Sides sides : study.sides()) {
            if (bound && sides.measurand().equals(measurand) && sides.runs().contains(run)) {
                report.at(place, study.subject(sides))
                        .as(Severity.REFUSE)
                        .against(report.limit("3 dB", "iso-3746"))
                        .meaning(report.say("rules-sound.background-near.meaning-3"))
                        .found(message, report.say("rules-sound.background-near.remedy"));
            }
        }
    }
}
