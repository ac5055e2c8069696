package org.evenhand.page.words;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.quantity.Figures;
import org.evenhand.statistics.Interval;
import org.evenhand.words.Words;

/**
 * A figure as every table, chart, caption and quotation writes it: rounded once, to two significant digits of its
 * uncertainty, with the decimal marker of the language. What does not exist is empty.
 *
 * @param value without unit
 * @param expanded half the width of the interval, without sign
 * @param low lower end of the interval
 * @param high upper end of the interval
 * @param unit symbol; empty for a pure number
 * @param words of the language
 */
public record Written(String value, String expanded, String low, String high, String unit, Words words) {

    private static final String UNIT_ONE = "1";

    /**
     * A figure with its interval.
     *
     * @param value absent if there is none
     * @param interval absent if there is none; the value then keeps four digits
     * @param unit symbol; "1" and empty both stand for a pure number
     * @param words of the language
     */
    public static Written of(OptionalDouble value, Optional<Interval> interval, String unit, Words words) {
        double halfWidth = interval.map(Interval::halfWidth).orElse(0.0);
        int decimals = halfWidth > 0 ? Figures.decimals(halfWidth) : Figures.decimalsAlone(value.orElse(0));
        return at(value, interval, unit, decimals, words);
    }

    /** A figure of which nothing but itself is known. */
    public static Written alone(double value, String unit, Words words) {
        return of(OptionalDouble.of(value), Optional.empty(), unit, words);
    }

    /** A figure at the place that the caller has reason to choose. */
    static Written at(OptionalDouble value, Optional<Interval> interval, String unit, int decimals, Words words) {
        return new Written(
                value.isPresent() ? words.number(Figures.at(value.getAsDouble(), decimals)) : "",
                interval.map(i -> Figures.uncertaintyAt(i.halfWidth(), decimals))
                        .filter(u -> !u.matches("[0.]*"))
                        .map(words::number)
                        .orElse(""),
                interval.map(i -> words.number(Figures.at(i.low(), decimals))).orElse(""),
                interval.map(i -> words.number(Figures.at(i.high(), decimals))).orElse(""),
                unit.equals(UNIT_ONE) ? "" : Names.unit(unit, words),
                words);
    }

    public boolean isAbsent() {
        return value.isEmpty();
    }

    public boolean hasInterval() {
        return !low.isEmpty();
    }

    /** "31.2 K"; empty if there is no value. */
    public String withUnit() {
        return withUnit(value);
    }

    /** "31.2 ± 0.9 K", or as {@link #withUnit()} where no interval exists. */
    public String withUncertainty() {
        return isAbsent() || expanded.isEmpty()
                ? withUnit()
                : withUnit(value + Figures.NO_BREAK_SPACE + "±" + Figures.NO_BREAK_SPACE + expanded);
    }

    /** "30.3 K to 32.1 K"; empty if there is no interval. */
    public String interval() {
        return hasInterval() ? words.say("figure.range", withUnit(low), withUnit(high)) : "";
    }

    /** A number with this figure's unit; empty for an empty number. */
    public String withUnit(String number) {
        if (number.isEmpty() || unit.isEmpty()) {
            return number;
        }
        return number + Figures.NO_BREAK_SPACE + inText();
    }

    /** "0.062 per hour", not "0.062 1/h", which reads as two numbers. */
    private String inText() {
        if (!unit.startsWith("1/")) {
            return unit;
        }
        String time = "figure.per-" + unit.substring(2);
        return words.has(time) ? words.say(time) : words.say("figure.per", unit.substring(2));
    }
}
