package org.evenhand.check.rule;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.BlockSeries;
import org.evenhand.measure.LogFacts.ColumnFacts;
import org.evenhand.model.Item;
import org.evenhand.model.Reading;
import org.evenhand.model.Run;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** What a run and its item say of themselves in numbers, and what the log says of the same. */
final class Stated {

    private Stated() {}

    /** A setting, if it is a quantity that converts to the unit. */
    static OptionalDouble setting(Run run, String name, Unit unit) {
        return number(run.settings().get(name), unit);
    }

    /** A circumstance, if it is a quantity that converts to the unit. */
    static OptionalDouble circumstance(Run run, String name, Unit unit) {
        return number(run.circumstances().get(name), unit);
    }

    /** A limit that the item's maker states, if it converts to the unit. */
    static OptionalDouble limit(Item item, String name, Unit unit) {
        Quantity limit = item.limits().get(name);
        return limit != null && limit.unit().convertsTo(unit)
                ? OptionalDouble.of(limit.in(unit))
                : OptionalDouble.empty();
    }

    /** A reading, if it is a number that converts to the unit. */
    static OptionalDouble reading(Run run, String name, Unit unit) {
        return run.readings().get(name) instanceof Reading.Measured measured
                        && measured.quantity().unit().convertsTo(unit)
                ? OptionalDouble.of(measured.quantity().in(unit))
                : OptionalDouble.empty();
    }

    /** What the log says of a column; nothing if it has none of it. */
    static Optional<ColumnFacts> column(LevelRun run, String name) {
        return run.measured().log().flatMap(log -> log.column(name));
    }

    /** The highest of a column's block means, in another unit; single odd samples hardly move it in a long log. */
    static OptionalDouble highestMean(StudyView study, LevelRun run, String column, Unit unit) {
        BlockSeries blocks = run.measured().means().get(column);
        Unit logged = study.method(run.run()).records().get(column);
        if (blocks == null || logged == null || !logged.convertsTo(unit) || blocks.size() == 0) {
            return OptionalDouble.empty();
        }
        double highest = blocks.mean(0);
        for (int i = 1; i < blocks.size(); i++) {
            highest = Math.max(highest, blocks.mean(i));
        }
        return OptionalDouble.of(logged.to(unit).fast().apply(highest));
    }

    private static OptionalDouble number(String text, Unit unit) {
        if (text == null) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Quantity.parse(text, unit).in(unit));
        } catch (MisreadException e) {
            return OptionalDouble.empty(); // a word such as "stock", or another kind of quantity
        }
    }
}
