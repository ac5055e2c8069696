package org.evenhand.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.evenhand.log.Faults.Fault;
import org.evenhand.log.Layout.Use;
import org.evenhand.model.ColumnMapping;
import org.evenhand.model.LogSource;
import org.evenhand.model.Method;
import org.evenhand.model.Quota;
import org.evenhand.quantity.Conversion;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Unit;
import org.evenhand.read.NearMiss;
import org.evenhand.words.QuotaWords;

/** Makes a {@link Layout} of the first line of a log, of what the run says of its columns, and of the method. */
final class Header {

    private static final String TIME = "time";
    private static final Unit SECOND = Unit.of("s");

    private final List<Title> titles;
    private final LogSource source;
    private final Method method;
    private final Faults faults;

    /**
     * A field of the header.
     *
     * @param text all of it, without spaces around
     * @param name what stands before the unit
     * @param unit what stands in brackets
     * @param line of the file
     * @param column of its first character
     * @param length in characters
     */
    record Title(String text, String name, Optional<String> unit, long line, int column, int length) {

        static Title of(String written, long line, int column, int length) {
            String text = written.strip();
            int open = text.indexOf('[');
            if (open < 0 || !text.endsWith("]")) {
                return new Title(text, text, Optional.empty(), line, column, length);
            }
            String unit = text.substring(open + 1, text.length() - 1).strip();
            return new Title(text, text.substring(0, open).strip(), Optional.of(unit), line, column, length);
        }

        Fault fault(String rule, String message, String remedy) {
            return new Fault(rule, line, column, length, message, remedy);
        }
    }

    Header(List<Title> titles, LogSource source, Method method, Faults faults) {
        this.titles = titles;
        this.source = source;
        this.method = method;
        this.faults = faults;
    }

    /** The layout; absent, with at least one fault, if the log cannot be read without what is wrong. */
    Optional<Layout> layout() {
        int most = source.limits().asInt(Quota.LOG_COLUMNS);
        if (titles.size() > most) {
            Title over = titles.get(most);
            faults.add(over.fault(
                    "size-limit",
                    faults.say("log-fault.many-columns", titles.size(), most),
                    faults.say(
                            "log-fault.many-columns.remedy", QuotaWords.raising(Quota.LOG_COLUMNS, faults.words()))));
            return Optional.empty();
        }
        List<String> columns = List.copyOf(method.records().keySet());
        List<List<Use>> uses = new ArrayList<>();
        titles.forEach(title -> uses.add(new ArrayList<>()));
        OptionalInt timeField = find(TIME, true);
        Optional<Layout.Clock> clock =
                timeField.isPresent() ? clock(titles.get(timeField.getAsInt())) : Optional.empty();
        Set<String> needed = NeededColumns.of(method);
        for (int i = 0; i < columns.size(); i++) {
            String column = columns.get(i);
            if (column.equals(TIME)) {
                continue;
            }
            OptionalInt field = find(column, needed.contains(column));
            if (field.isPresent()) {
                use(i, column, titles.get(field.getAsInt())).ifPresent(uses.get(field.getAsInt())::add);
            }
        }
        if (faults.any() || clock.isEmpty()) {
            return Optional.empty();
        }
        Use[][] table = uses.stream().map(list -> list.toArray(new Use[0])).toArray(Use[][]::new);
        return Optional.of(new Layout(titles.size(), timeField.getAsInt(), clock.get(), columns, table));
    }

    /** Index of the field that holds a column; absent, with a fault if it is needed, where there is none. */
    private OptionalInt find(String column, boolean needed) {
        ColumnMapping mapping = source.columns().get(column);
        int found = -1;
        for (int i = 0; i < titles.size(); i++) {
            Title title = titles.get(i);
            boolean same = mapping == null
                    ? title.name.equals(column)
                    : title.text.equals(mapping.from().strip())
                            || title.name.equals(mapping.from().strip());
            if (same && found >= 0) {
                faults.add(title.fault(
                        "field-duplicate",
                        faults.say("log-fault.two-columns", Faults.cut(title.name)),
                        faults.say("log-fault.two-columns.remedy")));
                return OptionalInt.empty();
            }
            found = same ? i : found;
        }
        if (found < 0 && (needed || mapping != null)) {
            missing(column, mapping);
        }
        return found < 0 ? OptionalInt.empty() : OptionalInt.of(found);
    }

    private void missing(String column, ColumnMapping mapping) {
        List<String> present = titles.stream().map(Title::name).toList();
        String wanted = mapping == null ? column : mapping.from();
        String remedy =
                faults.say(mapping == null ? "log-fault.no-column.name" : "log-fault.no-column.correct", column);
        faults.add(new Fault(
                "field-missing",
                titles.isEmpty() ? 0 : titles.get(0).line,
                0,
                1,
                faults.say("log-fault.no-column", wanted, shortened(present)),
                NearMiss.among(wanted, present)
                        .map(near -> faults.say("log-fault.no-column.near", near, remedy))
                        .orElse(remedy)));
    }

    private String shortened(List<String> names) {
        int most = 20;
        String listed = names.stream().limit(most).map(Faults::cut).collect(Collectors.joining(", "));
        return names.size() > most ? faults.say("log-fault.columns-more", listed, names.size() - most) : listed;
    }

    private Optional<Layout.Clock> clock(Title title) {
        ColumnMapping mapping = source.columns().get(TIME);
        Optional<Unit> mapped = mapping == null ? Optional.empty() : mapping.unit();
        if (mapped.isEmpty() && title.unit.isEmpty()) {
            return Optional.of(new Layout.Stamps());
        }
        return unit(title, mapped, SECOND)
                .map(unit -> new Layout.Elapsed(unit.to(SECOND).fast(), mapping != null));
    }

    private Optional<Use> use(int index, String column, Title title) {
        Unit wanted = method.records().get(column);
        ColumnMapping mapping = source.columns().get(column);
        if (mapping != null && mapping.bit().isPresent()) {
            return Optional.of(new Use(index, null, mapping.bit().getAsInt()));
        }
        Optional<Unit> mapped = mapping == null ? Optional.empty() : mapping.unit();
        boolean plain = mapped.isEmpty() && title.unit.isEmpty();
        if (plain && wanted.convertsTo(Unit.ONE) && wanted.to(Unit.ONE).isIdentity()) {
            return Optional.of(new Use(index, null, -1)); // a flag or a count
        }
        return unit(title, mapped, wanted).map(unit -> {
            Conversion conversion = unit.to(wanted);
            return new Use(index, conversion.isIdentity() ? null : conversion.fast(), -1);
        });
    }

    /** The unit of a column of the log, if it is known and converts to the one wanted. */
    private Optional<Unit> unit(Title title, Optional<Unit> mapped, Unit wanted) {
        Unit unit;
        if (mapped.isPresent()) {
            unit = mapped.get();
        } else if (title.unit.isEmpty()) {
            faults.add(title.fault(
                    "unit-missing",
                    faults.say("log-fault.no-unit", Faults.cut(title.text)),
                    faults.say("log-fault.no-unit.remedy", Faults.cut(title.text), wanted.symbol())));
            return Optional.empty();
        } else {
            try {
                unit = Unit.parse(title.unit.get());
            } catch (MisreadException e) {
                String rule = e.fault().name().toLowerCase(Locale.ROOT).replace('_', '-');
                // What exactly is wrong with the unit is told in English alone.
                faults.add(title.fault(
                        rule,
                        faults.say(
                                "log-fault.unit-misread",
                                Faults.cut(title.name),
                                Faults.cut(title.unit.get()),
                                e.getMessage()),
                        faults.say("log-fault.unit-misread.remedy", wanted.symbol(), e.remedy())));
                return Optional.empty();
            }
        }
        if (unit.convertsTo(wanted)) {
            return Optional.of(unit);
        }
        faults.add(title.fault(
                "unit-dimension",
                faults.say("log-fault.other-unit", Faults.cut(title.name), unit.symbol(), wanted.symbol()),
                faults.say("log-fault.other-unit.remedy", wanted.symbol())));
        return Optional.empty();
    }
}
