package org.evenhand.page.words;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.quantity.Figures;
import org.evenhand.statistics.Interval;
import org.evenhand.words.Words;

/**
 * A ratio as a percentage of a named base, in both directions: one pair of values is 22 % more than the one, and 18 % less
 * than the other.
 *
 * @param amount without sign, "22.2 %"
 * @param direction "more" or "less", or the words that fit the quantity
 * @param interval "20.1 % to 24.4 % more"; empty if there is none
 */
public record Change(String amount, String direction, String interval) {

    /**
     * The change from the base to the level.
     *
     * @param ratio level ÷ base
     * @param interval of the ratio
     * @param direction how it is called
     * @param words of the language
     */
    public static Change of(double ratio, Optional<Interval> interval, Direction direction, Words words) {
        Optional<Interval> percent = interval.map(i -> new Interval(percent(i.low()), percent(i.high())));
        Written change = Written.of(OptionalDouble.of(percent(ratio)), percent, "%", words);
        return new Change(
                change.withUnit(unsigned(change.value())),
                direction.of(ratio - 1),
                percent.map(i -> interval(i, change, direction)).orElse(""));
    }

    /** The same pair with the other value as its base. */
    public static Change inverse(double ratio, Optional<Interval> interval, Direction direction, Words words) {
        return of(
                1 / ratio,
                interval.filter(i -> i.low() > 0).map(i -> new Interval(1 / i.high(), 1 / i.low())),
                direction,
                words);
    }

    /** "22.2 % more". */
    public String words() {
        return amount + " " + direction;
    }

    private static String interval(Interval percent, Written change, Direction direction) {
        if (percent.low() < 0 && percent.high() > 0) {
            return change.words()
                    .say(
                            "figure.range",
                            change.withUnit(unsigned(change.low())) + " " + direction.less(),
                            change.withUnit(change.high()) + " " + direction.more());
        }
        boolean less = percent.high() <= 0;
        String near = unsigned(less ? change.high() : change.low());
        String far = unsigned(less ? change.low() : change.high());
        return change.words().say("figure.range", change.withUnit(near), change.withUnit(far)) + " "
                + (less ? direction.less() : direction.more());
    }

    private static double percent(double ratio) {
        return 100 * (ratio - 1);
    }

    private static String unsigned(String number) {
        return number.startsWith("\u2212") ? number.substring(1) : number;
    }

    /** The smallest relative change that could have shown, in percent at two digits. */
    static String percentOf(double share, Words words) {
        double percent = 100 * share;
        return words.number(Figures.at(percent, Figures.decimals(percent))) + Figures.NO_BREAK_SPACE + "%";
    }
}
