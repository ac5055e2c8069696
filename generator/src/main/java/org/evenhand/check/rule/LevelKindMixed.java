package org.evenhand.check.rule;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Instrument;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.quantity.Unit;

/** Levels are compared only if they are of one kind: power or pressure, weighting, distance. */
public final class LevelKindMixed implements Rule {

    private static final Unit METRE = Unit.of("m");

    private static final RuleFacts FACTS =
            RuleFacts.of("level-kind-mixed", Group.SOUND, Severity.REFUSE).withLimit("5 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (StudyView.Sides sides : study.sides()) {
            Optional<Parts.Source> source = Parts.source(study.method(sides), sides.measurand());
            if (source.isPresent() && Levels.isLevel(sides.measurand())) {
                boolean pressure = checkMeters(study, sides, source.get(), report);
                if (pressure) {
                    checkDistance(study, sides, report);
                }
            }
        }
    }

    /** Whether any of the levels is a pressure, which depends on the distance; a sound power does not. */
    private static boolean checkMeters(StudyView study, StudyView.Sides sides, Parts.Source source, Report report) {
        Map<String, LevelRun> kinds = new TreeMap<>();
        boolean pressure = false;
        for (LevelRun run : sides.runs()) {
            Optional<Instrument> meter = study.instrument(run.run(), source.name());
            if (meter.isEmpty()) {
                report.at(run.run().places().of("instruments"), study.subject(run))
                        .notCheckable(
                                "instruments/" + source.name(),
                                report.say("rules-sound.level-kind-mixed.give", source.name()));
                pressure = true;
                continue;
            }
            boolean power = meter.get().reads().toLowerCase(Locale.ROOT).contains("sound power");
            pressure |= !power;
            if (meter.get().weighting().isEmpty()) {
                report.at(
                                meter.get().places().of("instrument"),
                                Subject.study(study.study().id()))
                        .notCheckable("weighting", report.say("rules-sound.level-kind-mixed.give-2"));
            } else {
                String kind = report.say(
                        "rules-sound.level-kind-mixed.kind",
                        report.say(
                                power ? "rules-sound.level-kind-mixed.power" : "rules-sound.level-kind-mixed.pressure"),
                        meter.get().weighting().get().toString());
                kinds.putIfAbsent(kind, run);
            }
        }
        if (kinds.size() > 1) {
            String words = kinds.entrySet().stream()
                    .map(e -> report.say(
                            "rules-sound.level-kind-mixed.in-run",
                            e.getKey(),
                            e.getValue().run().id()))
                    .collect(Collectors.joining("; "));
            report.at(study.place(sides), study.subject(sides))
                    .meaning(report.say("rules-sound.level-kind-mixed.meaning"))
                    .found(
                            report.say("rules-sound.level-kind-mixed.found", words),
                            report.say("rules-sound.level-kind-mixed.remedy"));
        }
        return pressure;
    }

    private static void checkDistance(StudyView study, StudyView.Sides sides, Report report) {
        LevelRun nearest = null;
        LevelRun farthest = null;
        for (LevelRun run : sides.runs()) {
            OptionalDouble distance = distanceM(run);
            if (distance.isEmpty()) {
                report.at(run.run().places().of("run"), study.subject(run))
                        .notCheckable("distance", report.say("rules-sound.level-kind-mixed.give-3"));
                continue;
            }
            nearest = nearest == null
                            || distance.getAsDouble() < distanceM(nearest).getAsDouble()
                    ? run
                    : nearest;
            farthest = farthest == null
                            || distance.getAsDouble() > distanceM(farthest).getAsDouble()
                    ? run
                    : farthest;
        }
        if (nearest == null) {
            return;
        }
        Report.Applied limit = report.limit(study.method(sides), Unit.ONE);
        double near = distanceM(nearest).getAsDouble();
        double far = distanceM(farthest).getAsDouble();
        if (far > near * (1 + limit.value())) {
            report.at(study.place(sides), study.subject(sides))
                    .against(limit.limit())
                    .meaning(report.say("rules-sound.level-kind-mixed.meaning-2"))
                    .found(
                            report.say(
                                    "rules-sound.level-kind-mixed.found-2",
                                    near,
                                    nearest.run().id(),
                                    far,
                                    farthest.run().id()),
                            report.say("rules-sound.level-kind-mixed.remedy-2"));
        }
    }

    private static OptionalDouble distanceM(LevelRun run) {
        return Stated.circumstance(run.run(), "distance", METRE);
    }
}
