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
        String required = ranges.size() == 1
                ? Names.quantity(ranges.get(0).lowest(), answer.words()) + " to "
                        + Names.quantity(ranges.get(0).highest(), answer.words())
                : "";
        List<Quantity> found = quantities(runs, r -> r.run().ambient());
        List<Quantity> all =
                found.stream().filter(q -> q.unit().convertsTo(CELSIUS)).toList();
        boolean inside = ranges.size() == 1
                && all.size() == runs.size()
                && all.stream()
                        .allMatch(q -> q.in(CELSIUS) >= ranges.get(0).lowest().in(CELSIUS)
                                && q.in(CELSIUS) <= ranges.get(0).highest().in(CELSIUS));
        String held = required.isEmpty() || all.size() < runs.size() ? "" : inside ? "held" : "left";
        return new Condition(
                "Ambient, as noted", required, found(answer, all, runs, CELSIUS), verdict(held, all, runs));
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
        String degrees = Figures.NO_BREAK_SPACE + CELSIUS.symbol();
        return Optional.of(new Condition(
                "Ambient, as logged",
                "",
                Figures.at(low, 1) + degrees + " to " + Figures.at(high, 1) + degrees + ", lowest and highest sample"
                        + some(logged, runs.size()),
                "varied by " + Figures.at(high - low, 1) + Figures.NO_BREAK_SPACE + "K"));
    }

    private static Condition length(Answer answer, List<LevelRun> runs) {
        List<Quantity> required = answer.methods().stream()
                .flatMap(m -> m.runLength().stream())
                .distinct()
                .toList();
        List<Quantity> found = quantities(runs, r -> r.run().length());
        Unit unit = found.isEmpty() ? Unit.of("s") : found.get(0).unit();
        String held = required.size() == 1 && found.size() == runs.size()
                ? found.stream().allMatch(q -> q.in(unit) == required.get(0).in(unit)) ? "held" : "varied"
                : "";
        return new Condition(
                "Length of a run",
                required.size() == 1 ? Names.quantity(required.get(0), answer.words()) : "",
                found(answer, found, runs, unit),
                verdict(held, found, runs));
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
                : String.join(", ", values) + some(noted, runs.size());
        return new Condition(
                Names.label(name), "", found, values.size() == 1 && noted == runs.size() ? "held" : "varied");
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
            String others = at.size() == completed ? "" : " of " + at.size() + " begun";
            done.add(answer.names().level(level) + ": " + completed + others);
        }
        return new Condition(
                "Completed runs",
                Counting.of(planned, "run", answer.words()) + " at each level",
                String.join("; ", done),
                all ? "held" : "fewer than planned");
    }

    private static List<Quantity> quantities(List<LevelRun> runs, Function<LevelRun, Optional<Quantity>> field) {
        return runs.stream().flatMap(r -> field.apply(r).stream()).toList();
    }

    /** The range of what was noted: the quantity itself where all are equal. */
    private static String found(Answer answer, List<Quantity> found, List<LevelRun> runs, Unit unit) {
        if (found.isEmpty()) {
            return "not recorded";
        }
        Quantity low = found.get(0);
        Quantity high = found.get(0);
        for (Quantity quantity : found) {
            low = quantity.in(unit) < low.in(unit) ? quantity : low;
            high = quantity.in(unit) > high.in(unit) ? quantity : high;
        }
        String range = low.in(unit) == high.in(unit)
                ? Names.quantity(low, answer.words())
                : plain(answer, low) + " to " + plain(answer, high);
        return range + some(found.size(), runs.size());
    }

    /** Without its uncertainty, which a range of several would only repeat. */
    private static String plain(Answer answer, Quantity quantity) {
        return Names.quantity(new Quantity(quantity.value(), Optional.empty(), quantity.unit()), answer.words());
    }

    private static String some(int noted, int runs) {
        return noted == runs ? "" : ", noted in " + noted + " of " + runs + " runs";
    }

    private static String verdict(String held, List<Quantity> found, List<LevelRun> runs) {
        if (found.size() < runs.size()) {
            return found.isEmpty() ? "not recorded" : "recorded in part";
        }
        boolean equal = found.stream().map(Quantity::toString).distinct().count() == 1;
        return held.isEmpty() ? (equal ? "held" : "varied") : held;
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
        return found.isEmpty() ? "" : "ambient " + found(answer, found, runs, CELSIUS);
    }
}
