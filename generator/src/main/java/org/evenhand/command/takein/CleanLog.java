package org.evenhand.command.takein;

import java.math.BigDecimal;
import java.util.List;

/** The text of a log as the log reader takes it: commas, decimal points, units in the header, elapsed seconds. */
final class CleanLog {

    private CleanLog() {}

    static String text(Proposal proposal) {
        StringBuilder csv = new StringBuilder("time [s]");
        for (Column column : proposal.columns()) {
            csv.append(',').append(header(column));
        }
        csv.append('\n');
        List<List<String>> rows = proposal.table().rows();
        for (int i = 0; i < rows.size(); i++) {
            csv.append(seconds(proposal.time().seconds().get(i)));
            for (Column column : proposal.columns()) {
                csv.append(',').append(value(rows.get(i).get(column.field()), column, proposal.dialect()));
            }
            csv.append('\n');
        }
        return csv.toString();
    }

    static String header(Column column) {
        boolean bare = column.bit().isPresent() || column.unit().unit().isOne();
        return column.name() + (bare ? "" : " [" + column.unit().unit().symbol() + "]");
    }

    /** A field as the clean log has it; empty where there is no number. */
    static String value(String field, Column column, Dialect dialect) {
        if (Cell.isEmpty(field)) {
            return "";
        }
        return Cell.of(field, dialect.decimal())
                .map(cell -> column.bit().isPresent()
                        ? String.valueOf(((long) cell.value() >> column.bit().getAsInt()) & 1)
                        : cell.digits())
                .orElse("");
    }

    static String seconds(BigDecimal seconds) {
        return seconds.signum() == 0 ? "0" : seconds.stripTrailingZeros().toPlainString();
    }
}
