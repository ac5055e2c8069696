package org.evenhand.page.words;

import org.evenhand.compare.ComparisonResult;
import org.evenhand.page.Sentence;
import org.evenhand.quantity.Figures;

/** Rates of failure in sentences. */
final class FailureRates {

    private FailureRates() {}

    static String sentence(ComparisonResult.FailureRate r) {
        if (r.interval().isEmpty()) {
            return Sentence.of(String.join("; ", r.why()));
        }
        Written rate = ComparisonFigures.of(r);
        String seen = r.events() == 0
                ? "No failure in " + hours(r) + ": the rate is at most " + rate.withUnit(rate.high())
                        + ", a one-sided 95" + Figures.NO_BREAK_SPACE + "% bound."
                : Counting.of(r.events(), "failure") + " in " + hours(r) + ": " + rate.withUnit() + ", interval "
                        + rate.interval() + ".";
        return seen + chance(r);
    }

    /** The time under observation: "48 h". */
    static String hours(ComparisonResult.FailureRate r) {
        return Figures.value(r.timeS() / 3600, 0) + Figures.NO_BREAK_SPACE + "h";
    }

    private static String chance(ComparisonResult.FailureRate r) {
        return r.chance().isEmpty() || r.plan().duration().isEmpty()
                ? ""
                : " At the upper bound, the chance of "
                        + Names.quantity(r.plan().duration().get()) + " without a failure is "
                        + Verdicts.percent(r.chance().getAsDouble()) + ".";
    }
}
