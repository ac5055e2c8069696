package org.evenhand.page.words;

import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;
import org.evenhand.words.Words;

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
    public static Direction of(Unit unit, Words words) {
        if (unit.kind() != UnitKind.DIFFERENCE) {
            return height(words);
        }
        if (unit.dimension().equals(SECOND.dimension())) {
            return new Direction(words.say("figure.longer"), words.say("figure.shorter"));
        }
        boolean counted = unit.dimension().equals(Unit.ONE.dimension())
                && !unit.isOne()
                && !unit.symbol().equals("%");
        return unit.dimension().equals(JOULE.dimension()) || counted ? amount(words) : height(words);
    }

    /** More or less. */
    static Direction amount(Words words) {
        return new Direction(words.say("figure.more"), words.say("figure.less"));
    }

    private static Direction height(Words words) {
        return new Direction(words.say("figure.higher"), words.say("figure.lower"));
    }

    /** The word for a change of this sign. */
    public String of(double change) {
        return change < 0 ? less : more;
    }
}
