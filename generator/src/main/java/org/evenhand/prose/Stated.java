package org.evenhand.prose;

import java.math.BigDecimal;
import org.evenhand.quantity.Unit;

/**
 * A quantity that a sentence states.
 *
 * @param start index of its first character, words before the number included
 * @param numberStart index of its number
 * @param numberEnd behind its number, or both numbers of a range
 * @param end behind its unit
 * @param shape what sort of statement it is
 * @param first the number, or the lower one; the successes of a count
 * @param second the upper number of a range, what stands behind ±, or the total of a count; otherwise the first
 * @param unit of the number; the number one where it has none
 * @param bound how it is to be taken
 * @param step what the last digit that counts is worth
 * @param secondStep the same of the second number
 * @param signed whether it carries a sign of its own
 */
record Stated(
        int start,
        int numberStart,
        int numberEnd,
        int end,
        Shape shape,
        BigDecimal first,
        BigDecimal second,
        Unit unit,
        Bound bound,
        BigDecimal step,
        BigDecimal secondStep,
        boolean signed) {

    /** What sort of statement it is. */
    enum Shape {
        /** A number with a unit, or without. */
        QUANTITY,
        PERCENT,
        /** A difference of percentages. */
        POINTS,
        /** "Twice", "a third", "three times". */
        MULTIPLE,
        /** "9 of 10". */
        COUNT,
        /** A number alone. */
        NUMBER
    }

    /** How a number is to be taken. */
    enum Bound {
        EXACT,
        ABOUT,
        /** "At least", "over". */
        LOWER,
        /** "At most", "under". */
        UPPER,
        /** "3 to 5". */
        RANGE,
        /** "31 ± 2". */
        SPREAD
    }
}
