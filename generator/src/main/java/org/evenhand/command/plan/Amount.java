package org.evenhand.command.plan;

import org.evenhand.command.UnusableException;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/**
 * A size: of a difference, a margin or a spread.
 *
 * @param value in the unit; of percent, as a fraction
 * @param unit of a difference
 * @param relative whether it is a share of the typical value
 */
record Amount(double value, Unit unit, boolean relative) {

    private static final Unit PERCENT = Unit.of("%");

    static Amount parse(String option, String text) {
        Quantity quantity = quantity(option, text);
        boolean relative = quantity.unit().equals(PERCENT);
        Unit unit = relative ? Unit.ONE : quantity.unit().ofDifference();
        double value = quantity.differenceIn(unit);
        if (!(value > 0 && value <= Double.MAX_VALUE)) {
            throw new UnusableException(option + " must be larger than nothing, not " + text);
        }
        return new Amount(value, unit, relative);
    }

    static Quantity quantity(String option, String text) {
        try {
            return Quantity.parse(text);
        } catch (MisreadException e) {
            throw new UnusableException(option + ": " + e.getMessage() + "; " + e.remedy());
        }
    }

    /** This amount as a share of a typical value, or in a unit: whatever the other is. */
    Amount like(Amount other, String option, java.util.Optional<Quantity> mean) {
        if (relative == other.relative) {
            if (!unit.dimension().equals(other.unit.dimension())) {
                throw new UnusableException(option + " is in " + unit.symbol() + ", but the spread is in "
                        + other.unit.symbol() + ", which does not convert");
            }
            double factor = unit.differenceTo(other.unit).apply(java.math.BigDecimal.ONE);
            return new Amount(value * factor, other.unit, relative);
        }
        Quantity typical = mean.orElseThrow(() -> new UnusableException(option
                + " and the spread are not both in percent or both in a unit; give a typical value with --mean"));
        Unit absolute = relative ? other.unit : unit;
        if (!typical.unit().ofDifference().dimension().equals(absolute.dimension())) {
            throw new UnusableException(
                    "--mean is in " + typical.unit().symbol() + ", but it should convert to " + absolute.symbol());
        }
        double base = Math.abs(typical.differenceIn(absolute));
        if (!(base > 0)) {
            throw new UnusableException("--mean must not be zero");
        }
        return relative ? new Amount(value * base, absolute, false) : new Amount(value / base, Unit.ONE, true);
    }

    Amount times(double newValue) {
        return new Amount(newValue, unit, relative);
    }

    /** Two significant digits suffice for a plan. */
    String text() {
        double shown = relative ? value * 100 : value;
        String number = Figures.at(shown, Figures.decimals(shown));
        return relative ? number + " %" : Figures.withUnit(number, unit).replace(Figures.NO_BREAK_SPACE, " ");
    }
}
