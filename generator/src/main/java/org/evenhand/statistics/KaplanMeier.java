package org.evenhand.statistics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The share that is still without event, as a step curve of time, from right-censored times. What is censored at a time counts
 * as at risk at that time.
 *
 * <p>Assumes that censoring tells nothing about when the event would have come. Source: E. L. Kaplan, P. Meier, Journal of the
 * American Statistical Association 53 (1958) 457–481; M. Greenwood, Reports on Public Health and Medical Subjects 33 (1926);
 * log-log interval: J. D. Kalbfleisch, R. L. Prentice, The Statistical Analysis of Failure Time Data (1980), 1.3; interval of
 * the median: R. Brookmeyer, J. Crowley, Biometrics 38 (1982) 29–41.
 *
 * @param size number of times, at least 1
 * @param steps one for each distinct time, ascending
 */
public record KaplanMeier(int size, List<Step> steps) {

    /** A survival this near to one half is one half: 5/10 as a product of fractions is not always 0.5. */
    private static final double TOLERANCE = 1e-9;

    /**
     * The curve at one distinct time.
     *
     * @param time of the step
     * @param atRisk number without event and still watched just before
     * @param events number of events at this time
     * @param censored number censored at this time
     * @param survival share S without event from this time on, 0 to 1
     * @param greenwood Σ d/(n(n − d)) up to this time, the variance of ln S; empty once S is zero
     */
    public record Step(double time, int atRisk, int events, int censored, double survival, OptionalDouble greenwood) {

        /** Standard uncertainty of S after Greenwood; empty once S is zero. */
        public OptionalDouble standardUncertainty() {
            return greenwood.isPresent()
                    ? OptionalDouble.of(survival * Math.sqrt(greenwood.getAsDouble()))
                    : OptionalDouble.empty();
        }

        /**
         * Pointwise interval of S on the scale of ln(−ln S).
         *
         * @return empty before the first event and once S is zero
         */
        public Optional<Interval> interval(double confidence) {
            double factor = Student.factor(confidence, OptionalDouble.empty());
            if (greenwood.isEmpty() || !(survival < 1)) {
                return Optional.empty();
            }
            double log = StrictMath.log(survival);
            double spread = factor * Math.sqrt(greenwood.getAsDouble()) / -log;
            return Optional.of(new Interval(
                    StrictMath.exp(log * StrictMath.exp(spread)), StrictMath.exp(log * StrictMath.exp(-spread))));
        }
    }

    /** Takes a copy of the steps. */
    public KaplanMeier {
        steps = List.copyOf(steps);
    }

    /**
     * @param times at least one, in any order
     * @throws IllegalArgumentException if there is none
     */
    public static KaplanMeier of(List<CensoredTime> times) {
        if (times.isEmpty()) {
            throw new IllegalArgumentException("a survival curve needs at least one time");
        }
        List<CensoredTime> sorted = new ArrayList<>(times);
        sorted.sort(Comparator.comparingDouble(CensoredTime::time));
        List<Step> steps = new ArrayList<>();
        double survival = 1;
        double greenwood = 0;
        int next = 0;
        while (next < sorted.size()) {
            double time = sorted.get(next).time();
            int atRisk = sorted.size() - next;
            int events = 0;
            int first = next;
            for (; next < sorted.size() && sorted.get(next).time() == time; next++) {
                events += sorted.get(next).observed() ? 1 : 0;
            }
            survival *= (double) (atRisk - events) / atRisk;
            greenwood += atRisk > events ? (double) events / ((double) atRisk * (atRisk - events)) : 0;
            steps.add(new Step(
                    time,
                    atRisk,
                    events,
                    next - first - events,
                    survival,
                    survival > 0 ? OptionalDouble.of(greenwood) : OptionalDouble.empty()));
        }
        return new KaplanMeier(times.size(), steps);
    }

    /** Number of events among the times. */
    public int events() {
        return steps.stream().mapToInt(Step::events).sum();
    }

    /** The first time with S at or below one half; empty where it was not reached. */
    public OptionalDouble median() {
        return firstTime(step -> OptionalDouble.of(step.survival()));
    }

    /**
     * Lower limit of the interval of the median: the first time at which the lower pointwise limit is at or below one half;
     * empty where it was not reached.
     */
    public OptionalDouble medianLow(double confidence) {
        return firstTime(step -> limit(step, confidence, true));
    }

    /** Upper limit of the interval of the median, likewise; empty where it was not reached, that is without upper limit. */
    public OptionalDouble medianHigh(double confidence) {
        return firstTime(step -> limit(step, confidence, false));
    }

    private static OptionalDouble limit(Step step, double confidence, boolean lower) {
        Optional<Interval> interval = step.interval(confidence);
        if (interval.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(lower ? interval.get().low() : interval.get().high());
    }

    private OptionalDouble firstTime(Function<Step, OptionalDouble> height) {
        for (Step step : steps) {
            OptionalDouble at = height.apply(step);
            if (at.isPresent() && at.getAsDouble() <= 0.5 + TOLERANCE) {
                return OptionalDouble.of(step.time());
            }
        }
        return OptionalDouble.empty();
    }
}
