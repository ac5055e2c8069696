package org.evenhand.prose;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.prose.Stated.Bound;
import org.evenhand.quantity.Conversion;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/** Holds a stated number against a computed one, at the precision in which it is stated. */
final class FigureMatch {

    private FigureMatch() {}

    /** The figure in the unit of a statement; nothing if it is of another dimension or kind. */
    static Optional<Figure> in(Unit unit, Figure figure) {
        if (figure.unit().equals(unit)) {
            return Optional.of(figure);
        }
        // Frames are counted: a number with the word or without it is the same, but pages are none.
        boolean bothCount = isCount(figure.unit()) && isCount(unit);
        if (bothCount) {
            return unit.isOne() ? Optional.of(figure) : Optional.empty();
        }
        boolean shares = figure.unit().isOne() != unit.isOne() && !unit.equals(FigureText.PERCENT);
        if (!figure.unit().convertsTo(unit) || (shares && unit.dimension().equals(Unit.ONE.dimension()))) {
            return Optional.empty();
        }
        Conversion conversion = figure.unit().to(unit);
        return Optional.of(new Figure(
                converted(figure.value(), conversion),
                converted(figure.low(), conversion),
                converted(figure.high(), conversion),
                unit));
    }

    private static boolean isCount(Unit unit) {
        return unit.dimension().equals(Unit.ONE.dimension())
                && unit.kind() == UnitKind.DIFFERENCE
                && unit.factor().equals(Unit.ONE.factor());
    }

    private static OptionalDouble converted(OptionalDouble value, Conversion conversion) {
        return value.isPresent() ? OptionalDouble.of(conversion.apply(value.getAsDouble())) : value;
    }

    /**
     * Whether a statement holds.
     *
     * @param figure in the unit of the statement, with the sign that the words carry taken out
     */
    static boolean holds(Stated stated, Figure figure) {
        return switch (stated.bound()) {
            case EXACT, ABOUT -> near(figure.value(), stated.first(), stated.step());
            case RANGE ->
                near(figure.low(), stated.first(), stated.step())
                        && near(figure.high(), stated.second(), stated.secondStep());
            case SPREAD ->
                near(figure.value(), stated.first(), stated.step())
                        && figure.hasInterval()
                        && near(OptionalDouble.of(figure.halfWidth()), stated.second(), stated.secondStep());
            case LOWER ->
                end(figure.low(), figure).orElse(Double.NEGATIVE_INFINITY)
                        >= stated.first().doubleValue();
            case UPPER ->
                end(figure.high(), figure).orElse(Double.POSITIVE_INFINITY)
                                <= stated.first().doubleValue()
                        || isTheBoundItself(stated, figure);
        };
    }

    /** What is known as a bound alone may be quoted as tables write it: to the nearest, with two digits at least. */
    private static boolean isTheBoundItself(Stated stated, Figure figure) {
        boolean noFailure = figure.value().isEmpty() || figure.value().getAsDouble() == 0;
        return noFailure && stated.first().precision() >= 2 && near(figure.high(), stated.first(), stated.step());
    }

    /** Whether a number is the upper bound: to the nearest, but with a single digit rounded up. */
    static boolean isBound(Stated stated, Figure figure) {
        double above = stated.first().doubleValue() - figure.high().orElse(Double.NaN);
        return stated.first().precision() == 1
                ? above >= 0 && above < stated.step().doubleValue()
                : near(figure.high(), stated.first(), stated.step());
    }

    /** The end of the interval; of a stated or counted number, which has none, the number itself. */
    private static OptionalDouble end(OptionalDouble end, Figure figure) {
        boolean noInterval = figure.low().isEmpty() && figure.high().isEmpty();
        return end.isPresent() ? end : noInterval ? figure.value() : OptionalDouble.empty();
    }

    private static boolean near(OptionalDouble computed, BigDecimal stated, BigDecimal step) {
        return computed.isPresent()
                && Math.abs(computed.getAsDouble() - stated.doubleValue()) <= QuantityScanner.tolerance(step);
    }

    /** The number that would be right, written as finely as the author wrote, but not so coarsely that nothing is left. */
    static Optional<String> right(Stated stated, Figure figure, QuantityScanner scanner) {
        OptionalDouble value = stated.bound() == Bound.UPPER && figure.high().isPresent()
                ? figure.high()
                : stated.bound() == Bound.LOWER && figure.low().isPresent() ? figure.low() : figure.value();
        if (stated.bound() == Bound.RANGE && figure.hasInterval()) {
            BigDecimal step = fine(figure.halfWidth(), stated.secondStep());
            return Optional.of(scanner.write(figure.low().getAsDouble(), step) + " to "
                    + scanner.write(figure.high().getAsDouble(), step));
        }
        if (value.isEmpty() || stated.bound() == Bound.RANGE) {
            return Optional.empty();
        }
        BigDecimal step = fine(value.getAsDouble(), stated.step());
        String number = scanner.write(onTheSafeSide(value.getAsDouble(), step, stated.bound()), step);
        if (stated.bound() == Bound.SPREAD) {
            return figure.hasInterval()
                    ? Optional.of(number + " ± "
                            + scanner.write(figure.halfWidth(), fine(figure.halfWidth(), stated.secondStep())))
                    : Optional.of(number);
        }
        return Optional.of(number);
    }

    /** A bound is rounded away from the interval. */
    private static double onTheSafeSide(double value, BigDecimal step, Bound bound) {
        double size = step.doubleValue();
        return switch (bound) {
            case LOWER -> Math.floor(value / size) * size;
            case UPPER -> Math.ceil(value / size) * size;
            default -> value;
        };
    }

    private static BigDecimal fine(double value, BigDecimal step) {
        BigDecimal result = step;
        while (value != 0 && Math.abs(value) < 2 * result.doubleValue() && result.scale() < 8) {
            result = result.movePointLeft(1);
        }
        return result;
    }
}
