package org.evenhand.statistics;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The law of propagation of uncertainty, first order, for inputs that may be correlated.
 *
 * <p>Source: JCGM 100:2008, 5.1.2 and 5.2.2 (combination), G.4.1 (Welch–Satterthwaite), 4.2 and 5.2.3 (repeated simultaneous
 * readings), H.2 (covariance of two results).
 */
public final class UncertaintyBudget {

    /**
     * An input quantity.
     *
     * @param standardUncertainty in the unit of the input, finite, not negative
     * @param degreesOfFreedom positive; empty for infinitely many, the rule for type B
     */
    public record Input(double standardUncertainty, OptionalDouble degreesOfFreedom) {

        /**
         * @throws IllegalArgumentException if the uncertainty is negative or not finite, or the degrees of freedom not positive
         */
        public Input {
            Arguments.notNegative(standardUncertainty, "standard uncertainty");
            if (degreesOfFreedom.isPresent()) {
                Arguments.positive(degreesOfFreedom.getAsDouble(), "degrees of freedom");
            }
        }

        /** An input known from repeats. */
        public static Input typeA(double standardUncertainty, double degreesOfFreedom) {
            return new Input(standardUncertainty, OptionalDouble.of(degreesOfFreedom));
        }

        /** An input known otherwise. */
        public static Input typeB(double standardUncertainty) {
            return new Input(standardUncertainty, OptionalDouble.empty());
        }
    }

    /**
     * The combined uncertainty of a result.
     *
     * @param standardUncertainty in the unit of the result
     * @param degreesOfFreedom effective, not truncated; empty for infinitely many
     */
    public record Combined(double standardUncertainty, OptionalDouble degreesOfFreedom) {

        /** k·u with k from Student's t, two-sided. */
        public double expanded(double confidence) {
            return Student.factor(confidence, degreesOfFreedom) * standardUncertainty;
        }
    }

    private final List<Input> inputs;
    private final double[][] correlation;

    private UncertaintyBudget(List<Input> inputs, double[][] correlation) {
        this.inputs = inputs;
        this.correlation = correlation;
    }

    /** Uncorrelated inputs, at least one. */
    public static UncertaintyBudget of(List<Input> inputs) {
        if (inputs.isEmpty()) {
            throw new IllegalArgumentException("a budget needs at least one input");
        }
        double[][] identity = new double[inputs.size()][inputs.size()];
        for (int i = 0; i < identity.length; i++) {
            identity[i][i] = 1;
        }
        return new UncertaintyBudget(List.copyOf(inputs), identity);
    }

    /**
     * The means of quantities read together: type A uncertainties and correlations of the means.
     *
     * @param readings one sample a quantity, all of one length of at least two, value i of each read at the same time
     */
    public static UncertaintyBudget ofSimultaneousReadings(List<Sample> readings) {
        List<Input> inputs = readings.stream()
                .map(sample -> Input.typeA(sample.standardError().orElseThrow(), sample.size() - 1))
                .toList();
        UncertaintyBudget budget = of(inputs);
        for (int i = 0; i < readings.size(); i++) {
            for (int j = 0; j < i; j++) {
                budget = budget.withCorrelation(i, j, correlation(readings.get(i), readings.get(j)));
            }
        }
        return budget;
    }

    /**
     * The same budget with a correlation of two inputs.
     *
     * @param first place of one input, counted from 0
     * @param second place of the other
     * @param coefficient −1 to 1
     */
    public UncertaintyBudget withCorrelation(int first, int second, double coefficient) {
        // Correlations computed from readings may exceed one by rounding.
        if (first == second || !(Math.abs(coefficient) <= 1 + 1e-12)) {
            throw new IllegalArgumentException("two different inputs must correlate by -1 to 1, not inputs " + first
                    + " and " + second + " by " + coefficient);
        }
        double[][] changed = new double[correlation.length][];
        for (int i = 0; i < changed.length; i++) {
            changed[i] = correlation[i].clone();
        }
        changed[first][second] = coefficient;
        changed[second][first] = coefficient;
        return new UncertaintyBudget(inputs, changed);
    }

    /** Correlation coefficient of two inputs. */
    public double correlation(int first, int second) {
        return correlation[first][second];
    }

    /**
     * Combines the inputs. Where inputs with finite degrees of freedom are correlated, Welch–Satterthwaite does not hold, and the
     * smallest finite degrees of freedom stand instead; for readings taken together they are exact.
     *
     * @param sensitivities ∂f/∂x of each input, in their order
     */
    public Combined combine(double... sensitivities) {
        double uncertainty = Math.sqrt(Math.max(0, covariance(sensitivities, sensitivities)));
        if (uncertainty == 0) {
            return new Combined(0, OptionalDouble.empty());
        }
        double sum = 0;
        double smallest = Double.POSITIVE_INFINITY;
        boolean correlated = false;
        for (int i = 0; i < inputs.size(); i++) {
            OptionalDouble freedom = inputs.get(i).degreesOfFreedom();
            double share = Math.abs(sensitivities[i]) * inputs.get(i).standardUncertainty() / uncertainty;
            if (freedom.isPresent() && share > 0) {
                sum += share * share * share * share / freedom.getAsDouble();
                smallest = Math.min(smallest, freedom.getAsDouble());
                correlated |= isCorrelated(i, sensitivities);
            }
        }
        double effective = correlated ? smallest : 1 / sum;
        return new Combined(
                uncertainty, effective <= Double.MAX_VALUE ? OptionalDouble.of(effective) : OptionalDouble.empty());
    }

    /**
     * Covariance of two results of the same inputs.
     *
     * @param ofFirst sensitivities of one result
     * @param ofSecond sensitivities of the other
     */
    public double covariance(double[] ofFirst, double[] ofSecond) {
        Arguments.sameLength(ofFirst, ofSecond);
        if (ofFirst.length != inputs.size()) {
            throw new IllegalArgumentException(
                    "a budget of " + inputs.size() + " inputs needs as many sensitivities, not " + ofFirst.length);
        }
        double sum = 0;
        for (int i = 0; i < ofFirst.length; i++) {
            for (int j = 0; j < ofSecond.length; j++) {
                sum += Arguments.finite(ofFirst[i], "sensitivity")
                        * inputs.get(i).standardUncertainty()
                        * Arguments.finite(ofSecond[j], "sensitivity")
                        * inputs.get(j).standardUncertainty()
                        * correlation[i][j];
            }
        }
        return sum;
    }

    private boolean isCorrelated(int input, double[] sensitivities) {
        for (int other = 0; other < inputs.size(); other++) {
            if (other != input && correlation[input][other] != 0 && sensitivities[other] != 0) {
                return true;
            }
        }
        return false;
    }

    private static double correlation(Sample x, Sample y) {
        double[] left = x.values();
        double[] right = y.values();
        Arguments.sameLength(left, right);
        double product = 0;
        for (int i = 0; i < left.length; i++) {
            product += (left[i] - x.mean()) * (right[i] - y.mean());
        }
        double deviations =
                x.standardDeviation().orElseThrow() * y.standardDeviation().orElseThrow();
        return deviations > 0 ? product / ((left.length - 1) * deviations) : 0;
    }
}
