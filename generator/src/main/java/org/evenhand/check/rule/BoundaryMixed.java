package org.evenhand.check.rule;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Boundary;
import org.evenhand.model.Instrument;
import org.evenhand.model.Method;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;

/** Power at the wall, at the input, at a rail, and as a chip estimates it: four measurands, compared only like with like. */
public final class BoundaryMixed implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("boundary-mixed", Group.POWER, Severity.REFUSE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (StudyView.Sides sides : study.sides()) {
            Method method = study.method(sides);
            for (Parts.Source source : Parts.ofPower(method, Parts.of(method, sides.measurand()))) {
                check(study, sides, source, report);
            }
        }
    }

    private static void check(StudyView study, StudyView.Sides sides, Parts.Source source, Report report) {
        Map<Boundary, LevelRun> seen = new EnumMap<>(Boundary.class);
        for (LevelRun run : sides.runs()) {
            Optional<Instrument> instrument = study.instrument(run.run(), source.name());
            if (instrument.isEmpty()) {
                report.at(run.run().places().of("instruments"), study.subject(run))
                        .notCheckable(
                                "instruments/" + source.name(),
                                report.say("rules-power.boundary-mixed.give", source.name()));
            } else if (instrument.get().boundary().isEmpty()) {
                report.at(
                                instrument.get().places().of("instrument"),
                                Subject.study(study.study().id()))
                        .notCheckable("boundary", report.say("rules-power.boundary-mixed.give-2"));
            } else {
                seen.putIfAbsent(instrument.get().boundary().get(), run);
            }
        }
        if (seen.size() > 1) {
            String places = seen.entrySet().stream()
                    .map(e -> report.say(
                            "rules-power.boundary-mixed.in-run",
                            word(e.getKey()),
                            e.getValue().run().id()))
                    .collect(Collectors.joining(", "));
            report.at(study.place(sides), study.subject(sides))
                    .meaning(report.say("rules-power.boundary-mixed.meaning"))
                    .found(
                            report.say("rules-power.boundary-mixed.found", source.name(), places),
                            report.say("rules-power.boundary-mixed.remedy"));
        }
    }

    private static String word(Boundary boundary) {
        return boundary.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
