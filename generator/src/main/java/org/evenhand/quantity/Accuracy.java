package org.evenhand.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import org.evenhand.quantity.MisreadException.Fault;

/**
 * The limits of error that the maker of an instrument states: a part of the reading and a fixed part, which add.
 *
 * @param ofReading the part of the reading, as a plain number (0.5 % is 0.005); zero if none is stated
 * @param fixed the fixed part, as a difference; absent if none is stated
 */
public record Accuracy(BigDecimal ofReading, Optional<Quantity> fixed) {

    private static final String FORM = "write “0.5 % of reading + 10 mW”, or one of the two parts";

    /** Reads {@code "0.5 % of reading + 10 mW"}, or either part alone; "±" in front is allowed. */
    public static Accuracy parse(String text) throws MisreadException {
        int plus = text.indexOf(" + ");
        String first = plus < 0 ? text : text.substring(0, plus);
        int start = first.startsWith("±") ? 1 : 0;
        while (start < first.length() && first.charAt(start) == ' ') {
            start++;
        }
        int of = first.indexOf(" of reading");
        if (of < 0) {
            if (plus >= 0) {
                throw new MisreadException(
                        Fault.NOT_A_QUANTITY, 0, text.length(), "“" + text + "” is no accuracy", FORM);
            }
            return new Accuracy(BigDecimal.ZERO, Optional.of(part(text, start, text.length())));
        }
        if (!first.substring(of).equals(" of reading")) {
            throw new MisreadException(
                    Fault.NOT_A_QUANTITY, of, first.length() - of, "only “of reading” is understood here", FORM);
        }
        Quantity share = part(text, start, of);
        if (!share.unit().dimension().equals(Dimension.ONE) || share.unit().kind() != UnitKind.DIFFERENCE) {
            throw new MisreadException(
                    Fault.UNIT_DIMENSION, start, of - start, "the part of the reading is no percentage", FORM);
        }
        BigDecimal fraction =
                Fraction.of(share.value()).times(share.unit().factor()).toBigDecimal();
        return new Accuracy(fraction, plus < 0 ? Optional.empty() : Optional.of(part(text, plus + 3, text.length())));
    }

    private static Quantity part(String text, int start, int end) throws MisreadException {
        if (start >= end) {
            throw new MisreadException(Fault.NOT_A_QUANTITY, 0, text.length(), "“" + text + "” is no accuracy", FORM);
        }
        try {
            Quantity quantity = Quantity.parse(text.substring(start, end));
            if (quantity.value().signum() < 0) {
                throw new MisreadException(
                        Fault.NOT_A_QUANTITY, 0, end - start, "a limit of error is never negative", FORM);
            }
            return quantity;
        } catch (MisreadException e) {
            throw e.shifted(start);
        }
    }
}
