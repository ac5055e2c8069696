package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** Means, differences, ratios, equivalence, outliers. */
final class ReferenceOfMeans {

    static final Map<String, Consumer<ReferenceCase>> RUNNERS = Map.of(
            "mean-ci", ReferenceOfMeans::mean,
            "welch-t", ReferenceOfMeans::welch,
            "paired-t", ReferenceOfMeans::paired,
            "ratio-ci", ReferenceOfMeans::ratio,
            "tost", ReferenceOfMeans::equivalence,
            "grubbs", ReferenceOfMeans::grubbs);

    private ReferenceOfMeans() {}

    private static void mean(ReferenceCase c) {
        Sample sample = Sample.of(c.has("csv") ? c.column(c.in("column").asText()) : c.numbers("y"));
        Estimate mean = Estimate.ofMean(sample).orElseThrow();
        Interval interval = mean.interval(c.number("level"));
        c.check("n", sample.size());
        c.check("mean", sample.mean());
        c.check("sd", sample.standardDeviation());
        c.check("se", mean.standardUncertainty());
        c.check("df", mean.degreesOfFreedom());
        c.check("t_quantile", Student.factor(c.number("level"), OptionalDouble.of(mean.degreesOfFreedom())));
        c.check("lower", interval.low());
        c.check("upper", interval.high());
    }

    private static Sample x(ReferenceCase c) {
        return Sample.of(c.numbers("x"));
    }

    private static Sample y(ReferenceCase c) {
        return Sample.of(c.numbers("y"));
    }

    private static void welch(ReferenceCase c) {
        Estimate difference =
                IndependentMeans.of(x(c), y(c)).orElseThrow().difference().orElseThrow();
        Interval interval = difference.interval(c.number("level"));
        c.check("n1", x(c).size());
        c.check("n2", y(c).size());
        c.check("mean1", x(c).mean());
        c.check("mean2", y(c).mean());
        c.check("sd1", x(c).standardDeviation());
        c.check("sd2", y(c).standardDeviation());
        c.check("difference", difference.value());
        c.check("se", difference.standardUncertainty());
        c.check("t", difference.tStatistic(0));
        c.check("df", difference.effectiveDegreesOfFreedom());
        c.check("p_two_sided", difference.pTwoSided(0));
        c.check("t_quantile", Student.factor(c.number("level"), difference.effectiveDegreesOfFreedom()));
        c.check("lower", interval.low());
        c.check("upper", interval.high());
    }

    private static void paired(ReferenceCase c) {
        PairedMeans pairs = PairedMeans.of(x(c), y(c)).orElseThrow();
        Estimate difference = pairs.difference().orElseThrow();
        Interval interval = difference.interval(c.number("level"));
        c.check("n", pairs.size());
        c.check("mean_difference", difference.value());
        c.check("sd_difference", difference.standardUncertainty() * Math.sqrt(pairs.size()));
        c.check("se", difference.standardUncertainty());
        c.check("t", difference.tStatistic(0));
        c.check("df", difference.effectiveDegreesOfFreedom());
        c.check("p_two_sided", difference.pTwoSided(0));
        c.check("lower", interval.low());
        c.check("upper", interval.high());
    }

    private static void ratio(ReferenceCase c) {
        if (c.has("paired")) {
            pairedLogRatio(c);
            return;
        }
        Sample x = c.has("csv") ? group(c, "x") : x(c);
        Sample y = c.has("csv") ? group(c, "y") : y(c);
        IndependentMeans means = IndependentMeans.of(x, y).orElseThrow();
        Interval interval = means.ratioInterval(c.number("level")).orElseThrow();
        c.check("ratio", means.ratio());
        c.check("test_inversion/lower", interval.low());
        c.check("test_inversion/upper", interval.high());
        c.notOurs(
                "other published definitions of the interval; ours is the exact test inversion",
                "/fieller_plugin_df",
                "/fieller_welch_df",
                "/fieller_conservative_df",
                "/fieller_pooled");
        if (!c.expected("/log_welch").isMissingNode()) {
            logWelch(c, x, y);
        }
    }

    /** The ratio of geometric means is a difference of logarithms. */
    private static void logWelch(ReferenceCase c, Sample x, Sample y) {
        Estimate difference =
                IndependentMeans.of(logs(x), logs(y)).orElseThrow().difference().orElseThrow();
        Interval interval = difference.interval(c.number("level"));
        c.check("log_welch/ratio_of_geometric_means", Math.exp(difference.value()));
        c.check("log_welch/df", difference.effectiveDegreesOfFreedom());
        c.check("log_welch/lower", Math.exp(interval.low()));
        c.check("log_welch/upper", Math.exp(interval.high()));
        c.check("log_welch/p_two_sided", difference.pTwoSided(0));
    }

    private static void pairedLogRatio(ReferenceCase c) {
        Sample x = x(c);
        Sample y = y(c);
        double[] ratios = new double[x.size()];
        for (int i = 0; i < ratios.length; i++) {
            ratios[i] = x.values()[i] / y.values()[i];
        }
        Sample logs = logs(Sample.of(ratios));
        Estimate mean = Estimate.ofMean(logs).orElseThrow();
        Interval interval = mean.interval(c.number("level"));
        c.check("n", logs.size());
        c.check("geometric_mean_ratio", GeometricMean.of(ratios));
        c.check("sd_log", logs.standardDeviation());
        c.check("lower", Math.exp(interval.low()));
        c.check("upper", Math.exp(interval.high()));
        c.check("p_two_sided", mean.pTwoSided(0));
        c.check("ratio_of_means", PairedMeans.of(x, y).orElseThrow().ratio());
        c.check("mean_of_ratios", Sample.of(ratios).mean());
    }

    static Sample logs(Sample sample) {
        double[] values = sample.values();
        for (int i = 0; i < values.length; i++) {
            values[i] = StrictMath.log(values[i]);
        }
        return Sample.of(values);
    }

    private static Sample group(ReferenceCase c, String side) {
        List<String> groups = c.text(c.in("group").asText());
        double[] all = c.column(c.in("column").asText());
        List<Double> chosen = new ArrayList<>();
        for (int i = 0; i < all.length; i++) {
            if (groups.get(i).equals(c.in(side).asText())) {
                chosen.add(all[i]);
            }
        }
        return Sample.of(chosen.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static void equivalence(ReferenceCase c) {
        if (c.has("ratio_low")) {
            logEquivalence(c);
            return;
        }
        Interval margin;
        IndependentMeans means;
        if (c.has("m1")) {
            double sd1 = c.number("sd1");
            double sd2 = c.number("sd2");
            double bound = c.number("bound_d") * Math.sqrt((sd1 * sd1 + sd2 * sd2) / 2);
            margin = new Interval(-bound, bound);
            means = IndependentMeans.of(summary(c, "1"), summary(c, "2"));
            c.check("low", margin.low());
            c.check("high", margin.high());
        } else {
            margin = new Interval(c.number("low"), c.number("high"));
            means = IndependentMeans.of(x(c), y(c)).orElseThrow();
        }
        double alpha = c.number("alpha");
        Estimate difference = means.difference().orElseThrow();
        Equivalence result = Equivalence.of(difference, margin, alpha).orElseThrow();
        if (c.id().equals("tost-yield")) {
            c.checkPrinted("p_lower", result.pLower(), 1e-5);
            c.checkPrinted("p_upper", result.pUpper(), 1e-5);
        }
        checkEquivalence(c, difference, result, alpha);
        c.check("difference", difference.value());
        c.check("se", difference.standardUncertainty());
        c.check("t_lower", difference.tStatistic(margin.low()));
        c.check("t_upper", difference.tStatistic(margin.high()));
        c.check("ci_lower", result.interval().low());
        c.check("ci_upper", result.interval().high());
    }

    private static Estimate summary(ReferenceCase c, String side) {
        double n = c.number("n" + side);
        return new Estimate(c.number("m" + side), c.number("sd" + side) / Math.sqrt(n), n - 1, 0);
    }

    private static void checkEquivalence(ReferenceCase c, Estimate estimate, Equivalence result, double alpha) {
        c.check("df", estimate.effectiveDegreesOfFreedom());
        c.check("p_lower", result.pLower());
        c.check("p_upper", result.pUpper());
        double larger = Math.max(result.pLower(), result.pUpper());
        c.check("p_tost", larger);
        c.check("ci_level", 1 - 2 * alpha);
        c.check("equivalent", result.equivalent());
        assertEquals(result.equivalent(), larger < alpha);
    }

    private static void logEquivalence(ReferenceCase c) {
        double alpha = c.number("alpha");
        Interval margin = new Interval(Math.log(c.number("ratio_low")), Math.log(c.number("ratio_high")));
        Estimate difference = IndependentMeans.of(logs(x(c)), logs(y(c)))
                .orElseThrow()
                .difference()
                .orElseThrow();
        Equivalence result = Equivalence.of(difference, margin, alpha).orElseThrow();
        checkEquivalence(c, difference, result, alpha);
        c.check("ratio", Math.exp(difference.value()));
        c.check("ci_lower", Math.exp(result.interval().low()));
        c.check("ci_upper", Math.exp(result.interval().high()));
    }

    private static void grubbs(ReferenceCase c) {
        double alpha = c.number("alpha");
        if (c.has("sides")) {
            double[] critical = new double[c.in("n").size()];
            for (int i = 0; i < critical.length; i++) {
                critical[i] = Grubbs.critical(c.in("n").get(i).asInt(), alpha / 2);
            }
            c.check("critical", critical);
            return;
        }
        Sample sample = Sample.of(c.has("csv") ? c.column(c.in("column").asText()) : c.numbers("y"));
        Grubbs result = Grubbs.of(sample, alpha).orElseThrow();
        int n = sample.size();
        c.check("G", result.statistic());
        c.check("suspect", result.value());
        c.check("n", n);
        c.check("mean", sample.mean());
        c.check("sd", sample.standardDeviation());
        c.check("critical_two_sided", result.critical());
        c.check("p_two_sided_bonferroni", result.p());
        c.check("outlier_two_sided", result.outlier());
        double oneSided = Grubbs.critical(n, alpha);
        if (c.id().equals("grubbs-nist-uranium")) {
            // The handbook prints 2.032, three decimals.
            c.checkPrinted("critical_one_sided", oneSided, 5e-4);
            c.check("outlier_one_sided", result.statistic() > oneSided);
            c.checkComputed("/critical_one_sided", oneSided);
        } else {
            c.check("critical_one_sided", oneSided);
        }
        c.check("p_one_sided_bonferroni", Grubbs.tail(n, result.statistic()));
        if (c.id().equals("grubbs-nist-zarr13")) {
            c.check("p_one_sided", Grubbs.tail(n, result.statistic()));
        }
    }
}
