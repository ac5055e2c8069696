package org.evenhand.command.takein;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Shows how a log would be taken in. */
final class ProposalText {

    private static final int ROWS = 3;

    private ProposalText() {}

    static String of(Proposal proposal) {
        StringBuilder text = new StringBuilder();
        summary(proposal, text);
        if (proposal.columns().isEmpty()) {
            described(proposal, text);
        } else {
            mapping(proposal, text);
            rows(proposal, text);
        }
        list("the original cannot be read as it is, so a clean log is made of it", proposal.changes(), text);
        list("look at", proposal.doubts(), text);
        return text.toString();
    }

    private static void summary(Proposal proposal, StringBuilder text) {
        RawLog log = proposal.log();
        int samples = proposal.table().rows().size();
        String length = CleanLog.seconds(proposal.time().seconds().get(samples - 1));
        text.append(log.name())
                .append(": ")
                .append(samples)
                .append(" samples in ")
                .append(length)
                .append(" s, ");
        text.append(proposal.table().titles().size()).append(" columns\n");
        text.append("  between fields: ").append(separator(proposal.dialect().separator()));
        text.append("; decimals: ").append(proposal.dialect().decimal() == ',' ? "comma" : "point");
        text.append("; ").append(log.letters()).append(log.marked() ? " with a byte order mark" : "");
        text.append(log.carriageReturns() ? "; lines end in CR LF" : "").append('\n');
        text.append("  times: ").append(proposal.time().how());
        proposal.time()
                .started()
                .ifPresent(at -> text.append("; the first sample is of ").append(at));
        text.append('\n');
    }

    private static String separator(char separator) {
        return switch (separator) {
            case '\t' -> "tab";
            case ' ' -> "spaces";
            default -> "“" + separator + "”";
        };
    }

    private static void described(Proposal proposal, StringBuilder text) {
        List<List<String>> table = new ArrayList<>(List.of(List.of("column", "unit", "first value")));
        for (int i = 0; i < proposal.table().titles().size(); i++) {
            Optional<UnitGuess> unit = UnitGuess.inTitle(
                    proposal.table().titles().get(i), proposal.table().units().get(i), null);
            table.add(List.of(
                    proposal.table().titles().get(i),
                    unit.map(u -> u.unit().symbol()).orElse("?"),
                    proposal.table().rows().get(0).get(i)));
        }
        append(table, text);
    }

    private static void mapping(Proposal proposal, StringBuilder text) {
        List<List<String>> table = new ArrayList<>(List.of(List.of("the method's", "from the log's", "by", "unit")));
        String timeTitle =
                proposal.time().fields().isEmpty() ? "(none)" : proposal.time().title();
        table.add(List.of(
                "time",
                timeTitle,
                "",
                proposal.time().unit().map(u -> u.symbol()).orElse("")));
        for (Column column : proposal.columns()) {
            String bit = column.bit().isPresent() ? ", bit " + column.bit().getAsInt() : "";
            String unit = column.bit().isPresent() || column.unit().unit().isOne()
                    ? ""
                    : column.unit().unit().symbol() + ", "
                            + column.unit().basis().words();
            table.add(List.of(column.name(), column.title() + bit, column.named(), unit));
        }
        append(table, text);
        if (!proposal.missing().isEmpty()) {
            text.append("  not found: ")
                    .append(String.join(", ", proposal.missing()))
                    .append("\n");
        }
        if (!proposal.unused().isEmpty()) {
            text.append("  not used: ")
                    .append(String.join(", ", proposal.unused()))
                    .append("\n");
        }
    }

    private static void rows(Proposal proposal, StringBuilder text) {
        List<List<String>> table = new ArrayList<>();
        List<String> header = new ArrayList<>(List.of("time [s]"));
        proposal.columns().forEach(c -> header.add(CleanLog.header(c)));
        table.add(header);
        List<List<String>> rows = proposal.table().rows();
        for (int i = 0; i < Math.min(ROWS, rows.size()); i++) {
            List<String> row = new ArrayList<>(
                    List.of(CleanLog.seconds(proposal.time().seconds().get(i))));
            for (Column column : proposal.columns()) {
                row.add(CleanLog.value(rows.get(i).get(column.field()), column, proposal.dialect()));
            }
            table.add(row);
        }
        text.append("  first rows:\n");
        append(table, text);
    }

    private static void append(List<List<String>> table, StringBuilder text) {
        int columns = table.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : table) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        for (List<String> row : table) {
            StringBuilder line = new StringBuilder("    ");
            for (int i = 0; i < columns; i++) {
                line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
            }
            text.append(printable(line.toString().stripTrailing())).append('\n');
        }
    }

    private static void list(String title, List<String> entries, StringBuilder text) {
        if (!entries.isEmpty()) {
            text.append("  ").append(title).append(":\n");
            entries.forEach(e -> text.append("    - ").append(printable(e)).append('\n'));
        }
    }

    /** Control characters of a log must not reach a terminal. */
    private static String printable(String text) {
        return text.replaceAll("\\p{Cntrl}", "\ufffd");
    }
}
