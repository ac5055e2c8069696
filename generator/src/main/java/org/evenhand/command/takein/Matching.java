package org.evenhand.command.takein;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.command.UnusableException;
import org.evenhand.model.Method;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Unit;
import org.evenhand.read.NearMiss;

/** Finds the columns of a method among those of a log, by what its owner says, by name and by unit. */
final class Matching {

    /** What loggers call it; common practice, no source. */
    private static final Map<String, List<String>> OTHER_NAMES = Map.of(
            "temperature", List.of("temp", "tsoc", "soc", "die", "core", "cpu", "junction", "package", "tctl"),
            "ambient", List.of("room", "air", "tamb", "amb", "surroundings"),
            "clock", List.of("freq", "frequency", "mhz", "speed", "cpufreq"),
            "power", List.of("watts", "pwr", "watt", "load", "consumption"),
            "energy", List.of("joules", "uj", "counter", "rapl", "work"),
            "voltage", List.of("volt", "volts", "vin", "vbus"),
            "current", List.of("amps", "amp", "iin", "ibus"),
            "fan", List.of("rpm", "tacho"));

    private static final Pattern SAID = Pattern.compile("(.*?\\S)(?:\\s*+\\[([^\\[\\]]++)\\]|:(\\d{1,2}))?");

    private final Table table;
    private final Dialect dialect;
    private final Method method;
    private final String log;
    private final Set<Integer> used = new HashSet<>();
    private final Map<String, Column> found = new LinkedHashMap<>();

    private record Candidate(String column, int field, int score, String named) {}

    Matching(Table table, Dialect dialect, Method method, String log, TimeColumn time) {
        this.table = table;
        this.dialect = dialect;
        this.method = method;
        this.log = log;
        used.addAll(time.fields());
    }

    /**
     * Matches them.
     *
     * @param said by column of the method: a header, perhaps with "[unit]" or ":bit" behind it
     * @return in the method's order; columns that are not found are left out
     */
    List<Column> match(Map<String, String> said) {
        said.forEach(this::take);
        List<Candidate> candidates = new ArrayList<>();
        for (String column : method.records().keySet()) {
            for (int field = 0; field < table.titles().size(); field++) {
                candidate(column, field).ifPresent(candidates::add);
            }
        }
        candidates.sort(Comparator.comparingInt(Candidate::score).reversed());
        for (Candidate c : candidates) {
            if (!found.containsKey(c.column()) && !used.contains(c.field())) {
                used.add(c.field());
                found.put(
                        c.column(),
                        new Column(
                                c.column(),
                                c.field(),
                                table.titles().get(c.field()),
                                unit(c.column(), c.field()),
                                OptionalInt.empty(),
                                c.named()));
            }
        }
        return method.records().keySet().stream()
                .filter(found::containsKey)
                .map(found::get)
                .toList();
    }

    /** Fields of the log that nothing is made of. */
    List<String> unused() {
        List<String> unused = new ArrayList<>();
        Set<Integer> taken = new HashSet<>(used);
        found.values().forEach(c -> taken.add(c.field()));
        for (int i = 0; i < table.titles().size(); i++) {
            if (!taken.contains(i) && !table.titles().get(i).isEmpty()) {
                unused.add(table.titles().get(i));
            }
        }
        return unused;
    }

    private void take(String column, String saying) {
        if (column.equals("time")) {
            return;
        }
        if (!method.records().containsKey(column)) {
            throw new UnusableException("the method “" + method.id() + "” records no “" + column + "”; "
                    + NearMiss.suggestion(column, method.records().keySet()));
        }
        Matcher m = SAID.matcher(saying);
        int whole = table.titles().indexOf(saying);
        String header = whole >= 0 || !m.matches() ? saying : m.group(1);
        int field = whole >= 0
                ? whole
                : Math.max(table.titles().indexOf(header), bareTitles().indexOf(header));
        if (field < 0) {
            throw new UnusableException(
                    log + " has no column “" + header + "”; " + NearMiss.suggestion(header, bareTitles()));
        }
        boolean hasBit = whole < 0 && m.group(3) != null;
        UnitGuess unit = whole < 0 && m.group(2) != null
                ? new UnitGuess(wanted(column, m.group(2)), UnitGuess.Basis.OPTION)
                : unit(column, field);
        OptionalInt bit = hasBit ? OptionalInt.of(Integer.parseInt(m.group(3))) : OptionalInt.empty();
        used.add(field);
        found.put(column, new Column(column, field, table.titles().get(field), unit, bit, "as you said"));
    }

    /** The titles without their units. */
    private List<String> bareTitles() {
        return table.titles().stream()
                .map(t -> t.replaceAll("[\\[(].*", "").strip())
                .toList();
    }

    private Unit wanted(String column, String written) {
        try {
            Unit unit = Unit.parse(written);
            if (unit.convertsTo(method.records().get(column))) {
                return unit;
            }
            throw new UnusableException("“" + column + "” is recorded in "
                    + method.records().get(column).symbol() + ", which " + unit.symbol() + " does not convert to");
        } catch (MisreadException e) {
            throw new UnusableException("--map " + column + ": " + e.getMessage() + "; " + e.remedy());
        }
    }

    private Optional<Candidate> candidate(String column, int field) {
        String title = table.titles().get(field);
        if (column.equals("time") || title.isEmpty() || !isNumeric(field)) {
            return Optional.empty();
        }
        Unit wanted = method.records().get(column);
        Optional<UnitGuess> written =
                UnitGuess.inTitle(title, table.units().get(field), wanted).or(() -> inCells(field, wanted));
        boolean fits = written.filter(g -> g.unit().convertsTo(wanted)).isPresent();
        boolean contradicts = written.filter(g -> !g.unit().convertsTo(wanted))
                .filter(g -> g.basis() == UnitGuess.Basis.WRITTEN)
                .isPresent();
        boolean isFlag = wanted.isOne() && !fits;
        if (contradicts || (isFlag && isStatusWord(field))) {
            return Optional.empty();
        }
        List<String> words = Arrays.asList(title.replaceAll("[\\[(].*", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", " ")
                .strip()
                .split(" "));
        int unitScore = fits ? 15 : 0;
        if (String.join("-", words).equals(column)) {
            return Optional.of(new Candidate(column, field, 100 + unitScore, "same name"));
        }
        if (words.contains(column)) {
            return Optional.of(new Candidate(column, field, 70 + unitScore, "name"));
        }
        List<String> others = OTHER_NAMES.getOrDefault(column, List.of());
        if (words.stream()
                .anyMatch(w -> others.contains(w)
                        || (w.length() > 3 && others.stream().anyMatch(o -> o.length() > 3 && w.startsWith(o))))) {
            return Optional.of(new Candidate(column, field, 50 + unitScore, "usual name"));
        }
        return fits && !wanted.isOne() ? Optional.of(new Candidate(column, field, 20, "unit")) : Optional.empty();
    }

    private UnitGuess unit(String column, int field) {
        Unit wanted = method.records().get(column);
        return UnitGuess.inTitle(table.titles().get(field), table.units().get(field), wanted)
                .or(() -> inCells(field, wanted))
                .filter(g -> g.unit().convertsTo(wanted))
                .orElseGet(() -> wanted.isOne()
                        ? new UnitGuess(wanted, UnitGuess.Basis.NAME)
                        : UnitGuess.byMagnitude(wanted, median(field)));
    }

    /** A unit that stands behind each number, as in "45.2 C". */
    private Optional<UnitGuess> inCells(int field, Unit wanted) {
        Set<String> suffixes = new HashSet<>();
        table.column(field).stream()
                .limit(200)
                .forEach(f -> Cell.of(f, dialect.decimal()).ifPresent(c -> suffixes.add(c.suffix())));
        return suffixes.size() == 1
                ? UnitGuess.behindNumbers(suffixes.iterator().next(), wanted)
                : Optional.empty();
    }

    private boolean isNumeric(int field) {
        List<String> sample = table.column(field).stream().limit(200).toList();
        long numbers = sample.stream()
                .filter(f -> Cell.of(f, dialect.decimal()).isPresent())
                .count();
        return numbers > 0
                && numbers * 2 >= sample.stream().filter(f -> !Cell.isEmpty(f)).count();
    }

    private boolean isStatusWord(int field) {
        return table.column(field).stream()
                .map(f -> Cell.of(f, dialect.decimal()))
                .anyMatch(c -> c.isPresent()
                        && c.get().value() > 1
                        && table.titles()
                                .get(field)
                                .toLowerCase(Locale.ROOT)
                                .matches(".*(status|flags|throttl|state).*"));
    }

    private double median(int field) {
        double[] values = table.column(field).stream()
                .flatMap(f -> Cell.of(f, dialect.decimal()).stream())
                .mapToDouble(c -> Math.abs(c.value()))
                .sorted()
                .toArray();
        return values.length == 0 ? 0 : values[values.length / 2];
    }
}
