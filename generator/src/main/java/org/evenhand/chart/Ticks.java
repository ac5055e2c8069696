package org.evenhand.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.evenhand.words.Words;

/**
 * Chooses the places of an axis that get a label.
 *
 * @param unit word for the unit of the labels where the axis chooses it (time), else empty
 * @param ticks in rising order
 */
record Ticks(String unit, List<Tick> ticks) {

    /** One labelled place; the value is in the unit of the axis, not in that of the label. */
    record Tick(double value, String label) {}

    /** The same with the decimal marker of a language. */
    Ticks in(Words words) {
        return new Ticks(
                unit,
                ticks.stream()
                        .map(t -> new Tick(t.value(), words.number(t.label())))
                        .toList());
    }

    private static final int[] STEPS = {1, 2, 5};

    /** Multiples of 1, 2 or 5 times a power of ten, as many as possible but no more than asked. */
    static Ticks linear(double low, double high, int most) {
        return new Ticks("", multiples(low, high, most, 1));
    }

    /**
     * For a logarithmic axis: 1, 2, 5 or 1 in each decade, or every so many decades; over less than three such places,
     * equal steps.
     */
    static Ticks logarithmic(double low, double high, int most) {
        for (int[] digits : new int[][] {{1, 2, 5}, {1, 3}, {1}}) {
            List<Tick> ticks = decades(low, high, digits, 1);
            if (ticks.size() < 3) {
                return linear(low, high, most);
            }
            if (ticks.size() <= most) {
                return new Ticks("", ticks);
            }
        }
        int every = 2;
        while (decades(low, high, new int[] {1}, every).size() > most) {
            every++;
        }
        return new Ticks("", decades(low, high, new int[] {1}, every));
    }

    /** For a time axis in seconds: in seconds, minutes, hours or days, by its length. */
    static Ticks time(double lowS, double highS, int most) {
        double lengthS = highS - lowS;
        if (lengthS <= 5) {
            return new Ticks("s", multiples(lowS, highS, most, 1));
        }
        if (lengthS <= 180) {
            return stepped("s", 1, lowS, highS, most, 1, 2, 5, 10, 15, 30, 60);
        }
        if (lengthS <= 3 * 3600) {
            return stepped("min", 60, lowS, highS, most, 1, 2, 5, 10, 15, 30, 60);
        }
        if (lengthS <= 4 * 86_400) {
            return stepped("h", 3600, lowS, highS, most, 1, 2, 3, 6, 12, 24);
        }
        return new Ticks("d", multiples(lowS, highS, most, 86_400));
    }

    private static Ticks stepped(String unit, int unitS, double lowS, double highS, int most, int... steps) {
        for (int step : steps) {
            double stepS = (double) step * unitS;
            long first = (long) Math.ceil(lowS / stepS);
            long last = (long) Math.floor(highS / stepS);
            if (last - first < most) {
                List<Tick> ticks = new ArrayList<>();
                for (long k = first; k <= last; k++) {
                    ticks.add(new Tick(k * stepS, label(BigDecimal.valueOf(k * step))));
                }
                return new Ticks(unit, List.copyOf(ticks));
            }
        }
        return new Ticks(unit, multiples(lowS, highS, most, unitS));
    }

    private static List<Tick> multiples(double low, double high, int most, int perUnit) {
        double from = low / perUnit;
        double to = high / perUnit;
        int exponent = (int) Math.floor(StrictMath.log10((to - from) / Math.max(1, most))) - 1;
        while (true) {
            for (int step : STEPS) {
                BigDecimal width = BigDecimal.valueOf(step).scaleByPowerOfTen(exponent);
                long first = (long) Math.ceil(from / width.doubleValue() - 1e-9);
                long last = (long) Math.floor(to / width.doubleValue() + 1e-9);
                if (last - first < most) {
                    List<Tick> ticks = new ArrayList<>();
                    for (long k = first; k <= last; k++) {
                        BigDecimal value = width.multiply(BigDecimal.valueOf(k));
                        ticks.add(new Tick(value.doubleValue() * perUnit, label(value)));
                    }
                    return List.copyOf(ticks);
                }
            }
            exponent++;
        }
    }

    private static List<Tick> decades(double low, double high, int[] digits, int every) {
        List<Tick> ticks = new ArrayList<>();
        int first = (int) Math.floor(StrictMath.log10(low)) - 1;
        int last = (int) Math.ceil(StrictMath.log10(high)) + 1;
        for (int exponent = first; exponent <= last; exponent++) {
            if (Math.floorMod(exponent, every) != 0) {
                continue;
            }
            for (int digit : digits) {
                BigDecimal value = BigDecimal.valueOf(digit).scaleByPowerOfTen(exponent);
                if (value.doubleValue() >= low && value.doubleValue() <= high) {
                    ticks.add(new Tick(value.doubleValue(), label(value)));
                }
            }
        }
        return List.copyOf(ticks);
    }

    /** Plain digits with a true minus sign; a power of ten for what would be long. */
    static String label(BigDecimal value) {
        if (value.signum() == 0) {
            return "0";
        }
        BigDecimal plain = value.stripTrailingZeros();
        int exponent = plain.precision() - plain.scale() - 1;
        String text;
        if (exponent >= 6 || exponent < -4) {
            BigDecimal mantissa = plain.scaleByPowerOfTen(-exponent);
            String power = "10" + superscript(exponent);
            boolean one = mantissa.abs().compareTo(BigDecimal.ONE) == 0;
            text = (mantissa.signum() < 0 ? "-" : "")
                    + (one ? "" : mantissa.abs().toPlainString() + " × ")
                    + power;
        } else {
            text = (value.scale() < 0 ? value.setScale(0) : value).toPlainString();
        }
        return text.replace('-', '−');
    }

    private static String superscript(int exponent) {
        StringBuilder raised = new StringBuilder();
        for (char c : Integer.toString(exponent).toCharArray()) {
            raised.append(c == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(c - '0'));
        }
        return raised.toString();
    }
}
