package org.evenhand.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.model.Finding;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.model.Threshold;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/** The unit that each reduction of a method yields by itself, and whether the unit asked for fits it. */
public final class MethodUnits {

    private static final Unit SECOND = Unit.of("s");
    private static final Unit CELSIUS = Unit.of("°C");

    private final Method method;

    /** Says why a reduction yields no unit. */
    private static final class Unfit extends Exception {

        private static final long serialVersionUID = 1L;

        Unfit(String message) {
            super(message, null, false, false);
        }
    }

    private MethodUnits(Method method) {
        this.method = method;
    }

    /**
     * Holds the units of a method's measurands against what their reductions yield.
     *
     * @param subject what the findings are about
     * @return one finding of the rule {@code unit-dimension} for each measurand that does not fit, in their order
     */
    public static List<Finding> check(Method method, Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (Measurand measurand : method.measurands().values()) {
            new MethodUnits(method)
                    .problem(measurand)
                    .ifPresent(problem -> findings.add(Finding.fault(
                            "unit-dimension",
                            Severity.WITHHOLD,
                            method.places().of("measurands/" + measurand.id() + "/unit"),
                            subject,
                            "measurand “" + measurand.id() + "”: " + problem,
                            "correct the unit, or what the measurand is made of")));
        }
        return findings;
    }

    /**
     * The unit that a reduction yields by itself: that of the column, of the column × s, s, 1, …
     *
     * @return absent if what it is made of is not declared or does not fit together, or the measurand's unit does not fit
     */
    static Optional<Unit> natural(Method method, Measurand measurand) {
        MethodUnits units = new MethodUnits(method);
        try {
            return units.problem(measurand).isPresent() ? Optional.empty() : Optional.of(units.yielded(measurand));
        } catch (Unfit e) {
            return Optional.empty();
        }
    }

    /** The unit of what is taken off: of the column, or °C for an ambient that only the run states. */
    static Unit unitOfMinus(Method method, String minus) {
        return method.records().getOrDefault(minus, CELSIUS);
    }

    private Optional<String> problem(Measurand measurand) {
        try {
            Unit yielded = yielded(measurand);
            return yielded.convertsTo(measurand.unit())
                    ? Optional.empty()
                    : Optional.of("“" + measurand.reduction().word() + "” yields " + described(yielded)
                            + ", which does not convert to " + described(measurand.unit()));
        } catch (Unfit e) {
            return Optional.of(e.getMessage());
        }
    }

    private Unit yielded(Measurand measurand) throws Unfit {
        Reduction reduction = measurand.reduction();
        if (reduction instanceof Reduction.OfColumn ofColumn) {
            return ofColumn(ofColumn);
        }
        if (reduction instanceof Reduction.TimeUntil until) {
            threshold(until.condition().column(), until.condition().threshold());
            return SECOND;
        }
        if (reduction instanceof Reduction.Share share) {
            threshold(share.condition().column(), share.condition().threshold());
            return Unit.ONE;
        }
        if (reduction instanceof Reduction.Derived derived) {
            return derived(derived);
        }
        if (reduction instanceof Reduction.AmbientLimit limit) {
            Unit rise = measurand(limit.rise()).unit();
            boolean isRise =
                    rise.kind() == UnitKind.DIFFERENCE && rise.dimension().equals(CELSIUS.dimension());
            if (!isRise) {
                throw new Unfit(described(rise) + " is no rise of temperature");
            }
            return CELSIUS;
        }
        return measurand.unit(); // readings are read in it
    }

    private Unit ofColumn(Reduction.OfColumn reduction) throws Unfit {
        Unit column = column(reduction.column());
        Unit base = column;
        if (reduction.minus().isPresent()) {
            Unit minus = unitOfMinus(method, reduction.minus().get());
            boolean fits = minus.dimension().equals(column.dimension()) && minus.kind() == column.kind();
            if (!fits) {
                throw new Unfit(described(minus) + " cannot be taken off " + described(column));
            }
            base = column.ofDifference();
        }
        Statistic statistic = reduction.statistic();
        if (statistic instanceof Statistic.Integral) {
            if (base.kind() != UnitKind.DIFFERENCE) {
                throw new Unfit("there is no integral of " + described(base));
            }
            return base.times(SECOND);
        }
        if (statistic instanceof Statistic.LevelMean && base.kind() != UnitKind.LEVEL) {
            throw new Unfit("a level-mean is of decibels, not of " + described(base));
        }
        if (statistic instanceof Statistic.Increase increase) {
            if (increase.wrapsAt().isPresent()) {
                fits(increase.wrapsAt().get(), column, "the counter cannot wrap at");
            }
            return base.ofDifference();
        }
        if (statistic instanceof Statistic.Settled settled
                && !settled.settledBelow().unit().dimension().equals(base.dimension())) {
            throw new Unfit("“settled-below” is in "
                    + settled.settledBelow().unit().symbol() + ", the column in " + described(column));
        }
        return base;
    }

    private Unit derived(Reduction.Derived derived) throws Unfit {
        Unit first = measurand(derived.first()).unit();
        Unit second = measurand(derived.second()).unit();
        if (derived.operation() == Reduction.Operation.DIFFERENCE) {
            if (!first.convertsTo(second)) {
                throw new Unfit(described(second) + " cannot be taken off " + described(first));
            }
            return first.ofDifference();
        }
        if (first.kind() != UnitKind.DIFFERENCE || second.kind() != UnitKind.DIFFERENCE) {
            throw new Unfit("points on a scale and levels are neither multiplied nor divided: " + described(first)
                    + ", " + described(second));
        }
        return derived.operation() == Reduction.Operation.QUOTIENT ? first.per(second) : first.times(second);
    }

    private void threshold(String column, Threshold threshold) throws Unfit {
        Unit unit = column(column);
        if (threshold instanceof Threshold.Fixed fixed) {
            fits(fixed.quantity(), unit, "the column cannot be held against");
        }
    }

    private static void fits(Quantity quantity, Unit unit, String words) throws Unfit {
        if (!quantity.unit().convertsTo(unit)) {
            throw new Unfit(words + " " + quantity + ", being in " + described(unit));
        }
    }

    private Unit column(String name) throws Unfit {
        Unit unit = method.records().get(name);
        if (unit == null) {
            throw new Unfit("the method does not record a column “" + name + "”");
        }
        return unit;
    }

    private Measurand measurand(String id) throws Unfit {
        Measurand measurand = method.measurands().get(id);
        if (measurand == null) {
            throw new Unfit("the method has no measurand “" + id + "”");
        }
        return measurand;
    }

    private static String described(Unit unit) {
        return switch (unit.kind()) {
            case POINT -> "a point on a scale in " + unit.symbol();
            case LEVEL -> "a level in " + unit.symbol();
            case DIFFERENCE -> unit.dimension().words() + " in " + unit.symbol();
        };
    }
}
