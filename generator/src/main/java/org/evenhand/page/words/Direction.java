package org.evenhand.page.words;

import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/**
 * How a change of a quantity is called.
 *
 * @param more "more", "higher" or "longer"
 * @param less "less", "lower" or "shorter"
 */
public record Direction(String more, String less) {

    private static final Unit JOULE = Unit.of("J");
    private static final Unit SECOND = Unit.of("s");

    /** Energies and counts are more or less, times longer or shorter, all else higher or lower. */
    public static Direction of(Unit unit) {
        if (unit.kind() != UnitKind.DIFFERENCE) {
            return new Direction("higher", "lower");
        }
        if (unit.dimension().equals(SECOND.dimension())) {
            return new Direction("longer", "shorter");
        }
        boolean counted = unit.dimension().equals(Unit.ONE.dimension())
                && !unit.isOne()
                && !unit.symbol().equals("%");
        return unit.dimension().equals(JOULE.dimension()) || counted
                ? new Direction("more", "less")
                : new Direction("higher", "lower");
    }

    /** The word for a change of this sign. */
    public String of(double change) {
        return change < 0 ? less : more;
    }
}
