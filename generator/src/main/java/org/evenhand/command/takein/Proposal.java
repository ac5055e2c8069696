package org.evenhand.command.takein;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.evenhand.model.Method;
import org.evenhand.quantity.Unit;

/**
 * How a log would be taken in.
 *
 * @param log the foreign log
 * @param dialect how its fields are told apart
 * @param table its header and rows
 * @param time its times
 * @param columns of the method, as they were found
 * @param unused titles of which nothing is made
 * @param missing columns of the method that the log does not have
 * @param changes what a clean log does otherwise than the original, in words; empty if the original can be read as it is
 * @param doubts what somebody should look at
 */
record Proposal(
        RawLog log,
        Dialect dialect,
        Table table,
        TimeColumn time,
        List<Column> columns,
        List<String> unused,
        List<String> missing,
        List<String> changes,
        List<String> doubts) {

    /** Of the method's run length; a log shorter than this is pointed out. Common practice, no source. */
    private static final double SHORT = 0.95;

    /** What its owner says of a log. */
    record Said(Character separator, Character decimal, TimeColumn.Said time, Map<String, String> columns) {}

    Proposal {
        columns = List.copyOf(columns);
        unused = List.copyOf(unused);
        missing = List.copyOf(missing);
        changes = List.copyOf(changes);
        doubts = List.copyOf(doubts);
    }

    /**
     * Looks at a log.
     *
     * @param method whose columns are wanted; without one, the log is only described
     */
    static Proposal of(RawLog log, Optional<Method> method, Said said) {
        Dialect dialect = Dialect.of(log.lines(), said.separator(), said.decimal());
        Table table = Table.of(log, dialect);
        List<String> doubts = new ArrayList<>(table.doubts());
        String timeTitle = said.columns().get("time");
        TimeColumn time = TimeColumn.of(table, dialect, log.name(), timeTitle, said.time(), doubts);
        List<Column> columns = List.of();
        List<String> unused = List.of();
        List<String> missing = List.of();
        if (method.isPresent()) {
            Matching matching = new Matching(table, dialect, method.get(), log.name(), time);
            columns = matching.match(said.columns());
            unused = matching.unused();
            Set<String> found = new HashSet<>();
            columns.forEach(c -> found.add(c.name()));
            missing = method.get().records().keySet().stream()
                    .filter(name -> !found.contains(name) && !name.equals("time"))
                    .toList();
        }
        method.flatMap(Method::runLength).ifPresent(length -> {
            double loggedS = time.seconds().get(time.seconds().size() - 1).doubleValue();
            if (loggedS < SHORT * length.in(Unit.of("s"))) {
                doubts.add("the log is "
                        + CleanLog.seconds(time.seconds().get(time.seconds().size() - 1))
                        + " s long, but a run lasts " + length
                        + ": if it was stopped, write “outcome” and “why” into the run file");
            }
        });
        List<String> changes = changes(log, dialect, table, time, columns);
        columns.forEach(c -> Counters.look(c, table, dialect, method.orElseThrow(), doubts));
        return new Proposal(
                log,
                dialect,
                table,
                time,
                columns,
                unused,
                missing,
                changes,
                doubts.stream().distinct().toList());
    }

    /** Whether a clean log is needed beside the original. */
    boolean needsCleanLog() {
        return !changes.isEmpty();
    }

    private static List<String> changes(
            RawLog log, Dialect dialect, Table table, TimeColumn time, List<Column> columns) {
        List<String> changes = new ArrayList<>(table.mended());
        if (!dialect.isReadable()) {
            changes.add("put commas between the fields, and a point before decimals");
        }
        if (!log.isUtf8()) {
            changes.add("wrote it in UTF-8; it was in " + log.letters());
        }
        boolean unitInTitle = time.unit().isEmpty() && time.title().endsWith("]");
        if (time.fields().isEmpty()) {
            changes.add("gave the samples their times by counting them");
        } else if (!time.readable() || unitInTitle) {
            changes.add("wrote the times as seconds since the first sample; they were " + time.how());
        }
        Set<String> seen = new HashSet<>();
        boolean twice = table.titles().stream()
                .anyMatch(t -> !seen.add(t)
                        && (t.equals(time.title())
                                || columns.stream().anyMatch(c -> c.title().equals(t))));
        if (twice) {
            changes.add("named columns apart that have the same title");
        }
        for (Column column : columns) {
            List<String> cells = table.column(column.field());
            long unplain = cells.stream()
                    .filter(c -> !Cell.isPlain(c, dialect.decimal())
                            && Cell.of(c, dialect.decimal()).isPresent())
                    .count();
            long empty =
                    cells.stream().filter(c -> !c.isEmpty() && Cell.isEmpty(c)).count();
            long words = cells.stream()
                    .filter(c ->
                            !Cell.isEmpty(c) && Cell.of(c, dialect.decimal()).isEmpty())
                    .count();
            if (unplain > 0) {
                changes.add("took the unit off the numbers of “" + column.title() + "”");
            }
            if (empty > 0) {
                changes.add("left empty where “" + column.title() + "” says that there is no value (" + empty + ")");
            }
            if (words > 0) {
                changes.add("left empty where “" + column.title() + "” holds no number (" + words + ")");
            }
        }
        return changes;
    }
}
