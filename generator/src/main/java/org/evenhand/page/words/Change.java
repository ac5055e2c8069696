package org.evenhand.page.words;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.quantity.Figures;
import org.evenhand.statistics.Interval;

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
     */
    public static Change of(double ratio, Optional<Interval> interval, Direction words) {
        Optional<Interval> percent = interval.map(i -> new Interval(percent(i.low()), percent(i.high())));
        Written change = Written.of(OptionalDouble.of(percent(ratio)), percent, "%");
        String direction = words.of(ratio - 1);
        return new Change(
                change.withUnit(unsigned(change.value())),
                direction,
                percent.map(i -> interval(i, change, words)).orElse(""));
    }

    /** The same pair with the other value as its base. */
    public static Change inverse(double ratio, Optional<Interval> interval, Direction words) {
        return of(
                1 / ratio, interval.filter(i -> i.low() > 0).map(i -> new Interval(1 / i.high(), 1 / i.low())), words);
    }

    /** "22.2 % more". */
    public String words() {
        return amount + " " + direction;
    }

    private static String interval(Interval percent, Written change, Direction words) {
        if (percent.low() < 0 && percent.high() > 0) {
            return change.withUnit(unsigned(change.low())) + " " + words.less() + " to "
                    + change.withUnit(change.high()) + " " + words.more();
        }
        boolean less = percent.high() <= 0;
        String near = unsigned(less ? change.high() : change.low());
        String far = unsigned(less ? change.low() : change.high());
        return change.withUnit(near) + " to " + change.withUnit(far) + " " + (less ? words.less() : words.more());
    }

    private static double percent(double ratio) {
        return 100 * (ratio - 1);
    }

    private static String unsigned(String number) {
        return number.startsWith("\u2212") ? number.substring(1) : number;
    }

    /** The smallest relative change that could have shown, in percent at two digits. */
    static String percentOf(double share) {
        double percent = 100 * share;
        return Figures.at(percent, Figures.decimals(percent)) + Figures.NO_BREAK_SPACE + "%";
    }
}
