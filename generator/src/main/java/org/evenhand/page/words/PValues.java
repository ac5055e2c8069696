package org.evenhand.page.words;

import org.evenhand.quantity.Figures;

/** Values of p: two digits, and no more zeros than anybody reads. */
public final class PValues {

    private static final double SMALLEST = 0.0001;

    private PValues() {}

    /** "0.0024", "< 0.0001", "1". */
    public static String of(double p) {
        return p < SMALLEST ? "<" + Figures.NO_BREAK_SPACE + "0.0001" : number(p);
    }

    static String number(double p) {
        return p >= 0.995 ? "1" : Figures.at(p, Figures.decimals(p));
    }
}
