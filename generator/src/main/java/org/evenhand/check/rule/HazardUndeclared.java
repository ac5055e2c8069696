package org.evenhand.check.rule;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Boundary;
import org.evenhand.model.Hazard;
import org.evenhand.model.Item;
import org.evenhand.model.Method;
import org.evenhand.model.Severity;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/** Whoever repeats a test must be warned of what it touches. */
public final class HazardUndeclared implements Rule {

    private static final Unit CELSIUS = Unit.of("°C");
    private static final Pattern BATTERY = Pattern.compile("\\bbatter(?:y|ies)\\b", Pattern.CASE_INSENSITIVE);

    private static final RuleFacts FACTS = RuleFacts.of("hazard-undeclared", Group.RECORD, Severity.WITHHOLD)
            .withLimit("60 °C", RuleFacts.COMMON_PRACTICE);

    /** What tells, of a run, that a hazard is there. */
    @FunctionalInterface
    private interface Sign {
        Optional<String> of(StudyView study, LevelRun run, Report report);
    }

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (String id : study.study().methods()) {
            Method method = study.folder().methods().get(id);
            List<LevelRun> runs = study.runs().stream()
                    .filter(r -> r.run().method().equals(id))
                    .toList();
            Report.Applied hot = report.limit(method, CELSIUS);
            look(study, method, Hazard.MAINS, runs, HazardUndeclared::mains, report);
            look(study, method, Hazard.HOT_SURFACE, runs, (s, r, words) -> hot(s, r, hot.value(), words), report);
            look(study, method, Hazard.BATTERY, runs, HazardUndeclared::battery, report);
            look(study, method, Hazard.RAISED_VOLTAGE, runs, HazardUndeclared::raisedVoltage, report);
        }
    }

    private static void look(
            StudyView study, Method method, Hazard hazard, List<LevelRun> runs, Sign sign, Report report) {
        if (method.hazards().contains(hazard)) {
            return;
        }
        String word = hazard.name().toLowerCase(Locale.ROOT).replace('_', '-');
        runs.stream()
                .flatMap(r -> sign.of(study, r, report).stream())
                .findFirst()
                .ifPresent(why -> report.at(method.places().of("hazards"), study.subject())
                        .meaning(report.say("rules-record.hazard-undeclared.meaning"))
                        .found(
                                report.say("rules-record.hazard-undeclared.found", method.title(), word, why),
                                report.say("rules-record.hazard-undeclared.remedy", word)));
    }

    private static Optional<String> mains(StudyView study, LevelRun run, Report report) {
        return run.run().instruments().values().stream()
                .sorted()
                .map(id -> study.folder().instruments().get(id))
                .filter(i -> i.boundary().filter(Boundary.MAINS::equals).isPresent())
                .map(i -> report.say(
                        "rules-record.hazard-undeclared.mains",
                        i.id(),
                        run.run().id()))
                .findFirst();
    }

    private static Optional<String> hot(StudyView study, LevelRun run, double limitC, Report report) {
        return study.method(run.run()).records().entrySet().stream()
                .filter(e ->
                        e.getValue().kind() == UnitKind.POINT && e.getValue().convertsTo(CELSIUS))
                .flatMap(e -> run.measured().log().flatMap(l -> l.column(e.getKey())).stream()
                        .map(c -> Map.entry(
                                e.getKey(), e.getValue().to(CELSIUS).fast().apply(c.highest()))))
                .filter(e -> e.getValue() > limitC)
                .map(e -> report.say(
                        "rules-record.hazard-undeclared.hot",
                        e.getKey(),
                        e.getValue(),
                        run.run().id()))
                .findFirst();
    }

    private static Optional<String> battery(StudyView study, LevelRun run, Report report) {
        Item item = study.item(run.run());
        if (BATTERY.matcher(item.kind()).find()) {
            return Optional.of(report.say("rules-record.hazard-undeclared.is", item.name(), item.kind()));
        }
        return run.run().settings().entrySet().stream()
                .filter(e -> BATTERY.matcher(e.getValue()).find())
                .map(e -> report.say(
                        "rules-record.hazard-undeclared.has",
                        run.run().id(),
                        e.getKey(),
                        report.words().number(e.getValue())))
                .findFirst();
    }

    /** A voltage that is set above what the maker states, or set at all beside a clock above what the maker states. */
    private static Optional<String> raisedVoltage(StudyView study, LevelRun run, Report report) {
        Item item = study.item(run.run());
        boolean clockRaised =
                isAbove(run.run().settings().get("clock"), item.limits().get("clock"));
        return run.run().settings().entrySet().stream()
                .filter(e -> e.getKey().endsWith("voltage"))
                .filter(e -> clockRaised || isAbove(e.getValue(), item.limits().get(e.getKey())))
                .map(e -> report.say(
                        "rules-record.hazard-undeclared.has",
                        run.run().id(),
                        e.getKey(),
                        report.words().number(e.getValue())))
                .findFirst();
    }

    private static boolean isAbove(String set, Quantity limit) {
        if (set == null || limit == null) {
            return false;
        }
        try {
            return Quantity.parse(set, limit.unit()).in(limit.unit()) > limit.in(limit.unit());
        } catch (MisreadException e) {
            return false; // a word such as "as found"
        }
    }
}
