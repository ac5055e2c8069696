package org.evenhand.statistics;

import java.util.Optional;

/**
 * Two one-sided tests: whether an effect lies within a margin stated beforehand.
 *
 * <p>Source: D. J. Schuirmann, Journal of Pharmacokinetics and Biopharmaceutics 15 (1987) 657–680.
 *
 * @param pLower p value against "at or below the lower margin"
 * @param pUpper p value against "at or above the upper margin"
 * @param interval the interval of confidence 1 − 2α on which the decision rests
 * @param equivalent whether that interval lies wholly inside the margin
 */
public record Equivalence(double pLower, double pUpper, Interval interval, boolean equivalent) {

    /**
     * Tests an estimate, usually a difference, against a margin.
     *
     * @param estimate the effect
     * @param margin limits of what counts as the same, in the unit of the effect
     * @param alpha probability of error of each one-sided test, below one half; 0.05 makes the 90 % interval
     * @return empty where the estimate has no uncertainty
     */
    public static Optional<Equivalence> of(Estimate estimate, Interval margin, double alpha) {
        Interval interval = estimate.interval(confidence(alpha));
        if (estimate.tStatistic(margin.low()).isEmpty()
                || estimate.tStatistic(margin.high()).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Equivalence(
                estimate.pAbove(margin.low()).orElseThrow(),
                estimate.pBelow(margin.high()).orElseThrow(),
                interval,
                interval.isInside(margin)));
    }

    /**
     * Tests the ratio of two means against the margin from 1/(1 + m) to 1 + m, which is symmetric on the log scale.
     *
     * @param contrast the two sides
     * @param margin m, positive: 0.05 for five percent
     * @param alpha probability of error of each one-sided test, below one half
     * @return empty where the ratio has no interval
     */
    public static Optional<Equivalence> ofRatio(Contrast contrast, double margin, double alpha) {
        Interval limits = ratioMargin(margin);
        return contrast.ratioInterval(confidence(alpha)).flatMap(interval -> {
            // Dividing x − ρ·y by y turns the inequality round where y is negative.
            double sign = Math.signum(contrast.denominator().value());
            Estimate atLow = contrast.at(limits.low()).scaledBy(sign);
            Estimate atHigh = contrast.at(limits.high()).scaledBy(sign);
            if (atLow.tStatistic(0).isEmpty() || atHigh.tStatistic(0).isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(new Equivalence(
                    atLow.pAbove(0).orElseThrow(),
                    atHigh.pBelow(0).orElseThrow(),
                    interval,
                    interval.isInside(limits)));
        });
    }

    /** The limits 1/(1 + m) and 1 + m. */
    public static Interval ratioMargin(double margin) {
        Arguments.positive(margin, "margin");
        return new Interval(1 / (1 + margin), 1 + margin);
    }

    private static double confidence(double alpha) {
        if (alpha > 0 && alpha < 0.5) {
            return 1 - 2 * alpha;
        }
        throw new IllegalArgumentException("alpha must lie strictly between 0 and 0.5, not " + alpha);
    }
}
