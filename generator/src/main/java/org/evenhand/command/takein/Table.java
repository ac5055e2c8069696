package org.evenhand.command.takein;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.evenhand.command.UnusableException;

/**
 * The header of a log and its lines of samples.
 *
 * @param hasHeader whether the log names its columns; else they are called column-1, column-2 …
 * @param titles of the columns, as written
 * @param units from a line of their own; empty texts where there are none
 * @param rows fields as written, one for each title
 * @param rowLines the line of the file in which each row stands, from 1
 * @param mended what the log reader could not have taken as it is, in words; empty if there is nothing of the kind
 * @param doubts what was left out although it may have been data
 */
record Table(
        boolean hasHeader,
        List<String> titles,
        List<String> units,
        List<List<String>> rows,
        List<Integer> rowLines,
        List<String> mended,
        List<String> doubts) {

    Table {
        titles = List.copyOf(titles);
        units = List.copyOf(units);
        rows = Collections.unmodifiableList(rows);
        rowLines = List.copyOf(rowLines);
        mended = List.copyOf(mended);
        doubts = List.copyOf(doubts);
    }

    static Table of(RawLog log, Dialect dialect) {
        return new Builder(log, dialect).build();
    }

    /** The fields of a column, from the first row to the last. */
    List<String> column(int index) {
        return rows.stream().map(r -> r.get(index)).toList();
    }

    /** Goes through the lines once. */
    private static final class Builder {

        private static final Pattern DATE = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");
        private static final Pattern TIME_OF_DAY = Pattern.compile("\\d\\d:\\d\\d(:\\d\\d([.,]\\d{1,9})?)?");

        private final RawLog log;
        private final Dialect dialect;
        private final List<String> mended = new ArrayList<>();
        private final List<String> doubts = new ArrayList<>();
        private final List<List<String>> rows = new ArrayList<>();
        private final List<Integer> rowLines = new ArrayList<>();

        /** Where a date and a time of day stand between spaces under one title; -1 if nowhere. */
        private int moment = -1;

        Builder(RawLog log, Dialect dialect) {
            this.log = log;
            this.dialect = dialect;
        }

        Table build() {
            int data = firstData();
            int above = data < 0 ? -1 : lineAbove(data);
            List<String> titles;
            List<String> units = List.of();
            if (data < 0) {
                throw new UnusableException(
                        log.name() + " is no table of numbers, or its fields are not told apart; give --separator");
            }
            boolean oneTitleShort = above >= 0 && fields(above).size() == dialect.fields() - 1;
            moment = oneTitleShort && dialect.separator() == ' ' ? moment(fields(data)) : -1;
            boolean named = above >= 0 && (fields(above).size() == dialect.fields() || moment >= 0);
            if (named) {
                int over = lineAbove(above);
                boolean ofUnits = over >= 0 && fields(over).size() == dialect.fields() && isOfUnits(fields(above));
                if (ofUnits) {
                    units = fields(above).stream().map(Builder::bare).toList();
                    mended.add("moved the units from a line of their own into the header");
                }
                titles = title(ofUnits ? over : above);
            } else {
                titles = IntStream.rangeClosed(1, dialect.fields())
                        .mapToObj(i -> "column-" + i)
                        .toList();
                mended.add("gave the columns names, since the log has no header");
            }
            rows(data, titles, units);
            List<String> all = units.isEmpty() ? Collections.nCopies(titles.size(), "") : units;
            return new Table(named, titles, all, rows, rowLines, mended, doubts);
        }

        private List<String> title(int line) {
            long before = log.lines().subList(0, line).stream()
                    .filter(l -> !l.isBlank())
                    .count();
            if (before > 0) {
                mended.add(
                        "left out " + (before == 1 ? "the line" : "the " + before + " lines") + " before the header");
            }
            if (!log.lines().get(line).startsWith("#")) {
                return fields(line);
            }
            mended.add("took “#” off the header");
            return uncommented(line);
        }

        /** The first line that holds samples; -1 if there is none. */
        private int firstData() {
            for (int i = 0; i < log.lines().size(); i++) {
                if (!log.lines().get(i).startsWith("#") && fields(i).size() == dialect.fields() && isData(fields(i))) {
                    return i;
                }
            }
            return -1;
        }

        private int lineAbove(int line) {
            int above = line - 1;
            while (above >= 0 && log.lines().get(above).isBlank()) {
                above--;
            }
            return above;
        }

        /** A title such as "5V" looks like a number with its unit, so one of those alone makes no data. */
        private boolean isData(List<String> fields) {
            int bare = 0;
            int withUnit = 0;
            for (String field : fields) {
                Optional<Cell> cell = Cell.of(field, dialect.decimal());
                boolean moment = Moments.of(List.of(field), null).parse(field).isPresent();
                bare += moment || cell.filter(c -> c.suffix().isEmpty()).isPresent() ? 1 : 0;
                withUnit += cell.filter(c -> !c.suffix().isEmpty()).isPresent() ? 1 : 0;
            }
            return bare > 0 || withUnit * 2 > fields.size();
        }

        private boolean isOfUnits(List<String> fields) {
            List<String> units = fields.stream().map(Builder::bare).toList();
            long known =
                    units.stream().filter(u -> UnitGuess.named(u).isPresent()).count();
            long given = units.stream().filter(u -> !u.isEmpty()).count();
            return known > 0 && known * 2 >= given;
        }

        private static int moment(List<String> fields) {
            return IntStream.range(0, fields.size() - 1)
                    .filter(i -> DATE.matcher(fields.get(i)).matches()
                            && TIME_OF_DAY.matcher(fields.get(i + 1)).matches())
                    .findFirst()
                    .orElse(-1);
        }

        private static String bare(String unit) {
            return unit.replaceAll("^[\\[(](.*)[\\])]$", "$1").strip();
        }

        private void rows(int data, List<String> titles, List<String> units) {
            List<Integer> repeated = new ArrayList<>();
            List<Integer> odd = new ArrayList<>();
            int comments = 0;
            int last = lineAbove(log.lines().size());
            Set<String> before = new HashSet<>(log.lines().subList(0, data));
            for (int i = data; i < log.lines().size(); i++) {
                if (log.lines().get(i).isBlank()) {
                    continue;
                }
                List<String> fields = fields(i);
                boolean complete = fields.size() == titles.size();
                if (fields.equals(titles)
                        || before.contains(log.lines().get(i))
                        || fields.stream().map(Builder::bare).toList().equals(units)
                        || uncommented(i).equals(titles)) {
                    repeated.add(i + 1);
                } else if (log.lines().get(i).startsWith("#")) {
                    comments++;
                } else if (i == last && (!complete || (!log.endsInLine() && isCut(fields)))) {
                    mended.add("left out the last line, " + (i + 1) + ", which is cut off");
                } else if (!complete || !isData(fields)) {
                    odd.add(i + 1);
                } else {
                    rows.add(fields);
                    rowLines.add(i + 1);
                }
            }
            say(repeated, odd, comments);
        }

        private void say(List<Integer> repeated, List<Integer> odd, int comments) {
            if (!repeated.isEmpty()) {
                mended.add("left out the header where it is repeated, in " + lines(repeated));
            }
            if (comments > 0) {
                mended.add("left out " + comments + (comments == 1 ? " comment" : " comments"));
            }
            if (!odd.isEmpty()) {
                mended.add("left out " + lines(odd) + ", which " + (odd.size() == 1 ? "has" : "have")
                        + " another number of fields");
                doubts.add(lines(odd) + ": look at what is left out there; it may have been samples");
            }
        }

        /** Whether the last field is no number although it is one in the line before. */
        private boolean isCut(List<String> fields) {
            if (rows.isEmpty()) {
                return false;
            }
            String before = rows.get(rows.size() - 1).get(fields.size() - 1);
            String field = fields.get(fields.size() - 1);
            return Cell.of(before, dialect.decimal()).isPresent()
                    && !Cell.isEmpty(before)
                    && Cell.of(field, dialect.decimal()).isEmpty();
        }

        private List<String> fields(int line) {
            List<String> fields = dialect.split(log.lines().get(line));
            if (moment < 0 || fields.size() != dialect.fields()) {
                return fields;
            }
            List<String> joined = new ArrayList<>(fields);
            joined.set(moment, joined.get(moment) + " " + joined.remove(moment + 1));
            return joined;
        }

        /** The fields of a line behind the mark of a comment. */
        private List<String> uncommented(int line) {
            return dialect.split(log.lines().get(line).replaceFirst("^#\\s*", ""));
        }

        private static String lines(List<Integer> numbers) {
            String listed = numbers.stream().limit(5).map(String::valueOf).collect(Collectors.joining(", "));
            String more = numbers.size() > 5 ? String.format(Locale.ROOT, " and %d more", numbers.size() - 5) : "";
            return (numbers.size() == 1 ? "line " : "lines ") + listed + more;
        }
    }
}
