package org.evenhand.measure;

import org.evenhand.measure.RunValue.AtLeast;
import org.evenhand.measure.RunValue.AtMost;
import org.evenhand.measure.RunValue.Known;
import org.evenhand.measure.RunValue.Missing;
import org.evenhand.model.Reduction.Derived;
import org.evenhand.model.Reduction.Operation;
import org.evenhand.quantity.Unit;
import org.evenhand.words.Phrase;

/** A value made of two others of the same run, with their uncertainties propagated to first order (JCGM 100:2008, 5.1.2). */
final class DerivedValue {

    private DerivedValue() {}

    /**
     * The value in a unit that is known to fit.
     *
     * @param reduction how the two are put together
     * @param first the value on the left
     * @param second the value on the right
     * @param unit wanted
     */
    static RunValue of(Derived reduction, RunValue first, RunValue second, Unit unit) {
        if (first instanceof Known left && second instanceof Known right) {
            return ofKnown(reduction, left, right, unit);
        }
        return lacking(reduction.first(), first) instanceof Missing lacking
                ? lacking
                : lacking(reduction.second(), second);
    }

    /**
     * Why nothing can be made of a value.
     *
     * @return missing, with the reason; the value itself if it is known
     */
    static RunValue lacking(String measurand, RunValue value) {
        if (value instanceof Missing missing) {
            return new Missing(missing.rule(), Phrase.of("missing.part", measurand, missing.why()));
        }
        if (value instanceof AtLeast) {
            return new Missing("censored", Phrase.of("missing.bound", measurand));
        }
        if (value instanceof AtMost) {
            return new Missing("background-near", Phrase.of("missing.bound", measurand));
        }
        return value instanceof Known ? value : new Missing("field-missing", Phrase.of("missing.judgement", measurand));
    }

    private static RunValue ofKnown(Derived reduction, Known left, Known right, Unit unit) {
        double a = left.value();
        if (reduction.operation() == Operation.DIFFERENCE) {
            double b = right.unit().to(left.unit()).fast().apply(right.value());
            double scale = right.unit().differenceTo(left.unit()).fast().apply(1);
            return converted(a - b, 1, -scale, left, right, left.unit().ofDifference(), unit);
        }
        double b = right.value();
        if (reduction.operation() == Operation.PRODUCT) {
            return converted(a * b, b, a, left, right, left.unit().times(right.unit()), unit);
        }
        if (b == 0) {
            return new Missing("implausible", Phrase.of("missing.zero", reduction.second()));
        }
        return converted(a / b, 1 / b, -a / (b * b), left, right, left.unit().per(right.unit()), unit);
    }

    /**
     * The value in the unit wanted.
     *
     * @param byLeft the change of the value with the left one
     * @param byRight the same with the right one
     */
    private static RunValue converted(
            double value, double byLeft, double byRight, Known left, Known right, Unit natural, Unit unit) {
        double f = natural.differenceTo(unit).fast().apply(1);
        double ofLeft = byLeft * left.withinRun();
        double ofRight = byRight * right.withinRun();
        double withinRun = Math.sqrt(ofLeft * ofLeft + ofRight * ofRight);
        return Values.known(
                natural.to(unit).fast().apply(value),
                unit,
                withinRun * Math.abs(f),
                () -> left.contributions()
                        .scaled(byLeft)
                        .plus(right.contributions().scaled(byRight))
                        .scaled(f));
    }
}
