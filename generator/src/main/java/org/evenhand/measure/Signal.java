package org.evenhand.measure;

import java.util.Optional;
import org.evenhand.log.Samples;
import org.evenhand.quantity.Conversion;

/**
 * A column of a log, less another column or a constant.
 *
 * @param column index in the row
 * @param minus index of what is taken off; -1 if it is the constant
 * @param constant taken off where no column is, in the unit of the column; zero for nothing
 * @param conversion of what is taken off to the unit of the column; null if it has the same
 */
record Signal(int column, int minus, double constant, Conversion.Fast conversion) {

    static Signal of(int column) {
        return new Signal(column, -1, 0, null);
    }

    static Signal less(int column, double constant) {
        return new Signal(column, -1, constant, null);
    }

    static Signal less(int column, int minus, Conversion conversion) {
        Optional<Conversion> needed = Optional.of(conversion).filter(c -> !c.isIdentity());
        return new Signal(column, minus, 0, needed.map(Conversion::fast).orElse(null));
    }

    /** In the unit of the column; NaN where one of the two has no sample. */
    double of(Samples some, int index) {
        return some.column(column)[index] - minusOf(some, index);
    }

    double minusOf(Samples some, int index) {
        if (minus < 0) {
            return constant;
        }
        double value = some.column(minus)[index];
        return conversion == null ? value : conversion.apply(value);
    }

    /** Whether nothing is taken off. */
    boolean isWhole() {
        return minus < 0 && constant == 0;
    }
}
