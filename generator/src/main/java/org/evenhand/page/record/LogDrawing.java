package org.evenhand.page.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.evenhand.chart.Charts;
import org.evenhand.chart.LogChart;
import org.evenhand.log.ThinSeries;
import org.evenhand.measure.BlockSeries;
import org.evenhand.measure.LogFacts;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.model.Item;
import org.evenhand.model.Method;
import org.evenhand.page.Drawings;
import org.evenhand.page.Sentence;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.ChartFigure;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.LogColumn;
import org.evenhand.page.view.Markup;
import org.evenhand.page.words.Names;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;
import org.evenhand.words.Words;

/** Draws the log of a run: a panel for each recorded column, the surroundings behind the temperature. */
final class LogDrawing {

    private static final String AMBIENT = "ambient";
    private static final String ID = "log";

    private final MeasuredRun measured;
    private final Method method;
    private final Optional<Item> item;
    private final LogFacts facts;
    private final LogRows rows;
    private final Words words;

    private LogDrawing(
            MeasuredRun measured, Method method, Optional<Item> item, LogRows rows, LogFacts facts, Words words) {
        this.words = words;
        this.measured = measured;
        this.method = method;
        this.item = item;
        this.facts = facts;
        this.rows = rows;
    }

    /** The drawing; nothing if there is no log, or none that runs through time. */
    static Optional<LogDrawing> of(
            MeasuredRun measured, Method method, Optional<Item> item, LogRows rows, Words words) {
        return measured.log()
                .filter(facts ->
                        facts.lastS() > facts.firstS() && !facts.columns().isEmpty())
                .map(facts -> new LogDrawing(measured, method, item, rows, facts, words));
    }

    /** The chart alone. */
    LogChart chart() {
        return chart(shaded());
    }

    private LogSpans shaded() {
        return LogSpans.of(measured.run(), method, measured.series(), words);
    }

    private LogChart chart(LogSpans shaded) {
        return new LogChart(
                words.say("log.time"),
                Math.min(0, facts.firstS()),
                facts.lastS(),
                panels(),
                shaded.spans(),
                shaded.spans().isEmpty() ? "" : shaded.meaning());
    }

    /** The chart with its words, as a page carries it. */
    ChartFigure figure(Optional<Link> data, Drawings drawings) {
        LogSpans shaded = shaded();
        String title = words.say("log.title", measured.run().id());
        String caption = words.say(
                "log.caption",
                title,
                String.join(", ", drawn().stream().map(Names::setting).toList()));
        LogChart figure = chart(shaded);
        Markup chart =
                new Markup("<div class=\"log\" data-log=\"" + readout(figure).attribute() + "\">"
                        + drawings.of(figure, ID, title, description(shaded)).html() + "</div>");
        return new ChartFigure(Address.chart(ID), caption, chart, notes(shaded), data, List.of(), List.of());
    }

    private LogReadout readout(LogChart figure) {
        LogReadout readout = new LogReadout(figure, words, Charts.COLUMN, Drawings.NARROW);
        for (LogChart.Panel panel : figure.panels()) {
            for (LogChart.Line line : panel.lines()) {
                LogColumn row = rows.of(line.label().isEmpty() ? panel.scale() : line.label());
                readout.with(row.title(), row.unit(), decimals(row.highest()), line.trace());
            }
        }
        return readout;
    }

    private static int decimals(String written) {
        int marker = Math.max(written.indexOf('.'), written.indexOf(','));
        return marker < 0 ? 0 : written.length() - 1 - marker;
    }

    /** The columns that the log has, in the method's order. */
    private List<String> columns() {
        return method.records().keySet().stream()
                .filter(column -> facts.column(column).isPresent()
                        && measured.series().get(column) != null
                        && measured.series().get(column).size() > 0)
                .toList();
    }

    /** Those that are drawn: a number without unit that never changed is told in words. */
    private List<String> drawn() {
        List<String> changing =
                columns().stream().filter(column -> !isStillFlag(column)).toList();
        return changing.isEmpty() ? columns() : changing;
    }

    private boolean isStillFlag(String column) {
        LogFacts.ColumnFacts of = facts.column(column).orElseThrow();
        return unit(column).isOne() && of.lowest() == of.highest();
    }

    /** How to read the drawing. */
    private String notes(LogSpans shaded) {
        List<String> notes = new ArrayList<>();
        List<String> drawn = drawn();
        if (drawn.stream().anyMatch(column -> !limits(column).isEmpty())) {
            notes.add(words.say("log.limit-line"));
        }
        if (shaded.tooFast()) {
            notes.add(Sentence.of(words.say("log.too-fast", shaded.meaning())));
        }
        List<String> still = columns().stream()
                .filter(column -> !drawn.contains(column))
                .map(column -> words.say(
                        "log.still", Names.setting(column), rows.of(column).first()))
                .toList();
        if (!still.isEmpty()) {
            notes.add(words.say("log.not-drawn", String.join("; ", still)));
        }
        return String.join(" ", notes);
    }

    private List<LogChart.Panel> panels() {
        List<String> columns = drawn();
        Optional<String> host = columns.stream()
                .filter(column -> !column.equals(AMBIENT))
                .filter(column -> columns.contains(AMBIENT) && unit(column).kind() == UnitKind.POINT)
                .findFirst();
        List<LogChart.Panel> panels = new ArrayList<>();
        for (String column : columns) {
            boolean hosts = host.filter(column::equals).isPresent();
            if (column.equals(AMBIENT) && host.isPresent()) {
                continue;
            }
            List<LogChart.Line> lines = new ArrayList<>();
            lines.add(line("", column, column.equals(AMBIENT)));
            if (hosts) {
                lines.add(line(AMBIENT, AMBIENT, true));
            }
            panels.add(new LogChart.Panel(title(column), column, lines, limits(column), leastSpan(column)));
        }
        return panels;
    }

    private LogChart.Line line(String label, String column, boolean surroundings) {
        ThinSeries series = measured.series().get(column);
        BlockSeries means = measured.means().getOrDefault(column, new BlockSeries(1, new double[] {}, new double[] {}));
        long samples = facts.column(column).orElseThrow().samples();
        return new LogChart.Line(label, LogTrace.of(series, means, samples), surroundings);
    }

    private String title(String column) {
        Unit unit = unit(column);
        return Names.setting(column) + (unit.isOne() ? "" : " (" + unit.symbol() + ")");
    }

    private Unit unit(String column) {
        return method.records().get(column);
    }

    /** Less than this is noise to a reader, whatever the instrument resolves. Common practice, no source. */
    private double leastSpan(String column) {
        LogFacts.ColumnFacts of = facts.column(column).orElseThrow();
        return switch (unit(column).kind()) {
            case POINT -> 5;
            case LEVEL -> 3;
            case DIFFERENCE -> 0.02 * Math.max(Math.abs(of.lowest()), Math.abs(of.highest()));
        };
    }

    /** What the maker of the item states for a quantity of the column's name. */
    private List<LogChart.Limit> limits(String column) {
        Unit unit = unit(column);
        Map<String, Quantity> stated = item.map(Item::limits).orElse(Map.of());
        Quantity limit = stated.get(column);
        return limit == null || !limit.unit().convertsTo(unit)
                ? List.of()
                : List.of(new LogChart.Limit(limit.in(unit), words.say("log.limit", Names.quantity(limit, words))));
    }

    /** What the drawing shows, in words: the text alternative. */
    private String description(LogSpans shaded) {
        String lines = columns().stream()
                .map(column -> {
                    LogColumn row = rows.of(column);
                    return words.say(
                            "log.course",
                            Names.setting(column),
                            LogRows.withUnit(row.first(), row),
                            LogRows.withUnit(row.last(), row),
                            LogRows.withUnit(row.lowest(), row),
                            LogRows.withUnit(row.highest(), row));
                })
                .collect(Collectors.joining("; "));
        String shade = shaded.spans().isEmpty()
                ? ""
                : " " + words.say("log.shaded", shaded.meaning(), shaded.spans().size());
        String first = Sentence.of(words.say("log.over", Times.duration(facts.durationS(), words), lines));
        return first + shade;
    }
}
