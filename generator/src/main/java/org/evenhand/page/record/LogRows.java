package org.evenhand.page.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.measure.LogFacts;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.model.Instrument;
import org.evenhand.model.Method;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.LogColumn;
import org.evenhand.page.words.Names;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.words.Words;

/** The columns of one run's log at a glance: what its chart shows, as a table. */
final class LogRows {

    private static final int MOST_DECIMALS = 6;

    private final MeasuredRun measured;
    private final Method method;
    private final Map<String, Instrument> instruments;
    private final Words words;

    LogRows(MeasuredRun measured, Method method, Map<String, Instrument> instruments, Words words) {
        this.words = words;
        this.measured = measured;
        this.method = method;
        this.instruments = instruments;
    }

    /** In the method's order; none if there is no log. */
    List<LogColumn> all() {
        List<LogColumn> rows = new ArrayList<>();
        for (String column : method.records().keySet()) {
            if (measured.log().flatMap(facts -> facts.column(column)).isPresent()) {
                rows.add(of(column));
            }
        }
        return rows;
    }

    /** A column that the log has. */
    LogColumn of(String column) {
        LogFacts.ColumnFacts facts = measured.log().orElseThrow().column(column).orElseThrow();
        Unit unit = method.records().get(column);
        int decimals = decimals(column, unit, facts);
        return new LogColumn(
                Names.label(column),
                unit.isOne() ? "" : unit.symbol(),
                instrument(column),
                Long.toString(facts.samples()),
                words.number(Figures.at(facts.first(), decimals)),
                words.number(Figures.at(facts.lowest(), decimals)),
                words.number(Figures.at(facts.mean(), decimals)),
                words.number(Figures.at(facts.highest(), decimals)),
                words.number(Figures.at(facts.last(), decimals)));
    }

    static String withUnit(String written, LogColumn row) {
        return row.unit().isEmpty() ? written : written + Figures.NO_BREAK_SPACE + row.unit();
    }

    private Link instrument(String column) {
        Instrument instrument = known(column).orElse(null);
        return instrument == null ? Link.plain("") : InstrumentPages.link(instrument);
    }

    private Optional<Instrument> known(String column) {
        return Optional.ofNullable(measured.run().instruments().get(column)).map(instruments::get);
    }

    /** As fine as the instrument resolves; else so that the whole range takes three digits. */
    private int decimals(String column, Unit unit, LogFacts.ColumnFacts facts) {
        Optional<Quantity> resolution = known(column)
                .flatMap(Instrument::resolution)
                .filter(r -> r.unit().dimension().equals(unit.dimension()));
        double step =
                resolution.isPresent() ? resolution.get().differenceIn(unit) : (facts.highest() - facts.lowest()) / 100;
        if (step > 0) {
            // Two significant digits of ten steps are one of a step.
            return Math.max(0, Math.min(MOST_DECIMALS, Figures.decimals(10 * step)));
        }
        return Figures.decimalsAlone(facts.highest());
    }
}
