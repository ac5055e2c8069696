package org.evenhand.command.takein;

import java.util.List;
import java.util.Optional;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;

/** Notices counters that start again from zero. */
final class Counters {

    private Counters() {}

    static void look(Column column, Table table, Dialect dialect, Method method, List<String> doubts) {
        if (column.bit().isPresent() || isToldToWrap(column.name(), method)) {
            return;
        }
        double before = Double.NaN;
        int falls = 0;
        int rises = 0;
        String fall = "";
        for (int i = 0; i < table.rows().size(); i++) {
            Optional<Cell> cell = Cell.of(table.rows().get(i).get(column.field()), dialect.decimal());
            if (cell.isEmpty()) {
                continue;
            }
            double value = cell.get().value();
            if (value < before && value < before / 2) {
                falls++;
                fall = "from "
                        + Cell.of(table.rows().get(i - 1).get(column.field()), dialect.decimal())
                                .map(Cell::digits)
                                .orElse("")
                        + " to " + cell.get().digits() + " in line "
                        + table.rowLines().get(i);
            } else if (value < before) {
                return; // it goes up and down: no counter
            }
            rises += value > before ? 1 : 0;
            before = value;
        }
        if (falls > 0 && rises >= 4 * falls) {
            doubts.add("“" + column.title() + "” only rises, but for a fall " + fall
                    + ": a counter that starts again? Then the method needs “reduce: increase” with “wraps-at”");
        }
    }

    private static boolean isToldToWrap(String column, Method method) {
        return method.measurands().values().stream()
                .map(Measurand::reduction)
                .anyMatch(r -> r instanceof Reduction.OfColumn of
                        && of.column().equals(column)
                        && of.statistic() instanceof Reduction.Statistic.Increase increase
                        && increase.wrapsAt().isPresent());
    }
}
