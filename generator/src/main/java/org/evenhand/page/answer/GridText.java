package org.evenhand.page.answer;

import java.util.List;
import java.util.stream.Collectors;
import org.evenhand.page.view.Markup;
import org.evenhand.words.Words;

/** Writes a table as CSV, as Markdown and as a fragment of HTML; the latter two with its caption and its source. */
final class GridText {

    private GridText() {}

    /** Figures are bare numbers with an ASCII sign; what a spreadsheet would run is defused. */
    static String csv(Grid grid, Words words) {
        Csv csv = Csv.withHeader(grid.columns().stream().map(Grid.Column::title).toArray(String[]::new));
        for (List<String> row : grid.rows()) {
            row.forEach(cell -> csv.written(cell, words));
            csv.end();
        }
        return csv.text();
    }

    /** Source: CommonMark 0.31; GitHub Flavored Markdown, 4.10, of tables. */
    static String markdown(Grid grid, String source, String address) {
        StringBuilder text = new StringBuilder("**" + markdown(grid.caption()) + "**");
        text.append(grid.note().isEmpty() ? "" : " " + markdown(grid.note())).append("\n\n");
        text.append(line(grid.columns().stream().map(Grid.Column::title).toList()));
        text.append(grid.columns().stream()
                .map(column -> column.number() ? "---:" : "---")
                .collect(Collectors.joining(" | ", "| ", " |\n")));
        grid.rows().forEach(row -> text.append(line(row)));
        return text.append('\n')
                .append(markdown(source))
                .append(" <")
                .append(address)
                .append(">\n")
                .toString();
    }

    private static String line(List<String> cells) {
        return cells.stream().map(GridText::markdown).collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    private static String markdown(String text) {
        String escaped = text.replaceAll("([\\\\`*_\\[\\]<>#|~])", "\\\\$1");
        return escaped.indexOf('\n') < 0
                ? escaped
                : escaped.lines().map(String::strip).collect(Collectors.joining(" "));
    }

    static String html(Grid grid, String source, String address) {
        StringBuilder text = new StringBuilder("<figure>\n<table>\n<caption><strong>" + escaped(grid.caption()));
        text.append("</strong>").append(grid.note().isEmpty() ? "" : " " + escaped(grid.note()));
        text.append("</caption>\n<thead>\n<tr>");
        grid.columns()
                .forEach(column -> text.append("<th scope=\"col\">")
                        .append(escaped(column.title()))
                        .append("</th>"));
        text.append("</tr>\n</thead>\n<tbody>\n");
        for (List<String> row : grid.rows()) {
            text.append("<tr><th scope=\"row\">").append(escaped(row.get(0))).append("</th>");
            row.stream()
                    .skip(1)
                    .forEach(cell -> text.append("<td>").append(escaped(cell)).append("</td>"));
            text.append("</tr>\n");
        }
        return text.append("</tbody>\n</table>\n<figcaption>")
                .append(escaped(source))
                .append(" <a href=\"")
                .append(escaped(address))
                .append("\">")
                .append(escaped(address))
                .append("</a>")
                .append("</figcaption>\n</figure>\n")
                .toString();
    }

    private static String escaped(String text) {
        return Markup.text(text).html();
    }
}
