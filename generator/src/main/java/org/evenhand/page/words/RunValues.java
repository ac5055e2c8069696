package org.evenhand.page.words;

import org.evenhand.measure.RunValue;
import org.evenhand.model.Origin;
import org.evenhand.page.view.Address;
import org.evenhand.quantity.Figures;
import org.evenhand.words.Judgement;
import org.evenhand.words.Words;

/** One run's value of a measurand as tables write it. */
public final class RunValues {

    private RunValues() {}

    /**
     * The cell of a table.
     *
     * @param run its id
     * @param measurand as addresses name it, {@link StudyNames#address}
     * @param origin of the run's figures
     * @param words of the language
     */
    public static org.evenhand.page.view.RunValue view(
            RunValue value, String run, String measurand, Origin origin, Words words) {
        boolean bound = value instanceof RunValue.AtLeast || value instanceof RunValue.AtMost;
        String mark = bound ? words.say("figure.censored") : Origins.mark(origin, words);
        boolean none = value instanceof RunValue.Missing;
        return new org.evenhand.page.view.RunValue(
                Address.value(run, measurand), number(value, words), uncertainty(value, words), none ? "" : mark);
    }

    /** The number without its unit, "> 45" or "≤ 32.1" for a bound, a word for a judgement; empty if there is none. */
    public static String number(RunValue value, Words words) {
        if (value instanceof RunValue.Known known) {
            return words.number(Figures.value(known.value(), known.standardUncertainty()));
        }
        if (value instanceof RunValue.AtLeast atLeast) {
            return ">" + Figures.NO_BREAK_SPACE + words.number(Figures.value(atLeast.bound(), 0));
        }
        if (value instanceof RunValue.AtMost atMost) {
            return "\u2264" + Figures.NO_BREAK_SPACE + words.number(Figures.value(atMost.bound(), 0));
        }
        return value instanceof RunValue.Noted noted ? Judgement.of(noted.reading(), words) : "";
    }

    /** The standard uncertainty at the place of the number; empty if none is known. */
    public static String uncertainty(RunValue value, Words words) {
        if (value instanceof RunValue.Known known && known.standardUncertainty() > 0) {
            double u = known.standardUncertainty();
            return words.number(Figures.uncertaintyAt(u, Figures.decimals(u)));
        }
        return "";
    }
}
