package org.evenhand.measure;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.DoubleBinaryOperator;

/**
 * What contributes to the uncertainty of a value, by cause.
 *
 * <p>Each cause has a signed standard uncertainty, the change of the value for one standard uncertainty of the cause.
 * Values that share a cause are fully correlated in it, so that a difference takes one from the other before squares
 * are added: what two sides have in common cancels. Source: JCGM 100:2008, 5.2.2 and F.1.2.3.
 *
 * @param byCause signed standard uncertainties in the unit of the value, by the name of the cause; sorted
 */
public record Contributions(SortedMap<String, Double> byCause) {

    public static final Contributions NONE = new Contributions(Collections.emptySortedMap());

    public Contributions {
        byCause = Collections.unmodifiableSortedMap(new TreeMap<>(byCause));
        for (Map.Entry<String, Double> entry : byCause.entrySet()) {
            if (!Double.isFinite(entry.getValue())) {
                throw new IllegalArgumentException(entry.getKey() + ": " + entry.getValue());
            }
        }
    }

    /** A single cause; {@link #NONE} if it contributes nothing. */
    public static Contributions of(String cause, double signedUncertainty) {
        if (signedUncertainty == 0) {
            return NONE;
        }
        SortedMap<String, Double> one = new TreeMap<>();
        one.put(cause, signedUncertainty);
        return new Contributions(one);
    }

    /** Those of the sum of two values. */
    public Contributions plus(Contributions other) {
        return combine(other, Double::sum);
    }

    /** Those of the difference of two values. */
    public Contributions minus(Contributions other) {
        return combine(other, (mine, theirs) -> mine - theirs);
    }

    /** Those of a multiple of the value. */
    public Contributions scaled(double factor) {
        SortedMap<String, Double> scaled = new TreeMap<>();
        byCause.forEach((cause, u) -> scaled.put(cause, u * factor));
        return new Contributions(scaled);
    }

    /** The combined standard uncertainty: the root of the sum of squares, in the order of the causes; never negative. */
    public double combined() {
        double squares = 0;
        for (double u : byCause.values()) {
            squares += u * u;
        }
        return Math.sqrt(squares);
    }

    private Contributions combine(Contributions other, DoubleBinaryOperator operation) {
        SortedMap<String, Double> all = new TreeMap<>(byCause);
        other.byCause.forEach((cause, u) -> all.put(cause, operation.applyAsDouble(all.getOrDefault(cause, 0.0), u)));
        return new Contributions(all);
    }
}
