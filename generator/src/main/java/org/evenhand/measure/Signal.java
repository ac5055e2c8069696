package org.evenhand.measure;

import java.util.Optional;
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
    double of(double[] row) {
        return row[column] - minusOf(row);
    }

    double minusOf(double[] row) {
        if (minus < 0) {
            return constant;
        }
        return conversion == null ? row[minus] : conversion.apply(row[minus]);
    }
}
