package org.evenhand.measure;

import java.util.function.Supplier;
import org.evenhand.quantity.Unit;
import org.evenhand.words.Phrase;

/** Makes values of numbers that may have left the range in which they can be computed with. */
final class Values {

    private static final double LARGEST = 1e150;

    private Values() {}

    /** A known value; missing if it is too large to be squared. */
    static RunValue known(double value, Unit unit, double withinRun, Supplier<Contributions> contributions) {
        if (Math.abs(value) <= LARGEST && withinRun <= LARGEST) {
            return new RunValue.Known(value, unit, withinRun, contributions.get());
        }
        return new RunValue.Missing("implausible", Phrase.of("missing.too-large"));
    }
}
