package org.evenhand.page.words;

import org.evenhand.quantity.Figures;
import org.evenhand.words.Words;

/** Values of p: two digits, and no more zeros than anybody reads. */
public final class PValues {

    private static final double SMALLEST = 0.0001;

    private PValues() {}

    /** "0.0024", "< 0.0001", "1". */
    public static String of(double p, Words words) {
        return p < SMALLEST ? "<" + Figures.NO_BREAK_SPACE + words.number("0.0001") : number(p, words);
    }

    static String number(double p, Words words) {
        return p >= 0.995 ? "1" : words.number(Figures.at(p, Figures.decimals(p)));
    }
}
