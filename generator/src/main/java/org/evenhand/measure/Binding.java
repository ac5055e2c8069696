package org.evenhand.measure;

import java.util.Optional;
import org.evenhand.model.Measurand;
import org.evenhand.quantity.Unit;

/**
 * A measurand of one run, tied to the log.
 *
 * @param measurand which
 * @param natural the unit in which the reducer works
 * @param unit of the column
 * @param column of the log
 * @param minus the column that is taken off
 * @param ambientStated whether the ambient that the run states is taken off instead
 * @param reducer does the work
 * @param approach fits an exponential approach beside it, where the reduction asks how far the plateau is
 */
record Binding(
        Measurand measurand,
        Unit natural,
        Unit unit,
        String column,
        Optional<String> minus,
        boolean ambientStated,
        Reducer reducer,
        Optional<Approach> approach) {

    Binding with(Reducer other) {
        return new Binding(measurand, natural, unit, column, minus, ambientStated, other, approach);
    }
}
