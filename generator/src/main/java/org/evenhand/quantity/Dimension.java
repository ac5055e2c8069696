package org.evenhand.quantity;

import java.util.Arrays;
import java.util.List;

/**
 * The exponents of the base quantities of which a unit is made.
 *
 * <p>Besides the seven of the SI (without amount of substance) there are two that keep apart what the SI calls equal:
 * plane angle (so that a rotation in Hz is not an angular velocity in rad/s) and information (so that a byte is not a
 * plain number).
 *
 * @param exponents one for each {@link Base}, in its order
 */
public record Dimension(List<Integer> exponents) {

    /** The base quantities, with the words in which messages speak of them. */
    enum Base {
        TIME,
        LENGTH,
        MASS,
        CURRENT,
        TEMPERATURE,
        LUMINOUS_INTENSITY,
        ANGLE,
        INFORMATION
    }

    public static final Dimension ONE = new Dimension(List.of(0, 0, 0, 0, 0, 0, 0, 0));

    public Dimension {
        exponents = List.copyOf(exponents);
        if (exponents.size() != Base.values().length) {
            throw new IllegalArgumentException("one exponent for each base quantity: " + exponents);
        }
    }

    static Dimension of(Base base) {
        Integer[] exponents = new Integer[Base.values().length];
        Arrays.fill(exponents, 0);
        exponents[base.ordinal()] = 1;
        return new Dimension(List.of(exponents));
    }

    Dimension times(Dimension other) {
        Integer[] sum = new Integer[exponents.size()];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = exponents.get(i) + other.exponents.get(i);
        }
        return new Dimension(List.of(sum));
    }

    Dimension power(int exponent) {
        return new Dimension(exponents.stream().map(e -> e * exponent).toList());
    }

    /** What a quantity of this dimension is called ("energy"), or its base quantities spelt out. */
    public String words() {
        return UnitTable.nameOf(this);
    }
}
