package org.evenhand.command.takein;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.evenhand.command.UnusableException;
import org.evenhand.quantity.Unit;

/**
 * The times of a log.
 *
 * @param fields the columns in which they stand: one, a date and a time, or none
 * @param title of the first of them
 * @param unit of numbers; absent for dates
 * @param how they are written, in words
 * @param seconds of each row since the first
 * @param started when the first row was, where the log says so
 * @param readable whether the log reader takes the column as it is
 */
record TimeColumn(
        List<Integer> fields,
        String title,
        Optional<Unit> unit,
        String how,
        List<BigDecimal> seconds,
        Optional<OffsetDateTime> started,
        boolean readable) {

    /** What its owner says of the times. */
    record Said(Optional<ZoneId> zone, Optional<LocalDate> date, Boolean monthFirst, Optional<BigDecimal> stepS) {}

    private static final Set<String> NAMES = Set.of(
            "time", "timestamp", "datetime", "date", "t", "elapsed", "seconds", "clock time", "utc", "epoch", "uptime");
    private static final Pattern RFC_3339 =
            Pattern.compile("\\d{4}-\\d\\d-\\d\\d[Tt ]\\d\\d:\\d\\d:\\d\\d(?:[.,]\\d+)?(?:[Zz]|[+-]\\d\\d:?\\d\\d)");
    private static final Unit SECOND = Unit.of("s");

    TimeColumn {
        fields = List.copyOf(fields);
        seconds = List.copyOf(seconds);
    }

    /** Looks for the times; the title of the column if its owner names it, else null. */
    static TimeColumn of(Table table, Dialect dialect, String log, String named, Said said, List<String> doubts) {
        return new Search(table, dialect, log, said, doubts).find(named);
    }

    /** One look at a table. */
    private record Search(Table table, Dialect dialect, String log, Said said, List<String> doubts) {

        TimeColumn find(String named) {
            if (named != null) {
                int field = table.titles().indexOf(named);
                if (field < 0) {
                    throw new UnusableException(
                            log + " has no column “" + named + "”; it has " + String.join(", ", table.titles()));
                }
                return moments(List.of(field))
                        .or(() -> numbers(field))
                        .orElseThrow(() -> new UnusableException(
                                log + ": the column “" + named + "” holds neither times nor numbers"));
            }
            int columns = table.titles().size();
            for (int i = 0; i < columns; i++) {
                Moments reader = Moments.of(table.column(i), said.monthFirst());
                String first = table.rows().get(0).get(i);
                if (reader.parse(first).filter(m -> m.date().isPresent()).isPresent()) {
                    return moments(List.of(i)).orElseThrow();
                }
                boolean timeFollows = i + 1 < columns
                        && reader.parse(table.rows().get(0).get(i + 1)).isPresent();
                if (timeFollows && reader.parseDate(first).isPresent()) {
                    return moments(List.of(i, i + 1)).orElseThrow();
                }
            }
            for (int i = 0; i < columns; i++) {
                Optional<TimeColumn> times = moments(List.of(i));
                if (times.isPresent()) {
                    return times.get();
                }
            }
            return numbers();
        }

        /** A column of numbers that is called after time; else counted samples, if their owner gives the step. */
        private TimeColumn numbers() {
            int columns = table.titles().size();
            Optional<TimeColumn> called = IntStream.range(0, columns)
                    .filter(this::isCalledTime)
                    .mapToObj(this::numbers)
                    .flatMap(Optional::stream)
                    .findFirst();
            if (called.isPresent()) {
                return called.get();
            }
            if (said.stepS().isPresent()) {
                return counted(said.stepS().get());
            }
            return IntStream.range(0, columns)
                    .filter(i -> isRising(i) && (isOfTime(i) || !table.hasHeader()))
                    .mapToObj(this::numbers)
                    .flatMap(Optional::stream)
                    .findFirst()
                    .orElseThrow(() -> new UnusableException(log + " has no column of times; it has "
                            + String.join(", ", table.titles())
                            + ". Name it with --map time=HEADER, or give the time between samples, such as"
                            + " --step \"1 s\""));
        }

        private boolean isCalledTime(int field) {
            String title = table.titles().get(field).toLowerCase(Locale.ROOT);
            String bare =
                    title.replaceAll("[\\[(].*", "").replaceAll("_m?s$", "").strip();
            return NAMES.contains(bare) || NAMES.contains(title);
        }

        private boolean isOfTime(int field) {
            return UnitGuess.inTitle(table.titles().get(field), table.units().get(field), SECOND)
                    .filter(g -> g.unit().convertsTo(SECOND))
                    .isPresent();
        }

        private boolean isRising(int field) {
            double before = Double.NEGATIVE_INFINITY;
            for (List<String> row : table.rows()) {
                double value = Cell.of(row.get(field), dialect.decimal())
                        .map(Cell::value)
                        .orElse(Double.NaN);
                if (!(value > before)) {
                    return false;
                }
                before = value;
            }
            return true;
        }

        private TimeColumn counted(BigDecimal stepS) {
            List<BigDecimal> seconds = IntStream.range(0, table.rows().size())
                    .mapToObj(i -> stepS.multiply(BigDecimal.valueOf(i)))
                    .toList();
            return new TimeColumn(
                    List.of(), "", Optional.empty(), "none; the samples are counted", seconds, Optional.empty(), false);
        }

        private Optional<TimeColumn> moments(List<Integer> fields) {
            List<String> texts = table.rows().stream().map(r -> join(r, fields)).toList();
            Moments reader = Moments.of(texts, said.monthFirst());
            if (reader.parse(texts.get(0)).isEmpty()) {
                return Optional.empty();
            }
            if (said.monthFirst() == null && Moments.isUndecided(texts)) {
                doubts.add(
                        "“" + texts.get(0) + "” is read as day, then month; give --month-first if it is the other way");
            }
            Clock clock = new Clock(log, said.zone(), said.date(), doubts);
            boolean hasDate = true;
            boolean hasOffset = true;
            for (int i = 0; i < texts.size(); i++) {
                int line = table.rowLines().get(i);
                Moments.Moment moment = reader.parse(texts.get(i))
                        .orElseThrow(() -> new UnusableException(
                                log + ", line " + line + ": there is no time like those before it"));
                hasDate &= moment.date().isPresent();
                hasOffset &= moment.offset().isPresent();
                clock.add(moment, line);
            }
            String how = hasOffset
                    ? "dates with their offset from UTC"
                    : (hasDate ? "dates" : "times of day")
                            + said.zone().map(z -> ", read in the zone " + z).orElse(" of an unknown zone");
            boolean readable = fields.size() == 1
                    && texts.stream().allMatch(t -> RFC_3339.matcher(t).matches());
            return Optional.of(new TimeColumn(
                    fields,
                    table.titles().get(fields.get(0)),
                    Optional.empty(),
                    how,
                    clock.seconds(),
                    clock.started(),
                    readable));
        }

        private static String join(List<String> row, List<Integer> fields) {
            return fields.size() == 1 ? row.get(fields.get(0)) : row.get(fields.get(0)) + " " + row.get(fields.get(1));
        }

        private Optional<TimeColumn> numbers(int field) {
            List<BigDecimal> values = new ArrayList<>();
            for (List<String> row : table.rows()) {
                Optional<Cell> cell = Cell.of(row.get(field), dialect.decimal());
                if (cell.isEmpty()) {
                    return Optional.empty();
                }
                values.add(new BigDecimal(cell.get().digits()));
            }
            String title = table.titles().get(field);
            double first = values.get(0).doubleValue();
            // Seconds, milliseconds and microseconds since 1970 are told apart by their size: 2001 to 2096.
            Optional<String> epoch = first >= 1e9 && first < 4e9
                    ? Optional.of("s")
                    : first >= 1e12 && first < 4e12
                            ? Optional.of("ms")
                            : first >= 1e15 && first < 4e15 ? Optional.of("µs") : Optional.empty();
            Optional<Unit> written = UnitGuess.inTitle(title, table.units().get(field), SECOND)
                    .map(UnitGuess::unit)
                    .filter(u -> u.convertsTo(SECOND));
            Unit unit = written.orElse(Unit.of(epoch.orElse("s")));
            if (written.isEmpty() && epoch.isEmpty()) {
                doubts.add("the times are taken as seconds: the log does not say");
            }
            BigDecimal factor = BigDecimal.valueOf(unit.to(SECOND).apply(BigDecimal.ONE));
            List<BigDecimal> seconds = values.stream()
                    .map(v -> v.subtract(values.get(0)).multiply(factor).stripTrailingZeros())
                    .toList();
            Optional<OffsetDateTime> started = epoch.map(e -> Instant.ofEpochMilli(
                            values.get(0).multiply(factor).movePointRight(3).longValue())
                    .atOffset(ZoneOffset.UTC));
            String how = epoch.isPresent() ? "numbers since 1970 in " + unit.symbol() : "elapsed, in " + unit.symbol();
            boolean plain = table.column(field).stream().allMatch(c -> Cell.isPlain(c, dialect.decimal()));
            return Optional.of(new TimeColumn(List.of(field), title, Optional.of(unit), how, seconds, started, plain));
        }
    }
}
