package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.evenhand.page.view.Budget;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.ComparisonTable;
import org.evenhand.page.view.Condition;
import org.evenhand.page.view.RunColumn;
import org.evenhand.page.view.RunRow;
import org.evenhand.page.view.RunTable;
import org.evenhand.page.view.SummaryTable;
import org.evenhand.words.Words;

/** The tables of a page, taken from its view, so that what is taken away is what is shown. */
final class Grids {

    /** As the templates name the tables of which a page has one. */
    static final String COMPARISONS = "comparisons";

    static final String RUNS = "runs-table";
    static final String CONDITIONS = "conditions";

    private final Words words;

    Grids(Words words) {
        this.words = words;
    }

    Grid of(SummaryTable table) {
        return new Grid(
                        table.id(),
                        table.measurand() + (table.unit().isEmpty() ? "" : " [" + table.unit() + "]"),
                        table.statistic(),
                        List.of(
                                Grid.Column.text(words.say("page.level")),
                                Grid.Column.number("n"),
                                Grid.Column.text(words.say("table.counts")),
                                Grid.Column.number(words.say("page.value"), table.unit()),
                                Grid.Column.number("± U"),
                                Grid.Column.number(words.say("answer.low", table.confidence())),
                                Grid.Column.number(words.say("answer.high", table.confidence())),
                                Grid.Column.number(words.say("answer.u-a")),
                                Grid.Column.number(words.say("answer.u-b")),
                                Grid.Column.text(words.say("table.origin")),
                                Grid.Column.text(words.say("page.caveats"))),
                        table.rows().stream()
                                .map(r -> List.of(
                                        r.level(),
                                        r.n(),
                                        r.counts(),
                                        r.mean(),
                                        r.expanded(),
                                        r.low(),
                                        r.high(),
                                        r.typeA(),
                                        r.typeB(),
                                        r.origin(),
                                        caveats(r.caveats())))
                                .toList())
                .filled();
    }

    Grid of(ComparisonTable table) {
        return new Grid(
                        COMPARISONS,
                        words.say("answer.comparisons"),
                        table.method(),
                        List.of(
                                Grid.Column.text(words.say("answer.comparison")),
                                Grid.Column.number(words.say("answer.estimate")),
                                Grid.Column.number(words.say("answer.low", table.confidence())),
                                Grid.Column.number(words.say("answer.high", table.confidence())),
                                Grid.Column.text(words.say("page.unit")),
                                Grid.Column.text(words.say("page.verdict")),
                                Grid.Column.text(words.say("table.in-words")),
                                Grid.Column.text(words.say("table.base")),
                                Grid.Column.text(words.say("page.caveats"))),
                        table.rows().stream()
                                .map(r -> List.of(
                                        r.subject(),
                                        r.estimate(),
                                        r.low(),
                                        r.high(),
                                        r.unit(),
                                        verdict(r.verdict()),
                                        r.words(),
                                        r.base(),
                                        caveats(r.caveats())))
                                .toList())
                .filled();
    }

    Grid of(RunTable table) {
        List<Grid.Column> columns = new ArrayList<>(List.of(
                Grid.Column.text(words.say("page.run")),
                Grid.Column.text(words.say("page.level")),
                Grid.Column.text(words.say("page.specimen")),
                Grid.Column.text(words.say("page.started")),
                Grid.Column.text(words.say("table.outcome"))));
        for (RunColumn column : table.columns()) {
            columns.add(Grid.Column.number(column.title(), column.unit()));
            columns.add(Grid.Column.number(words.say("table.uncertainty", column.title())));
        }
        columns.add(Grid.Column.text(words.say("page.caveats")));
        return new Grid(
                        RUNS,
                        words.say("answer.every-run"),
                        words.say("table.every-run-note"),
                        columns,
                        table.rows().stream().map(this::cells).toList())
                .filled();
    }

    private List<String> cells(RunRow row) {
        List<String> cells = new ArrayList<>(List.of(
                row.run().text(),
                row.level(),
                row.specimen(),
                row.started(),
                words.say("table.outcome-" + row.outcome())));
        row.values().forEach(value -> {
            cells.add(value.mark().isEmpty() ? value.value() : value.value() + " " + value.mark());
            cells.add(value.uncertainty());
        });
        cells.add(caveats(row.caveats()));
        return cells;
    }

    Grid of(Budget budget) {
        List<List<String>> rows = new ArrayList<>(budget.rows().stream()
                .map(r -> List.of(
                        r.source(),
                        r.type(),
                        r.distribution(),
                        r.standardUncertainty(),
                        r.freedom(),
                        r.share(),
                        r.note()))
                .toList());
        rows.add(List.of(words.say("answer.combined"), "", "", budget.combined(), budget.freedom(), "", ""));
        rows.add(List.of(words.say("answer.expanded-k", budget.coverage()), "", "", budget.expanded(), "", "", ""));
        return new Grid(
                        budget.id(),
                        budget.figure() + (budget.unit().isEmpty() ? "" : " [" + budget.unit() + "]"),
                        words.say("answer.budget-after"),
                        List.of(
                                Grid.Column.text(words.say("page.source")),
                                Grid.Column.text(words.say("answer.type")),
                                Grid.Column.text(words.say("answer.distribution")),
                                Grid.Column.number(words.say("page.standard-uncertainty"), budget.unit()),
                                Grid.Column.number(words.say("answer.freedom")),
                                Grid.Column.number(words.say("page.share-of-variance")),
                                Grid.Column.text(words.say("page.note"))),
                        rows)
                .filled();
    }

    Grid of(List<Condition> conditions) {
        return new Grid(
                CONDITIONS,
                words.say("answer.conditions"),
                "",
                List.of(
                        Grid.Column.text(words.say("answer.condition")),
                        Grid.Column.text(words.say("answer.required")),
                        Grid.Column.text(words.say("answer.found")),
                        Grid.Column.text(words.say("answer.held"))),
                conditions.stream()
                        .map(c -> List.of(c.name(), c.required(), c.found(), c.held()))
                        .toList());
    }

    private String verdict(String verdict) {
        return verdict.isEmpty() ? "" : words.say("table.verdict-" + verdict);
    }

    private static String caveats(List<Caveat> caveats) {
        return caveats.stream().map(Caveat::text).collect(Collectors.joining(" "));
    }
}
