package org.evenhand.compare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.measure.Contributions;
import org.evenhand.model.Comparison;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Equivalence;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.Interval;
import org.evenhand.statistics.KaplanMeier;
import org.evenhand.statistics.LineFit;
import org.evenhand.statistics.LogRank;

/** What a comparison came to. Figures that do not exist are absent, and {@link #why} says why. */
public sealed interface ComparisonResult {

    /** What was planned. */
    Comparison plan();

    /** In which the estimate is given; the number one for ratios and shares. */
    Unit unit();

    /** What may be said; absent for estimates that hold nothing against anything. */
    Optional<Verdict> verdict();

    /** Reasons why a figure or a verdict could not be had; empty if all could. */
    List<String> why();

    /** The p value of "no effect", where there is one. */
    OptionalDouble p();

    /** The p value after Holm over the study. */
    OptionalDouble pAdjusted();

    /**
     * A difference or a ratio of two levels.
     *
     * @param estimate x − y or x / y
     * @param interval at 95 %
     * @param degreesOfFreedom of the difference; absent if infinite
     * @param margin of equivalence, in the unit, or as a plain number for a ratio (0.02)
     * @param equivalence the two one-sided tests
     * @param differs whether the adjusted test rejects no effect; with SAME_WITHIN_MARGIN both may hold
     * @param smallest the smallest difference (for a ratio: relative change) that these runs could have shown
     * @param difference the underlying difference with its uncertainties
     * @param logRatio the logarithm of the ratio, for geometric means
     * @param contributions of the instruments to the difference
     * @param numbers how many values stand on each side
     */
    record Contrasted(
            Comparison plan,
            Unit unit,
            Optional<Verdict> verdict,
            boolean differs,
            List<String> why,
            OptionalDouble estimate,
            Optional<Interval> interval,
            OptionalDouble degreesOfFreedom,
            OptionalDouble p,
            OptionalDouble pAdjusted,
            OptionalDouble margin,
            Optional<Equivalence> equivalence,
            OptionalDouble smallest,
            Optional<Estimate> difference,
            Optional<Estimate> logRatio,
            Contributions contributions,
            Numbers numbers)
            implements ComparisonResult {}

    /**
     * How many values stand on each side, and what they count.
     *
     * @param level values at the level in question
     * @param against values at its base
     * @param counts what they count
     * @param pairs whether they form pairs
     */
    record Numbers(int level, int against, Counts counts, boolean pairs) {}

    /**
     * A measurand against a numeric factor.
     *
     * @param factorUnit of x
     * @param line y = intercept + slope x
     * @param exponent of the power law y ∝ x^e, which is 1 for proportionality
     * @param efficiency ratio of results ÷ ratio of the factor, from the lowest level to the highest
     * @param points x, y of each value that counts
     */
    record Trend(
            Comparison plan,
            Unit unit,
            Unit factorUnit,
            Optional<Verdict> verdict,
            List<String> why,
            Optional<LineFit> line,
            Optional<Estimate> exponent,
            OptionalDouble efficiency,
            List<Point> points,
            OptionalDouble p,
            OptionalDouble pAdjusted)
            implements ComparisonResult {}

    /** One value at one place of the factor. */
    record Point(double x, double y) {}

    /**
     * Times until an event, some of them censored.
     *
     * @param levels in the order level, against
     * @param test the log-rank test; absent without events
     */
    record Survival(
            Comparison plan,
            Unit unit,
            Optional<Verdict> verdict,
            List<String> why,
            List<Curve> levels,
            Optional<LogRank> test,
            OptionalDouble p,
            OptionalDouble pAdjusted)
            implements ComparisonResult {}

    /** The survival curve of one level. */
    record Curve(String level, Counts counts, KaplanMeier curve) {}

    /**
     * A share of specimens.
     *
     * @param successes that said yes
     * @param n of how many
     * @param estimate successes / n
     * @param interval exact, 95 %
     */
    record Share(
            Comparison plan,
            Unit unit,
            List<String> why,
            int successes,
            int n,
            Counts counts,
            OptionalDouble estimate,
            Optional<Interval> interval)
            implements ComparisonResult {

        @Override
        public Optional<Verdict> verdict() {
            return Optional.empty();
        }

        @Override
        public OptionalDouble p() {
            return OptionalDouble.empty();
        }

        @Override
        public OptionalDouble pAdjusted() {
            return OptionalDouble.empty();
        }
    }

    /**
     * Failures per time.
     *
     * @param events seen
     * @param timeS under observation, in seconds
     * @param estimate events per time, in the unit
     * @param interval exact: two-sided 95 %, or from zero to the one-sided 95 % bound where there was no failure
     * @param chance of getting through the planned longer time, at the upper bound
     */
    record FailureRate(
            Comparison plan,
            Unit unit,
            List<String> why,
            int events,
            double timeS,
            OptionalDouble estimate,
            Optional<Interval> interval,
            OptionalDouble chance)
            implements ComparisonResult {

        @Override
        public Optional<Verdict> verdict() {
            return Optional.empty();
        }

        @Override
        public OptionalDouble p() {
            return OptionalDouble.empty();
        }

        @Override
        public OptionalDouble pAdjusted() {
            return OptionalDouble.empty();
        }
    }

    /**
     * The geometric mean of ratios; speaks for these workloads only.
     *
     * @param estimate the mean ratio
     * @param interval at 95 %
     */
    record GeometricMean(
            Comparison plan,
            Unit unit,
            Optional<Verdict> verdict,
            List<String> why,
            OptionalDouble estimate,
            Optional<Interval> interval,
            OptionalDouble p,
            OptionalDouble pAdjusted)
            implements ComparisonResult {}
}
