package org.evenhand.command.plan;

import java.util.List;

/** Writes a run sheet: as Markdown, and as a page to print. */
final class SheetText {

    private static final String STYLE = """
            body { font: 11pt/1.35 sans-serif; max-width: 265mm; margin: 10mm auto; color: #000; background: #fff; }
            h1 { font-size: 16pt; } h2 { font-size: 12pt; margin: 1em 0 .3em; }
            table { border-collapse: collapse; width: 100%; }
            th, td { border: .3mm solid #555; padding: 1.5mm; text-align: left; vertical-align: top; }
            td.blank { min-width: 22mm; height: 8mm; }
            td.name { white-space: nowrap; }
            tr { break-inside: avoid; } thead { display: table-header-group; }
            ul.boxes { list-style: "\\2610  "; }
            .caution { border: .8mm solid #000; padding: 2mm 4mm; }
            @page { size: A4 landscape; margin: 12mm; }
            """;

    private SheetText() {}

    static String markdown(RunSheet sheet) {
        StringBuilder text = new StringBuilder("# Run sheet: ")
                .append(escaped(sheet.title()))
                .append("\n\n");
        list(text, "Cautions", "- ", sheet.cautions());
        text.append("## Order\n\n")
                .append(escaped(sheet.order()))
                .append("\n\n")
                .append(sheet.rest())
                .append("\n\n");
        list(text, "Before the first run", "- [ ] ", sheet.before());
        list(text, "To note at each run", "- ", sheet.notes());
        text.append("## Runs\n\n| no. | block | run | specimen | ").append(escaped(sheet.factor()));
        text.append(" | started | room | rested | log, readings | how it ended |\n");
        text.append("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        for (RunSheet.PlannedRun run : sheet.runs()) {
            text.append("| ")
                    .append(run.slot().number())
                    .append(" | ")
                    .append(run.slot().block());
            text.append(" | ")
                    .append(run.id())
                    .append(" | ")
                    .append(escaped(run.slot().specimen()));
            text.append(" | ").append(escaped(run.slot().level())).append(" | | | | | |\n");
        }
        return text.toString();
    }

    private static void list(StringBuilder text, String title, String mark, List<String> entries) {
        if (!entries.isEmpty()) {
            text.append("## ").append(title).append("\n\n");
            entries.forEach(e -> text.append(mark).append(escaped(e)).append('\n'));
            text.append('\n');
        }
    }

    /** Text that is to stay as it is, also in a table. */
    private static String escaped(String text) {
        return text.replaceAll("([\\\\`*\\[\\]<>|])", "\\\\$1");
    }

    static String html(RunSheet sheet) {
        StringBuilder page =
                new StringBuilder("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        page.append("<meta name=\"viewport\" content=\"width=device-width\">\n<title>Run sheet: ");
        page.append(html(sheet.title()))
                .append("</title>\n<style>\n")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n");
        page.append("<h1>Run sheet: ").append(html(sheet.title())).append("</h1>\n");
        if (!sheet.cautions().isEmpty()) {
            page.append("<div class=\"caution\">\n<h2>Cautions</h2>\n");
            list(page, "", sheet.cautions());
            page.append("</div>\n");
        }
        page.append("<h2>Order</h2>\n<p>").append(html(sheet.order())).append("</p>\n<p>");
        page.append(html(sheet.rest())).append("</p>\n<h2>Before the first run</h2>\n");
        list(page, " class=\"boxes\"", sheet.before());
        page.append("<h2>To note at each run</h2>\n");
        list(page, "", sheet.notes());
        page.append("<h2>Runs</h2>\n<table>\n<thead>\n<tr>");
        for (String title : List.of(
                "no.",
                "block",
                "run",
                "specimen",
                sheet.factor(),
                "started",
                "room",
                "rested",
                "log, readings",
                "how it ended")) {
            page.append("<th scope=\"col\">").append(html(title)).append("</th>");
        }
        page.append("</tr>\n</thead>\n<tbody>\n");
        for (RunSheet.PlannedRun run : sheet.runs()) {
            page.append("<tr><td>")
                    .append(run.slot().number())
                    .append("</td><td>")
                    .append(run.slot().block());
            page.append("</td><td>")
                    .append(html(run.id()))
                    .append("</td><td>")
                    .append(html(run.slot().specimen()));
            page.append("</td><td>").append(html(run.slot().level())).append("</td>");
            page.append("<td class=\"blank\"></td>".repeat(5)).append("</tr>\n");
        }
        return page.append("</tbody>\n</table>\n</body>\n</html>\n").toString();
    }

    private static void list(StringBuilder page, String attributes, List<String> entries) {
        page.append("<ul").append(attributes).append(">\n");
        entries.forEach(e -> page.append("<li>").append(html(e)).append("</li>\n"));
        page.append("</ul>\n");
    }

    private static String html(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
