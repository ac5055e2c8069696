package org.evenhand.page.words;

import org.evenhand.compare.ComparisonResult;
import org.evenhand.page.Sentence;
import org.evenhand.quantity.Figures;
import org.evenhand.words.Words;

/** Rates of failure in sentences. */
final class FailureRates {

    private FailureRates() {}

    static String sentence(ComparisonResult.FailureRate r, Words words) {
        if (r.interval().isEmpty()) {
            return Sentence.of(String.join("; ", r.why()));
        }
        Written rate = ComparisonFigures.of(r, words);
        String seen = r.events() == 0
                ? words.say("verdict.no-failure", hours(r, words), rate.withUnit(rate.high()))
                : words.say(
                        "verdict.failures",
                        Counting.of(r.events(), "failure", words),
                        hours(r, words),
                        rate.withUnit(),
                        rate.interval());
        return seen + chance(r, words);
    }

    /** The time under observation: "48 h". */
    static String hours(ComparisonResult.FailureRate r, Words words) {
        return words.number(Figures.value(r.timeS() / 3600, 0)) + Figures.NO_BREAK_SPACE + "h";
    }

    private static String chance(ComparisonResult.FailureRate r, Words words) {
        if (r.chance().isEmpty() || r.plan().duration().isEmpty()) {
            return "";
        }
        return " "
                + words.say(
                        "verdict.chance",
                        Names.quantity(r.plan().duration().get(), words),
                        Verdicts.percent(r.chance().getAsDouble(), words));
    }
}
