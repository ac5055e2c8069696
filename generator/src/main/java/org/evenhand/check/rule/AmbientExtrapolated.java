package org.evenhand.check.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Reduction;
import org.evenhand.model.Severity;
import org.evenhand.prose.Mention;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/** What was found in one room says little of another that is much warmer or colder. */
public final class AmbientExtrapolated implements Rule {

    private static final Unit KELVIN = Unit.of("K");

    private static final RuleFacts FACTS = RuleFacts.of("ambient-extrapolated", Group.PROSE, Severity.CAVEAT)
            .withLimit("5 K", RuleFacts.COMMON_PRACTICE);

    /** Words that make a temperature one of the surroundings. */
    private static final Pattern SURROUNDINGS = Pattern.compile(
            "\\b(ambient|room|outside|outdoors|surroundings|weather|summer|winter|attic|shade|sun|air|umgebung|raum|draußen)\\b");

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        LevelRun any = null;
        for (LevelRun run : study.countingRuns()) {
            OptionalDouble ambient = Ambient.of(study, run);
            if (ambient.isPresent()) {
                any = run;
                lowest = Math.min(lowest, ambient.getAsDouble());
                highest = Math.max(highest, ambient.getAsDouble());
            }
        }
        if (any == null) {
            return; // without an ambient temperature ambient-missing speaks
        }
        Report.Applied limit = report.limit(study.method(any.run()), KELVIN);
        figures(study, lowest, highest, limit, report);
        for (Mention mention : study.texts().mentions()) {
            if (!isOfSurroundings(mention)) {
                continue;
            }
            double celsius = mention.unit().to(Ambient.CELSIUS).apply(mention.value());
            if (celsius < lowest - limit.value() || celsius > highest + limit.value()) {
                report.at(mention.place(), study.subject())
                        .against(limit.limit())
                        .meaning(report.say("rules-prose.ambient-extrapolated.meaning"))
                        .found(
                                report.say(
                                        "rules-prose.ambient-extrapolated.found", mention.written(), lowest, highest),
                                report.say("rules-prose.ambient-extrapolated.remedy"));
            }
        }
    }

    /** A highest ambient temperature is itself a statement for surroundings in which nothing was tested. */
    private static void figures(StudyView study, double lowest, double highest, Report.Applied limit, Report report) {
        Map<MeasurandId, List<String>> far = new LinkedHashMap<>();
        for (LevelSummary summary : study.evidence().summaries()) {
            MeasurandId id = summary.measurand();
            if (study.measurand(id).reduction() instanceof Reduction.AmbientLimit
                    && summary.mean().isPresent()) {
                double celsius = summary.unit()
                        .to(Ambient.CELSIUS)
                        .fast()
                        .apply(summary.mean().getAsDouble());
                if (celsius < lowest - limit.value() || celsius > highest + limit.value()) {
                    far.computeIfAbsent(id, i -> new ArrayList<>())
                            .add(report.say(
                                    "rules-prose.ambient-extrapolated.at",
                                    (double) Math.round(celsius),
                                    summary.level()));
                }
            }
        }
        far.forEach((id, figures) -> report.at(
                        study.folder().methods().get(id.method()).places().of("measurands/" + id.measurand()),
                        study.subject().on(id))
                .against(limit.limit())
                .meaning(report.say("rules-prose.ambient-extrapolated.meaning-2"))
                .found(
                        report.say(
                                "rules-prose.ambient-extrapolated.found-2",
                                study.measurand(id).title(),
                                String.join(", ", figures),
                                lowest,
                                highest),
                        report.say("rules-prose.ambient-extrapolated.remedy-2")));
    }

    private static boolean isOfSurroundings(Mention mention) {
        return mention.unit().kind() == UnitKind.POINT
                && SURROUNDINGS
                        .matcher(mention.sentence().toLowerCase(Locale.ROOT))
                        .find();
    }
}
