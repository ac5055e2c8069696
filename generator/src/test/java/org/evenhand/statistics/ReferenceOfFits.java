package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** Lines, exponential approaches, trends and the correlation of series. */
final class ReferenceOfFits {

    static final Map<String, Consumer<ReferenceCase>> RUNNERS = Map.of(
            "line-fit", ReferenceOfFits::line,
            "line-fit-origin", ReferenceOfFits::throughOrigin,
            "exp-approach", ReferenceOfFits::approach,
            "autocorrelation", ReferenceOfFits::autocorrelation,
            "mann-kendall", ReferenceOfFits::trend);

    private ReferenceOfFits() {}

    private static double[] x(ReferenceCase c) {
        if (c.has("csv")) {
            return c.in("x").asText().startsWith("run number")
                    ? counting(y(c).length)
                    : c.column(c.in("x").asText());
        }
        return c.numbers("x");
    }

    private static double[] y(ReferenceCase c) {
        return c.has("csv") ? c.column(c.in("y").asText()) : c.numbers("y");
    }

    private static double[] counting(int n) {
        return IntStream.rangeClosed(1, n).asDoubleStream().toArray();
    }

    private static void line(ReferenceCase c) {
        LineFit fit = LineFit.of(x(c), y(c)).orElseThrow();
        Estimate slope = fit.slope();
        c.check("n", fit.size());
        c.check("df", slope.degreesOfFreedom());
        c.check("slope", slope.value());
        c.check("se_slope", slope.standardUncertainty());
        c.check("residual_sd", fit.residualDeviation());
        c.check("r_squared", fit.rSquared());
        c.checkAt("/slope_ci_95/0", OptionalDouble.of(slope.interval(0.95).low()));
        c.checkAt("/slope_ci_95/1", OptionalDouble.of(slope.interval(0.95).high()));
        if (!c.expected("/x0").isMissingNode()) {
            c.check("intercept_at_x0", fit.at(c.expectedNumber("x0")).value());
            c.notOurs("where the intercept is stated, an input", "/x0");
            return;
        }
        Estimate intercept = fit.intercept();
        c.check("intercept", intercept.value());
        c.check("se_intercept", intercept.standardUncertainty());
        c.checkAt(
                "/intercept_ci_95/0", OptionalDouble.of(intercept.interval(0.95).low()));
        c.checkAt(
                "/intercept_ci_95/1", OptionalDouble.of(intercept.interval(0.95).high()));
        double t = slope.tStatistic(0).orElseThrow();
        c.check("t_slope", t);
        c.check("p_slope", slope.pTwoSided(0));
        c.check("F", t * t);
        c.check("residual_ss", fit.residualDeviation() * fit.residualDeviation() * slope.degreesOfFreedom());
    }

    private static void throughOrigin(ReferenceCase c) {
        LineFitThroughOrigin fit = LineFitThroughOrigin.of(x(c), y(c)).orElseThrow();
        c.check("n", fit.size());
        c.check("slope", fit.slope().value());
        c.check("se_slope", fit.slope().standardUncertainty());
        c.check("residual_sd", fit.residualDeviation());
        c.check("r_squared_uncentred", fit.rSquaredUncentred());
        c.check("df", fit.slope().degreesOfFreedom());
        c.checkAt("/slope_ci_95/0", OptionalDouble.of(fit.slope().interval(0.95).low()));
        c.checkAt("/slope_ci_95/1", OptionalDouble.of(fit.slope().interval(0.95).high()));
        c.notOurs("R squared about the mean has no meaning without an intercept", "/r_squared_centred");
    }

    private static void approach(ReferenceCase c) {
        String model = c.in("model").asText();
        boolean offset = model.equals("a, b, tau free");
        ApproachFit fit = (offset ? ApproachFit.of(x(c), y(c)) : ApproachFit.throughZero(x(c), y(c))).orElseThrow();
        double rate = 1 / fit.timeConstant().value();
        // du(τ)/dk: se(k) = se(τ)·k².
        double rateError = fit.timeConstant().standardUncertainty() * rate * rate;
        c.check("a", fit.start().value());
        c.check("b", fit.rise().value());
        c.check("b1", fit.rise().value());
        c.check("tau", fit.timeConstant().value());
        c.check("rate", rate);
        c.check("b2", rate);
        c.check("se_a", fit.start().standardUncertainty());
        c.check("se_b", fit.rise().standardUncertainty());
        c.check("se_b1", fit.rise().standardUncertainty());
        c.check("se_tau", fit.timeConstant().standardUncertainty());
        c.check("se_rate", rateError);
        c.check("se_b2", rateError);
        c.check("final_value", fit.finalValue().value());
        c.check("se_final_value", fit.finalValue().standardUncertainty());
        c.check("residual_ss", fit.residualSquares());
        c.check("residual_sd", fit.residualDeviation());
        c.check("df", fit.rise().degreesOfFreedom());
        c.check("record_length_over_tau", fit.timeConstantsSeen());
        wald(c, "a", fit.start());
        wald(c, "b", fit.rise());
        wald(c, "tau", fit.timeConstant());
    }

    private static void wald(ReferenceCase c, String name, Estimate estimate) {
        c.checkAt(
                "/wald_ci_95/" + name + "/0",
                OptionalDouble.of(estimate.interval(0.95).low()));
        c.checkAt(
                "/wald_ci_95/" + name + "/1",
                OptionalDouble.of(estimate.interval(0.95).high()));
    }

    private static void autocorrelation(ReferenceCase c) {
        Sample sample = Sample.of(c.column(c.in("column").asText()));
        Autocorrelation result = Autocorrelation.of(sample).orElseThrow();
        c.check("r1", result.lag1());
        c.check("n_eff_ar1", result.uncappedSize());
        c.check("se_inflation_ar1", Math.sqrt(result.size() / result.uncappedSize()));
        assertEquals(Math.min(sample.size(), result.uncappedSize()), result.effectiveSize());
        c.notOurs("another effective size, for short series", "/n_eff_ar1_finite");
        if (c.id().equals("autocorr-nist-zarr13")) {
            c.notOurs("negative control: another definition of the coefficient", "/pearson_shifted");
        }
    }

    private static void trend(ReferenceCase c) {
        if (c.has("windows")) {
            // Whole numbers of tenths of a degree, so that ties are exact; the case asks for slopes in tenths.
            double[] x = x(c);
            double[] y = java.util.Arrays.stream(y(c))
                    .map(value -> Math.rint(value * 10))
                    .toArray();
            int[] first = IntStream.range(0, x.length).filter(i -> x[i] <= 600).toArray();
            int[] last = IntStream.range(0, x.length).filter(i -> x[i] > 1200).toArray();
            trend(c, "/first", select(x, first), select(y, first));
            trend(c, "/last", select(x, last), select(y, last));
            return;
        }
        double[] y = y(c);
        double[] x = c.has("x") ? x(c) : counting(y.length);
        trend(c, "", x, y);
        if (c.id().equals("mk-by-hand")) {
            c.checkPrinted(
                    "p_one_sided", MannKendall.of(Sample.of(y)).pTwoSided().orElseThrow() / 2, 5e-5);
        }
        if (c.id().equals("mk-outlier")) {
            c.check(
                    "least_squares_slope",
                    LineFit.of(x, y).orElseThrow().slope().value());
        }
    }

    private static double[] select(double[] values, int[] chosen) {
        return IntStream.of(chosen).mapToDouble(i -> values[i]).toArray();
    }

    private static void trend(ReferenceCase c, String at, double[] x, double[] y) {
        MannKendall test = MannKendall.of(Sample.of(y));
        TheilSen line = TheilSen.of(x, y).orElseThrow();
        Interval interval = line.interval(0.95).orElseThrow();
        assertTrue(interval.contains(line.slope()));
        c.checkAt(at + "/n", OptionalDouble.of(test.size()));
        c.checkAt(at + "/S", OptionalDouble.of(test.s()));
        c.checkAt(at + "/var_S", OptionalDouble.of(test.variance()));
        c.checkAt(at + "/z", test.z());
        c.checkAt(at + "/p_two_sided", test.pTwoSided());
        c.checkAt(at + "/kendall_tau_b", test.tauB());
        c.checkAt(at + "/theil_sen_slope", OptionalDouble.of(line.slope()));
        c.checkAt(at + "/theil_sen_intercept_median", OptionalDouble.of(line.intercept()));
        c.checkAt(at + "/sen_ci_95_rank_lower", OptionalDouble.of(interval.low()));
        c.checkAt(at + "/sen_ci_95_rank_upper", OptionalDouble.of(interval.high()));
    }
}
