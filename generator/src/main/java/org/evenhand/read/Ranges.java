package org.evenhand.read;

import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** Fields that hold a lowest and a highest quantity: "18 °C to 28 °C". */
final class Ranges {

    private static final String REMEDY = "write the lowest and the highest, each with its unit: 18 °C to 28 °C";

    private Ranges() {}

    /** A range whose ends convert to a unit. */
    static FieldType in(String unit) {
        Unit wanted = Unit.of(unit);
        return type("a range such as 18 °C to 28 °C", text -> wanted);
    }

    /** A range in any unit, as long as both ends have the same. */
    static FieldType ofAnyUnit() {
        return type("a range such as -40 °C to 105 °C", text -> lowest(text).unit());
    }

    /** The end in front of "to". */
    static Quantity lowest(String text) throws MisreadException {
        return Quantity.parse(text.split(" to ", -1)[0]);
    }

    /** The end behind it. */
    static Quantity highest(String text) throws MisreadException {
        return Quantity.parse(text.split(" to ", -1)[1]);
    }

    /** Tells in which unit the ends of a range are wanted. */
    @FunctionalInterface
    private interface Wanted {
        Unit of(String text) throws MisreadException;
    }

    private static FieldType type(String what, Wanted wanted) {
        return new ScalarType(
                what,
                text -> {
                    String[] ends = text.split(" to ", -1);
                    if (ends.length != 2) {
                        return REMEDY;
                    }
                    Unit unit = wanted.of(text);
                    double lowest = Quantity.parse(ends[0], unit).in(unit);
                    return lowest < Quantity.parse(ends[1], unit).in(unit) ? null : REMEDY;
                },
                s -> s.put("type", "string").put("pattern", " to "));
    }
}
