package org.evenhand.measure;

import java.util.OptionalDouble;
import org.evenhand.model.Reading;
import org.evenhand.quantity.Unit;
import org.evenhand.words.Phrase;

/** What a run says of a measurand. */
public sealed interface RunValue {

    /** The number, where there is one: of a known value, not of a bound. */
    default OptionalDouble number() {
        return OptionalDouble.empty();
    }

    /**
     * A measured value.
     *
     * @param value finite
     * @param unit the measurand's
     * @param withinRun standard uncertainty from the scatter of samples within the run (type A), in the unit; for a
     *     difference of temperatures in K; zero where the reduction knows none
     * @param contributions from instruments, from sampling and from what is stated (type B)
     */
    record Known(double value, Unit unit, double withinRun, Contributions contributions) implements RunValue {

        public Known {
            if (!Double.isFinite(value) || !(withinRun >= 0)) {
                throw new IllegalArgumentException(value + " " + unit.symbol() + ", within the run " + withinRun);
            }
        }

        /** All that is known of the uncertainty of this one run's value, combined. */
        public double standardUncertainty() {
            double typeB = contributions.combined();
            return Math.sqrt(withinRun * withinRun + typeB * typeB);
        }

        @Override
        public OptionalDouble number() {
            return OptionalDouble.of(value);
        }
    }

    /**
     * An event that did not happen while it was watched for: right-censored.
     *
     * @param bound how far it was followed
     * @param unit the measurand's
     */
    record AtLeast(double bound, Unit unit) implements RunValue {}

    /**
     * A value that is hidden below something else: left-censored, such as a sound too near to its background.
     *
     * @param bound what it is at most
     * @param unit the measurand's
     */
    record AtMost(double bound, Unit unit) implements RunValue {}

    /** A judgement: yes, no or partly, or a place on a scale. */
    record Noted(Reading reading) implements RunValue {}

    /**
     * No value.
     *
     * @param rule the rule that tells of it
     * @param why for the reader
     */
    record Missing(String rule, Phrase why) implements RunValue {}
}
