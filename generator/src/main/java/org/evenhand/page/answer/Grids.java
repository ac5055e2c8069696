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

/** The tables of a page, taken from its view, so that what is taken away is what is shown. */
final class Grids {

    /** As the templates name the tables of which a page has one. */
    static final String COMPARISONS = "comparisons";

    static final String RUNS = "runs-table";
    static final String CONDITIONS = "conditions";

    private static final String CAVEATS = "Caveats";

    private Grids() {}

    static Grid of(SummaryTable table) {
        return new Grid(
                        table.id(),
                        table.measurand() + (table.unit().isEmpty() ? "" : " [" + table.unit() + "]"),
                        table.statistic(),
                        List.of(
                                Grid.Column.text("Level"),
                                Grid.Column.number("n"),
                                Grid.Column.text("counts"),
                                Grid.Column.number("Value", table.unit()),
                                Grid.Column.number("± U"),
                                Grid.Column.number(table.confidence() + " from"),
                                Grid.Column.number(table.confidence() + " to"),
                                Grid.Column.number("u, type A"),
                                Grid.Column.number("u, type B"),
                                Grid.Column.text("Origin"),
                                Grid.Column.text(CAVEATS)),
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

    static Grid of(ComparisonTable table) {
        return new Grid(
                        COMPARISONS,
                        "Comparisons",
                        table.method(),
                        List.of(
                                Grid.Column.text("Comparison"),
                                Grid.Column.number("Estimate"),
                                Grid.Column.number(table.confidence() + " from"),
                                Grid.Column.number(table.confidence() + " to"),
                                Grid.Column.text("Unit"),
                                Grid.Column.text("Verdict"),
                                Grid.Column.text("In words"),
                                Grid.Column.text("Base"),
                                Grid.Column.text(CAVEATS)),
                        table.rows().stream()
                                .map(r -> List.of(
                                        r.subject(),
                                        r.estimate(),
                                        r.low(),
                                        r.high(),
                                        r.unit(),
                                        r.verdict(),
                                        r.words(),
                                        r.base(),
                                        caveats(r.caveats())))
                                .toList())
                .filled();
    }

    static Grid of(RunTable table) {
        List<Grid.Column> columns = new ArrayList<>(List.of(
                Grid.Column.text("Run"),
                Grid.Column.text("Level"),
                Grid.Column.text("Specimen"),
                Grid.Column.text("Started"),
                Grid.Column.text("Outcome")));
        for (RunColumn column : table.columns()) {
            columns.add(Grid.Column.number(column.title(), column.unit()));
            columns.add(Grid.Column.number(column.title() + ", ±"));
        }
        columns.add(Grid.Column.text(CAVEATS));
        return new Grid(
                        RUNS,
                        "Values of every run",
                        "± is the standard uncertainty of the single value.",
                        columns,
                        table.rows().stream().map(Grids::cells).toList())
                .filled();
    }

    private static List<String> cells(RunRow row) {
        List<String> cells =
                new ArrayList<>(List.of(row.run().text(), row.level(), row.specimen(), row.started(), row.outcome()));
        row.values().forEach(value -> {
            cells.add(value.mark().isEmpty() ? value.value() : value.value() + " " + value.mark());
            cells.add(value.uncertainty());
        });
        cells.add(caveats(row.caveats()));
        return cells;
    }

    static Grid of(Budget budget) {
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
        rows.add(List.of("Combined standard uncertainty", "", "", budget.combined(), budget.freedom(), "", ""));
        rows.add(List.of("Expanded uncertainty U, k = " + budget.coverage(), "", "", budget.expanded(), "", "", ""));
        return new Grid(
                        budget.id(),
                        budget.figure() + (budget.unit().isEmpty() ? "" : " [" + budget.unit() + "]"),
                        "Uncertainty budget, after the GUM (JCGM 100).",
                        List.of(
                                Grid.Column.text("Source"),
                                Grid.Column.text("Type"),
                                Grid.Column.text("Distribution"),
                                Grid.Column.number("Standard uncertainty", budget.unit()),
                                Grid.Column.number("Degrees of freedom"),
                                Grid.Column.number("Share of variance"),
                                Grid.Column.text("Note")),
                        rows)
                .filled();
    }

    static Grid of(List<Condition> conditions) {
        return new Grid(
                CONDITIONS,
                "Conditions of the runs",
                "",
                List.of(
                        Grid.Column.text("Condition"),
                        Grid.Column.text("Required"),
                        Grid.Column.text("Found"),
                        Grid.Column.text("Held?")),
                conditions.stream()
                        .map(c -> List.of(c.name(), c.required(), c.found(), c.held()))
                        .toList());
    }

    private static String caveats(List<Caveat> caveats) {
        return caveats.stream().map(Caveat::text).collect(Collectors.joining(" "));
    }
}
