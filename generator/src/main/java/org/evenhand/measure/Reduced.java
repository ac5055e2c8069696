package org.evenhand.measure;

import org.evenhand.words.Phrase;

/** What a reducer made of a log, in the units of its columns and in seconds. */
sealed interface Reduced {

    /**
     * A number.
     *
     * @param value in the natural unit of the reduction
     * @param ofColumn how much of it comes from the column: what an error of the gain is a part of
     * @param ofMinus how much of it was taken off
     * @param offsetScale how much it changes for an offset of one unit of the column
     * @param resolutionScale the same for a reading that is off by one unit, if such errors add as squares
     * @param withinRun standard uncertainty from the scatter of the samples
     * @param own standard uncertainty that the reduction itself brings
     * @param cause of which
     */
    record Figure(
            double value,
            double ofColumn,
            double ofMinus,
            double offsetScale,
            double resolutionScale,
            double withinRun,
            double own,
            String cause)
            implements Reduced {

        /** A number in the unit of the column, such as a mean. */
        static Figure likeColumn(double value, double ofMinus, double withinRun) {
            return new Figure(value, value + ofMinus, ofMinus, 1, 1, withinRun, 0, "");
        }

        /** A number that errors of the instrument hardly touch, such as a time. */
        static Figure withOwn(double value, double own, String cause) {
            return new Figure(value, 0, 0, 0, 0, 0, own, cause);
        }
    }

    /** A time that was not reached. */
    record Beyond(double bound) implements Reduced {}

    /** No number, and why. */
    record Refused(String rule, Phrase why) implements Reduced {

        static Refused tooFewSamples() {
            return new Refused("field-missing", Phrase.of("missing.few-samples"));
        }
    }
}
