package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.LogFacts;
import org.evenhand.model.Method;
import org.evenhand.model.RunOutcome;
import org.evenhand.page.Ids;
import org.evenhand.page.view.Condition;
import org.evenhand.page.words.Counting;
import org.evenhand.page.words.Names;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.words.Words;

/** The conditions of the runs: what the method asks for, and what was found, with its range. */
final class Conditions {

    private static final Unit CELSIUS = Unit.of("°C");
    private static final String AMBIENT = "ambient";

    private Conditions() {}

    static List<Condition> of(Answer answer) {
        List<LevelRun> runs = answer.counting();
        if (runs.isEmpty()) {
            return List.of();
        }
        List<Condition> conditions = new ArrayList<>();
        conditions.add(ambientStated(answer, runs));
        ambientLogged(answer, runs).ifPresent(conditions::add);
        conditions.add(length(answer, runs));
        Set<String> circumstances = new TreeSet<>();
        runs.forEach(r -> circumstances.addAll(r.run().circumstances().keySet()));
        circumstances.forEach(c -> conditions.add(circumstance(answer, runs, c)));
        answer.study().plannedRuns().ifPresent(p -> conditions.add(planned(answer, p)));
        return conditions;
    }

    private static Condition ambientStated(Answer answer, List<LevelRun> runs) {
        List<Method.AmbientRange> ranges = answer.methods().stream()
                .flatMap(m -> m.ambientRange().stream())
                .toList();
        Words words = answer.words();
        String required = ranges.size() == 1
                ? words.say(
                        "figure.range",
                        Names.quantity(ranges.get(0).lowest(), words),
                        Names.quantity(ranges.get(0).highest(), words))
                : "";
        List<Quantity> found = quantities(runs, r -> r.run().ambient());
        List<Quantity> all =
                found.stream().filter(q -> q.unit().convertsTo(CELSIUS)).toList();
        boolean inside = ranges.size() == 1
                && all.size() == runs.size()
                && all.stream()
                        .allMatch(q -> q.in(CELSIUS) >= ranges.get(0).lowest().in(CELSIUS)
                                && q.in(CELSIUS) <= ranges.get(0).highest().in(CELSIUS));
        String held = required.isEmpty() || all.size() < runs.size()
                ? ""
                : words.say(inside ? "condition.held" : "condition.left");
        return new Condition(
                words.say("condition.ambient-noted"),
                required,
                found(answer, all, runs, CELSIUS),
                verdict(answer, held, all, runs));
    }

    private static Optional<Condition> ambientLogged(Answer answer, List<LevelRun> runs) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        int logged = 0;
        for (LevelRun run : runs) {
            Optional<LogFacts.ColumnFacts> facts = run.measured().log().flatMap(l -> l.column(AMBIENT));
            Unit unit =
                    answer.folder().methods().get(run.run().method()).records().get(AMBIENT);
            if (facts.isPresent() && unit != null && unit.convertsTo(CELSIUS)) {
                low = Math.min(low, unit.to(CELSIUS).fast().apply(facts.get().lowest()));
                high = Math.max(high, unit.to(CELSIUS).fast().apply(facts.get().highest()));
                logged++;
            }
        }
        if (logged == 0) {
            return Optional.empty();
        }
        Words words = answer.words();
        String range =
                words.say("figure.range", tenths(low, CELSIUS.symbol(), words), tenths(high, CELSIUS.symbol(), words));
        return Optional.of(new Condition(
                words.say("condition.ambient-logged"),
                "",
                some(words.say("condition.samples", range), logged, runs.size(), words),
                words.say("condition.varied-by", tenths(high - low, "K", words))));
    }

    private static String tenths(double value, String unit, Words words) {
        return words.number(Figures.at(value, 1)) + Figures.NO_BREAK_SPACE + unit;
    }

    private static Condition length(Answer answer, List<LevelRun> runs) {
        List<Quantity> required = answer.methods().stream()
                .flatMap(m -> m.runLength().stream())
                .distinct()
                .toList();
        List<Quantity> found = quantities(runs, r -> r.run().length());
        Unit unit = found.isEmpty() ? Unit.of("s") : found.get(0).unit();
        String held = required.size() == 1 && found.size() == runs.size()
                ? answer.words()
                        .say(
                                found.stream()
                                                .allMatch(q -> q.in(unit)
                                                        == required.get(0).in(unit))
                                        ? "condition.held"
                                        : "condition.varied")
                : "";
        return new Condition(
                answer.words().say("condition.length"),
                required.size() == 1 ? Names.quantity(required.get(0), answer.words()) : "",
                found(answer, found, runs, unit),
                verdict(answer, held, found, runs));
    }

    private static Condition circumstance(Answer answer, List<LevelRun> runs, String name) {
        Set<String> values = new TreeSet<>(Ids.ORDER);
        List<Quantity> quantities = new ArrayList<>();
        int noted = 0;
        for (LevelRun run : runs) {
            String value = run.run().circumstances().get(name);
            if (value != null) {
                noted++;
                values.add(Names.value(value, answer.words()));
                parse(value).ifPresent(quantities::add);
            }
        }
        boolean asRange = values.size() > 1 && quantities.size() == noted;
        String found = asRange
                ? found(answer, quantities, runs, quantities.get(0).unit())
                : some(String.join(", ", values), noted, runs.size(), answer.words());
        boolean held = values.size() == 1 && noted == runs.size();
        return new Condition(
                Names.label(name), "", found, answer.words().say(held ? "condition.held" : "condition.varied"));
    }

    private static Condition planned(Answer answer, int planned) {
        List<String> done = new ArrayList<>();
        boolean all = true;
        for (String level : answer.study().levels()) {
            List<LevelRun> at = answer.evidence().runs().stream()
                    .filter(r -> r.level().equals(level))
                    .toList();
            long completed = at.stream()
                    .filter(r -> r.run().outcome() == RunOutcome.COMPLETED)
                    .count();
            all &= completed >= planned;
            String number = at.size() == completed
                    ? Long.toString(completed)
                    : answer.words().say("condition.of-begun", completed, at.size());
            done.add(answer.names().level(level) + ": " + number);
        }
        return new Condition(
                answer.words().say("condition.completed"),
                answer.words().say("condition.at-each-level", Counting.of(planned, "run", answer.words())),
                String.join("; ", done),
                answer.words().say(all ? "condition.held" : "condition.fewer"));
    }

    private static List<Quantity> quantities(List<LevelRun> runs, Function<LevelRun, Optional<Quantity>> field) {
        return runs.stream().flatMap(r -> field.apply(r).stream()).toList();
    }

    /** The range of what was noted: the quantity itself where all are equal. */
    private static String found(Answer answer, List<Quantity> found, List<LevelRun> runs, Unit unit) {
        if (found.isEmpty()) {
            return answer.words().say("condition.not-recorded");
        }
        Quantity low = found.get(0);
        Quantity high = found.get(0);
        for (Quantity quantity : found) {
            low = quantity.in(unit) < low.in(unit) ? quantity : low;
            high = quantity.in(unit) > high.in(unit) ? quantity : high;
        }
        String range = low.in(unit) == high.in(unit)
                ? Names.quantity(low, answer.words())
                : answer.words().say("figure.range", plain(answer, low), plain(answer, high));
        return some(range, found.size(), runs.size(), answer.words());
    }

    /** Without its uncertainty, which a range of several would only repeat. */
    private static String plain(Answer answer, Quantity quantity) {
        return Names.quantity(new Quantity(quantity.value(), Optional.empty(), quantity.unit()), answer.words());
    }

    private static String some(String found, int noted, int runs, Words words) {
        return noted == runs ? found : words.say("condition.noted-in", found, noted, runs);
    }

    private static String verdict(Answer answer, String held, List<Quantity> found, List<LevelRun> runs) {
        if (found.size() < runs.size()) {
            return answer.words().say(found.isEmpty() ? "condition.not-recorded" : "condition.in-part");
        }
        boolean equal = found.stream().map(Quantity::toString).distinct().count() == 1;
        return held.isEmpty() ? answer.words().say(equal ? "condition.held" : "condition.varied") : held;
    }

    private static Optional<Quantity> parse(String value) {
        try {
            return Optional.of(Quantity.parse(value));
        } catch (MisreadException e) {
            return Optional.empty();
        }
    }

    /** The conditions that matter in a quotation: the ambient range; empty if it was not noted. */
    static String ambient(Answer answer) {
        List<LevelRun> runs = answer.counting();
        List<Quantity> found = quantities(runs, r -> r.run().ambient()).stream()
                .filter(q -> q.unit().convertsTo(CELSIUS))
                .toList();
        return found.isEmpty() ? "" : answer.words().say("quote.ambient", found(answer, found, runs, CELSIUS));
    }
}
