package org.evenhand.command.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import org.evenhand.statistics.EquivalenceSize;
import org.evenhand.statistics.SampleSize;

/**
 * Numbers of repeats for a comparison of two levels.
 *
 * @param spread of the repeats
 * @param pairs whether each repeat is a pair, one of each level
 * @param confidence of the intervals
 * @param power the chance of showing what is there
 */
record Repeats(Spread spread, boolean pairs, double confidence, double power) {

    /** An uncertain spread is planned for at the limit that it exceeds once in five times; common practice, no source. */
    private static final double CAUTION = 0.8;

    /** An answer, in words and as a number. */
    record Answer(String text, OptionalInt repeats) {}

    Answer forDifference(Amount difference) {
        return answer(
                "to find a difference of " + difference.text() + " with a chance of " + percent(power),
                deviation -> pairs
                        ? SampleSize.forPairs(difference.value(), deviation, 1 - confidence, power)
                        : SampleSize.forTwoMeans(difference.value(), deviation, 1 - confidence, power));
    }

    Answer forMargin(Amount margin) {
        // A ratio is as far from 1 either way where its logarithm is.
        double m = margin.relative() ? StrictMath.log1p(margin.value()) : margin.value();
        return answer(
                "to show that the levels are the same within " + margin.text() + ", if they are, with a chance of "
                        + percent(power),
                deviation -> pairs
                        ? EquivalenceSize.forPairs(m, 0, deviation, 0.05, power)
                        : EquivalenceSize.forTwoMeans(m, 0, deviation, 0.05, power));
    }

    private Answer answer(String goal, Function<Double, OptionalInt> size) {
        double deviation = spread.deviation().value();
        OptionalInt n = size.apply(deviation);
        StringBuilder text = new StringBuilder(words(n)).append(' ').append(goal);
        if (spread.degreesOfFreedom().isPresent()) {
            double upper = SampleSize.upperDeviation(
                    deviation, spread.degreesOfFreedom().getAsInt(), CAUTION);
            text.append("\n  the spread rests on ")
                    .append(spread.degreesOfFreedom().getAsInt());
            text.append(" degrees of freedom only; it may well be ")
                    .append(spread.deviation().times(upper).text());
            text.append(", and then it takes ").append(words(size.apply(upper)));
        }
        return new Answer(text.toString(), n);
    }

    private String words(OptionalInt n) {
        if (n.isEmpty()) {
            return "more than anybody can do";
        }
        return n.getAsInt() + (pairs ? " pairs" : " at each level");
    }

    /** What a given number can show. */
    List<String> shownBy(int n) {
        double deviation = spread.deviation().value();
        List<String> lines = new ArrayList<>();
        String what = pairs ? "the mean difference" : "the mean of a level";
        lines.add(what + " is known to ± "
                + spread.deviation()
                        .times(SampleSize.halfWidth(deviation, n, confidence))
                        .text() + " ("
                + percent(confidence) + " interval)");
        double difference = pairs
                ? SampleSize.differenceForPairs(n, deviation, 1 - confidence, power)
                : SampleSize.differenceForTwoMeans(n, deviation, 1 - confidence, power);
        lines.add("a difference of " + spread.deviation().times(difference).text() + " is found with a chance of "
                + percent(power) + "; a smaller one is more often missed");
        double margin = EquivalenceSize.marginFor(n, pairs, deviation, 0.05, power);
        double shown = spread.deviation().relative() ? StrictMath.expm1(margin) : margin;
        lines.add("levels that are the same are shown to be so within "
                + spread.deviation().times(shown).text() + " with a chance of " + percent(power));
        return lines;
    }

    /** A share as a percentage, with at most four digits. */
    static String percent(double share) {
        BigDecimal percent = new BigDecimal(share * 100).round(new MathContext(4));
        return percent.stripTrailingZeros().toPlainString() + " %";
    }
}
