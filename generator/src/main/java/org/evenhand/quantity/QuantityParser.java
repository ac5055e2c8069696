package org.evenhand.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import org.evenhand.quantity.MisreadException.Fault;

/** Reads one quantity, character by character, so that every fault has its place. */
final class QuantityParser {

    /** More digits than any instrument gives; keeps a hostile exponent from making a number of a gigabyte. */
    private static final int LARGEST_EXPONENT = 300;

    /** The time to read a number grows with the square of its length. */
    private static final int MOST_CHARACTERS = 1000;

    private static final int LONGEST = 200;

    private final String text;
    private int at;

    QuantityParser(String text) {
        this.text = text;
    }

    Quantity quantity() throws MisreadException {
        return read(false);
    }

    Quantity count() throws MisreadException {
        return read(true);
    }

    Quantity quantity(Unit wanted) throws MisreadException {
        Quantity quantity = read(wanted.dimension().equals(Dimension.ONE) && wanted.kind() == UnitKind.DIFFERENCE);
        Unit unit = quantity.unit();
        if (unit.convertsTo(wanted)) {
            return quantity;
        }
        int start = text.lastIndexOf(' ') + 1;
        int length = Math.max(1, text.length() - start);
        if (unit.kind() == UnitKind.POINT
                && wanted.kind() == UnitKind.DIFFERENCE
                && unit.dimension().equals(wanted.dimension())) {
            BigDecimal kelvin = new BigDecimal(quantity.differenceIn(wanted)).round(new java.math.MathContext(6));
            throw new MisreadException(
                    Fault.DIFFERENCE_AS_POINT,
                    start,
                    length,
                    "a difference of temperatures is wanted here, but " + unit.symbol() + " marks a point on the scale",
                    "write “" + kelvin.stripTrailingZeros().toPlainString() + " " + wanted.symbol()
                            + "” if a difference of " + text + " is meant");
        }
        String found = unit.kind() == UnitKind.LEVEL
                ? "a level in " + unit.symbol()
                : unit.dimension().words();
        String expected = wanted.kind() == UnitKind.LEVEL
                ? "a level in " + wanted.symbol()
                : wanted.dimension().words();
        if (unit.dimension().equals(wanted.dimension()) && wanted.kind() == UnitKind.POINT) {
            found = "a difference in " + unit.symbol();
            expected = "a point on the scale";
        }
        throw new MisreadException(
                Fault.UNIT_DIMENSION,
                start,
                length,
                "“" + text + "” is " + found + ", but " + expected + " is wanted here",
                "give it in " + wanted.symbol() + " or a unit that converts to it");
    }

    private Quantity read(boolean plainAllowed) throws MisreadException {
        if (text.length() > LONGEST) {
            throw new MisreadException(
                    Fault.NOT_A_QUANTITY,
                    0,
                    1,
                    "a text of " + text.length() + " characters is no quantity",
                    "write a number and a unit");
        }
        BigDecimal value = number();
        skipSpaces();
        Optional<BigDecimal> uncertainty = Optional.empty();
        if (at < text.length() && (text.charAt(at) == '±' || text.startsWith("+/-", at))) {
            at += text.charAt(at) == '±' ? 1 : 3;
            skipSpaces();
            int start = at;
            BigDecimal behind = number();
            if (behind.signum() < 0) {
                throw new MisreadException(
                        Fault.NOT_A_QUANTITY,
                        start,
                        at - start,
                        "an uncertainty cannot be negative",
                        "write it without a sign");
            }
            uncertainty = Optional.of(behind);
            skipSpaces();
        }
        String unit = text.substring(at).stripTrailing();
        if (unit.isEmpty()) {
            if (plainAllowed) {
                return new Quantity(value, uncertainty, Unit.ONE);
            }
            throw new MisreadException(
                    Fault.UNIT_MISSING,
                    0,
                    Math.max(1, text.length()),
                    "“" + text + "” has no unit",
                    "write the unit behind the number, as in “" + text.strip() + " °C” or “" + text.strip() + " W”");
        }
        try {
            return new Quantity(value, uncertainty, Unit.parse(unit));
        } catch (MisreadException e) {
            throw e.shifted(at);
        }
    }

    private void skipSpaces() {
        while (at < text.length()
                && (text.charAt(at) == ' ' || text.charAt(at) == '\u00a0' || text.charAt(at) == '\u202f')) {
            at++;
        }
    }

    /** [sign] digits [. digits] [e [sign] digits], and nothing that could mean two things. */
    private BigDecimal number() throws MisreadException {
        int start = at;
        if (at < text.length() && "+-−".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        int digits = digits();
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            int after = digits();
            if (after == 0) {
                throw ambiguous(start, "the decimal point has no digit behind it");
            }
            digits += after;
        }
        if (digits == 0) {
            throw ambiguous(start, "no number stands here");
        }
        if (at < text.length() && (text.charAt(at) == ',' || text.charAt(at) == '\'' || text.charAt(at) == '’')) {
            throw ambiguous(start, "“" + text.strip() + "” can be read in two ways");
        }
        exponent();
        if (at - start > MOST_CHARACTERS) {
            throw ambiguous(start, "the number has too many digits");
        }
        String written = text.substring(start, at).replace('−', '-');
        BigDecimal value = new BigDecimal(written);
        if (Math.abs((long) value.precision() - value.scale()) > LARGEST_EXPONENT || value.scale() > LARGEST_EXPONENT) {
            throw ambiguous(start, "the number is too large or too small to be measured");
        }
        return value;
    }

    private void exponent() throws MisreadException {
        // "3e-3" is a power of ten; "3 eV" is not, so digits must follow.
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            int mark = at;
            at++;
            if (at < text.length() && "+-−".indexOf(text.charAt(at)) >= 0) {
                at++;
            }
            int digits = digits();
            if (digits == 0) {
                at = mark;
            } else if (digits > 3) {
                throw ambiguous(mark, "the exponent is too large");
            }
        }
    }

    private int digits() {
        int start = at;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at - start;
    }

    private MisreadException ambiguous(int start, String message) {
        int end = text.indexOf(' ', start);
        int length = Math.max(1, (end < 0 ? text.length() : end) - start);
        return new MisreadException(
                Fault.NUMBER_AMBIGUOUS,
                Math.min(start, Math.max(0, text.length() - 1)),
                length,
                message,
                "write digits with a decimal point and no separators, as in 1234.5");
    }
}
