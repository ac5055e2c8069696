package org.evenhand.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.evenhand.quantity.Quantity;

/** How a run yields the value of a measurand. */
public sealed interface Reduction {

    /** The word that names it in a method file. */
    String word();

    /** The measurands of the same run that it is made of, in order; none if it comes from the log or is read off. */
    default List<String> parts() {
        return List.of();
    }

    /** The condition on a column that it watches; none if it watches none. */
    default Optional<Condition> watched() {
        return Optional.empty();
    }

    /** A value noted by hand or by the workload. */
    record Reading(String reading) implements Reduction {
        @Override
        public String word() {
            return "reading";
        }
    }

    /** An observation: yes, no or partly. */
    record Observation(String reading) implements Reduction {
        @Override
        public String word() {
            return "reading";
        }
    }

    /** A place on an ordered scale of the method. */
    record OnScale(String reading, String scale) implements Reduction {
        @Override
        public String word() {
            return "reading";
        }
    }

    /**
     * A column of the log, reduced to a number.
     *
     * @param statistic which number
     * @param column of the log
     * @param minus what is taken off each sample: another column, or the run's stated ambient
     */
    record OfColumn(Statistic statistic, String column, Optional<String> minus) implements Reduction {
        @Override
        public String word() {
            return statistic.word();
        }
    }

    /** How the samples of a column become one number. */
    sealed interface Statistic {

        String word();

        /** Integral over time ÷ duration. */
        record Mean() implements Statistic {
            @Override
            public String word() {
                return "mean";
            }
        }

        record Maximum() implements Statistic {
            @Override
            public String word() {
                return "maximum";
            }
        }

        record Minimum() implements Statistic {
            @Override
            public String word() {
                return "minimum";
            }
        }

        /** The value that half of the samples do not exceed. */
        record Median() implements Statistic {
            @Override
            public String word() {
                return "median";
            }
        }

        /** @param share of the samples that do not exceed the value, above 0 and below 1 */
        record Percentile(double share) implements Statistic {
            @Override
            public String word() {
                return "percentile";
            }
        }

        /**
         * The mean over the last window, if the slope has died down.
         *
         * @param window a time
         * @param settledBelow the allowed drift within the window
         */
        record Settled(Quantity window, Quantity settledBelow) implements Statistic {
            @Override
            public String word() {
                return "settled";
            }
        }

        /** The plateau of a fitted exponential approach. */
        record Asymptote() implements Statistic {
            @Override
            public String word() {
                return "asymptote";
            }
        }

        /** Over time. */
        record Integral() implements Statistic {
            @Override
            public String word() {
                return "integral";
            }
        }

        /** @param wrapsAt the value at which the counter starts again from zero */
        record Increase(Optional<Quantity> wrapsAt) implements Statistic {
            @Override
            public String word() {
                return "increase";
            }
        }

        /** The energetic mean of decibels. */
        record LevelMean() implements Statistic {
            @Override
            public String word() {
                return "level-mean";
            }
        }
    }

    /** When the condition first holds for its whole dwell; right-censored at the end of the log. */
    record TimeUntil(Condition condition) implements Reduction {
        @Override
        public String word() {
            return "time-until";
        }

        @Override
        public Optional<Condition> watched() {
            return Optional.of(condition);
        }
    }

    /** The share of time during which the condition holds. */
    record Share(Condition condition) implements Reduction {
        @Override
        public String word() {
            return "share";
        }

        @Override
        public Optional<Condition> watched() {
            return Optional.of(condition);
        }
    }

    /**
     * Made from two other measurands of the same run.
     *
     * @param operation quotient, product or difference
     * @param first the measurand on the left
     * @param second the measurand on the right
     */
    record Derived(Operation operation, String first, String second) implements Reduction {
        @Override
        public String word() {
            return operation.name().toLowerCase(Locale.ROOT);
        }

        @Override
        public List<String> parts() {
            return List.of(first, second);
        }
    }

    /**
     * The ambient temperature at which what is tested would just reach a stated limit: the limit less the rise above
     * ambient. Rests on a rise that does not depend on the ambient temperature, and so on fixed cooling and a run that was
     * not held back.
     *
     * @param limit the name among the item's limits
     * @param rise the measurand that is the rise above ambient
     */
    record AmbientLimit(String limit, String rise) implements Reduction {
        @Override
        public String word() {
            return "ambient-limit";
        }

        @Override
        public List<String> parts() {
            return List.of(rise);
        }
    }

    /** What is done with two measurands. */
    enum Operation {
        QUOTIENT,
        PRODUCT,
        DIFFERENCE
    }
}
