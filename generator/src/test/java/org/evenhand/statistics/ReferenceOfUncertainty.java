package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** Uncertainty budgets, geometric means, sound levels, planning. */
final class ReferenceOfUncertainty {

    static final Map<String, Consumer<ReferenceCase>> RUNNERS = Map.of(
            "gum", ReferenceOfUncertainty::budget,
            "geometric-mean", ReferenceOfUncertainty::geometricMean,
            "sound-level", ReferenceOfUncertainty::soundLevel,
            "sample-size", ReferenceOfUncertainty::sampleSize);

    private ReferenceOfUncertainty() {}

    private static void budget(ReferenceCase c) {
        switch (c.id()) {
            case "gum-h1" -> endGauge(c);
            case "gum-h1-subbudget" -> {
                UncertaintyBudget.Combined sum =
                        budget(c.numbers("u"), c.numbers("dof")).combine(1, 1, 1);
                c.checkPrinted("u_c", sum.standardUncertainty(), 0.05);
                // The GUM prints 25.6 from the rounded 9.7; unrounded it is 25.4.
                c.checkPrinted("nu_eff", sum.degreesOfFreedom().orElseThrow(), 0.2);
                c.checkComputed("/u_c", sum.standardUncertainty());
                c.checkComputed("/nu_eff", sum.degreesOfFreedom().orElseThrow());
            }
            case "gum-h2" -> impedance(c);
            case "gum-h2-uncorrelated" -> impedanceWithoutCorrelation(c);
            case "gum-g41" -> relative(c);
            case "gum-g3" ->
                c.check(
                        "nu",
                        Arrays.stream(c.numbers("relative_uncertainty_of_u"))
                                .map(TypeB::degreesOfFreedom)
                                .toArray());
            case "gum-typeb" -> {
                c.check("rectangular", TypeB.rectangular(c.number("a")));
                c.check("triangular", TypeB.triangular(c.number("a")));
                c.check("arcsine", TypeB.arcsine(c.number("a")));
                assertEquals(c.number("a") * 2 / Math.sqrt(12), TypeB.resolution(c.number("a") * 2), 1e-15);
            }
            case "gum-energy-product" -> energy(c);
            default -> throw new AssertionError("a new case: " + c.id());
        }
    }

    private static UncertaintyBudget budget(double[] u, double[] dof) {
        List<UncertaintyBudget.Input> inputs = new ArrayList<>();
        for (int i = 0; i < u.length; i++) {
            inputs.add(
                    dof[i] <= Double.MAX_VALUE
                            ? UncertaintyBudget.Input.typeA(u[i], dof[i])
                            : UncertaintyBudget.Input.typeB(u[i]));
        }
        return UncertaintyBudget.of(inputs);
    }

    private static void endGauge(ReferenceCase c) {
        JsonNode q = c.in("quantities");
        double[] value = new double[9];
        double[] u = new double[9];
        double[] dof = new double[9];
        double[] printed = new double[9];
        for (int i = 0; i < 9; i++) {
            value[i] = q.get(i).get("value").asDouble();
            u[i] = q.get(i).get("u").asDouble();
            printed[i] = q.get(i).get("u_printed").asDouble();
            dof[i] = Double.parseDouble(q.get(i).get("dof").asText());
        }
        double standard = value[0];
        double deviation = value[5] * (value[6] + value[7]) + value[4] * value[8];
        double[] sensitivity = {
            1 - deviation,
            1,
            1,
            1,
            -standard * value[8],
            -standard * (value[6] + value[7]),
            -standard * value[5],
            -standard * value[5],
            -standard * value[4]
        };
        double length = standard + value[1] + value[2] + value[3] - standard * deviation;
        UncertaintyBudget.Combined combined = budget(u, dof).combine(sensitivity);
        double uncertainty = combined.standardUncertainty();
        double freedom = combined.degreesOfFreedom().orElseThrow();
        c.checkPrinted("l_nm", length, 0.5);
        c.checkPrinted("u_c_nm", uncertainty, 0.5);
        c.checkPrinted("u_c_squared", uncertainty * uncertainty, 1);
        c.checkPrinted("nu_eff", freedom, 0.1);
        double[] parts = new double[9];
        for (int i = 0; i < 9; i++) {
            parts[i] = Math.abs(sensitivity[i]) * u[i];
            c.checkComputed("/contributions_nm/" + i, parts[i]);
        }
        c.checkAtPrinted("/contributions_nm/l_s", parts[0], 0.05);
        c.checkAtPrinted(
                "/contributions_nm/d",
                budget(Arrays.copyOfRange(u, 1, 4), Arrays.copyOfRange(dof, 1, 4))
                        .combine(1, 1, 1)
                        .standardUncertainty(),
                0.05);
        c.checkAtPrinted("/contributions_nm/d_alpha", parts[5], 0.05);
        c.checkAtPrinted("/contributions_nm/d_theta", parts[8], 0.05);
        c.checkComputed("/l_nm", length);
        c.checkComputed("/u_c_nm", uncertainty);
        c.checkComputed("/nu_eff", freedom);
        UncertaintyBudget.Combined fromPrinted = budget(printed, dof).combine(sensitivity);
        c.checkComputed("/with_printed_u/u_c_nm", fromPrinted.standardUncertainty());
        c.checkComputed("/with_printed_u/nu_eff", fromPrinted.degreesOfFreedom().orElseThrow());
        // The GUM truncates to 16, we do not: our factor must lie between those of 16 and 17 (G.4.1, note 1).
        double k16 = Student.factor(0.99, OptionalDouble.of(Math.floor(freedom)));
        c.checkPrinted("nu_eff_truncated", Math.floor(freedom), 0);
        double k = combined.expanded(0.99) / uncertainty;
        assertTrue(k < k16 && k > Student.factor(0.99, OptionalDouble.of(17)));
        c.checkPrinted("k99", k16, 0.005);
        // k·u unrounded is 92.5; the GUM multiplies rounded factors to 93.
        c.checkPrinted("U99_nm", k16 * uncertainty, 1);
        c.checkComputed("/k99_nu16", k16);
        c.checkComputed("/U99_nm_unrounded", k16 * uncertainty);
    }

    /** Sensitivities of R, X and Z to V, I and φ. */
    private static double[][] sensitivities(List<Sample> readings) {
        double v = readings.get(0).mean();
        double i = readings.get(1).mean();
        double phi = readings.get(2).mean();
        double z = v / i;
        return new double[][] {
            {Math.cos(phi) / i, -z * Math.cos(phi) / i, -z * Math.sin(phi)},
            {Math.sin(phi) / i, -z * Math.sin(phi) / i, z * Math.cos(phi)},
            {1 / i, -z / i, 0}
        };
    }

    private static List<Sample> readings(ReferenceCase c) {
        return List.of(Sample.of(c.numbers("V")), Sample.of(c.numbers("I")), Sample.of(c.numbers("phi")));
    }

    private static void impedance(ReferenceCase c) {
        List<Sample> readings = readings(c);
        UncertaintyBudget budget = UncertaintyBudget.ofSimultaneousReadings(readings);
        double[][] s = sensitivities(readings);
        double z = readings.get(0).mean() / readings.get(1).mean();
        double phi = readings.get(2).mean();
        c.checkBoth("R", z * Math.cos(phi), 0.0005);
        c.checkBoth("X", z * Math.sin(phi), 0.0005);
        c.checkBoth("Z", z, 0.0005);
        String[] names = {"R", "X", "Z"};
        double[] u = new double[3];
        for (int k = 0; k < 3; k++) {
            u[k] = budget.combine(s[k]).standardUncertainty();
            c.checkBoth("u_" + names[k], u[k], 0.001);
            assertEquals(4, budget.combine(s[k]).degreesOfFreedom().orElseThrow());
        }
        c.checkBoth("r_RX", budget.covariance(s[0], s[1]) / (u[0] * u[1]), 0.001);
        c.checkBoth("r_RZ", budget.covariance(s[0], s[2]) / (u[0] * u[2]), 0.001);
        c.checkBoth("r_XZ", budget.covariance(s[1], s[2]) / (u[1] * u[2]), 0.001);
        String[] inputs = {"V", "I", "phi"};
        double[] half = {5e-5, 5e-8, 5e-6};
        // Half of the last digit printed: 4.999 0, 0.019 661, 1.044 46.
        double[] lastDigit = {5e-5, 5e-7, 5e-6};
        double[][] only = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        for (int k = 0; k < 3; k++) {
            double standard = budget.combine(only[k]).standardUncertainty();
            double mean = readings.get(k).mean();
            c.checkAtPrinted("/means/" + inputs[k], mean, lastDigit[k]);
            c.checkAtPrinted("/u/" + inputs[k], standard, half[k]);
            c.checkComputed("/u_" + inputs[k], standard);
        }
        c.checkAtPrinted("/r/V_I", budget.correlation(0, 1), 0.005);
        c.checkAtPrinted("/r/V_phi", budget.correlation(0, 2), 0.005);
        c.checkAtPrinted("/r/I_phi", budget.correlation(1, 2), 0.005);
        c.checkComputed("/r_V_I", budget.correlation(0, 1));
        c.checkComputed("/r_V_phi", budget.correlation(0, 2));
        c.checkComputed("/r_I_phi", budget.correlation(1, 2));
        UncertaintyBudget printed = budget(new double[] {0.0032, 9.5e-6, 0.00075}, new double[] {4, 4, 4})
                .withCorrelation(0, 1, -0.36)
                .withCorrelation(0, 2, 0.86)
                .withCorrelation(1, 2, -0.65);
        for (int k = 0; k < 3; k++) {
            c.checkComputed(
                    "/with_printed_inputs/u_" + names[k], printed.combine(s[k]).standardUncertainty());
        }
    }

    private static void impedanceWithoutCorrelation(ReferenceCase c) {
        List<Sample> readings = readings(c);
        double[] u = readings.stream()
                .mapToDouble(sample -> sample.standardError().orElseThrow())
                .toArray();
        UncertaintyBudget budget = budget(u, new double[] {4, 4, 4});
        double[][] s = sensitivities(readings);
        c.check("u_R", budget.combine(s[0]).standardUncertainty());
        c.check("u_X", budget.combine(s[1]).standardUncertainty());
        c.check("u_Z", budget.combine(s[2]).standardUncertainty());
    }

    private static void relative(ReferenceCase c) {
        UncertaintyBudget.Combined combined =
                budget(c.numbers("u_rel_percent"), c.numbers("dof")).combine(1, 1, 1);
        double u = combined.standardUncertainty();
        double freedom = combined.degreesOfFreedom().orElseThrow();
        c.checkPrinted("u_c_rel_percent", u, 0.005);
        c.checkPrinted("nu_eff", freedom, 0.5);
        c.checkPrinted("t95", combined.expanded(0.95) / u, 0.005);
        c.checkPrinted("U95_rel_percent", combined.expanded(0.95), 0.05);
        c.checkComputed("/u_c", u);
        c.checkComputed("/nu_eff", freedom);
        double t19 = Student.factor(0.95, OptionalDouble.of(19));
        c.checkComputed("/t95_nu19", t19);
        c.checkComputed("/U95", t19 * u);
    }

    private static void energy(ReferenceCase c) {
        double voltage = c.number("U");
        double current = c.number("I");
        double time = c.number("t");
        UncertaintyBudget budget = UncertaintyBudget.of(List.of(
                UncertaintyBudget.Input.typeB(c.number("uU")),
                UncertaintyBudget.Input.typeB(c.number("uI")),
                UncertaintyBudget.Input.typeB(c.number("ut"))));
        double[] s = {current * time, voltage * time, voltage * current};
        c.check("E", voltage * current * time);
        c.check("u_E", budget.combine(s).standardUncertainty());
        c.check("u_E_r08", budget.withCorrelation(0, 1, 0.8).combine(s).standardUncertainty());
        c.check("u_E_r1", budget.withCorrelation(0, 1, 1).combine(s).standardUncertainty());
        assertTrue(budget.combine(s).degreesOfFreedom().isEmpty());
    }

    private static void geometricMean(ReferenceCase c) {
        switch (c.id()) {
            case "geomean-textbook" -> textbook(c);
            case "geomean-1986-table" -> {
                for (int i = 0; i < c.in("ratios_by_system").size(); i++) {
                    double[] ratios =
                            ReferenceCase.numbers(c.in("ratios_by_system").get(i));
                    c.checkAt("/geometric/" + i, OptionalDouble.of(GeometricMean.of(ratios)));
                    c.checkAt(
                            "/arithmetic/" + i,
                            OptionalDouble.of(Sample.of(ratios).mean()));
                }
            }
            case "geomean-weighted" -> {
                double[] ratios = c.numbers("ratios");
                double[] reciprocals = Arrays.stream(ratios).map(r -> 1 / r).toArray();
                c.check("weighted", GeometricMean.weighted(ratios, c.numbers("weights")));
                c.check("weighted_of_reciprocals", GeometricMean.weighted(reciprocals, c.numbers("weights")));
                c.check("unweighted", GeometricMean.of(ratios));
            }
            case "geomean-overflow" -> {
                double[] values = new double[800];
                Arrays.fill(values, 0, 400, 1e6);
                Arrays.fill(values, 400, 800, 1e-6);
                c.check("geometric_mean", GeometricMean.of(values));
            }
            default -> throw new AssertionError("a new case: " + c.id());
        }
    }

    private static void textbook(ReferenceCase c) {
        for (String reference : List.of("B", "C")) {
            for (String system : List.of("A", "B", "C")) {
                double[] ratios = ratios(c.numbers(reference), c.numbers(system));
                c.check("reference_" + reference + "/" + system, GeometricMean.of(ratios));
                c.check(
                        "arithmetic_reference_" + reference + "/" + system,
                        Sample.of(ratios).mean());
            }
        }
        // Printed with two decimals.
        c.checkPrinted("A_over_B", GeometricMean.of(ratios(c.numbers("B"), c.numbers("A"))), 0.005);
        c.checkPrinted("B_over_C", GeometricMean.of(ratios(c.numbers("C"), c.numbers("B"))), 0.005);
        c.checkPrinted("A_over_C", GeometricMean.of(ratios(c.numbers("C"), c.numbers("A"))), 0.005);
    }

    private static double[] ratios(double[] over, double[] under) {
        double[] ratios = new double[over.length];
        for (int i = 0; i < ratios.length; i++) {
            ratios[i] = over[i] / under[i];
        }
        return ratios;
    }

    private static void soundLevel(ReferenceCase c) {
        switch (c.id()) {
            case "sound-mean-a" -> {
                c.check("energetic_mean", SoundLevel.energeticMeanDb(c.numbers("L")));
                c.check("arithmetic_mean", Sample.of(c.numbers("L")).mean());
            }
            case "sound-sum-published" -> c.check("sum", SoundLevel.energeticSumDb(c.numbers("L")));
            case "sound-sum-b" -> {
                for (int i = 0; i < c.in("cases").size(); i++) {
                    double[] levels = ReferenceCase.numbers(c.in("cases").get(i));
                    c.checkAt("/sums/" + i, OptionalDouble.of(SoundLevel.energeticSumDb(levels)));
                }
            }
            case "sound-leq" -> c.check("leq", SoundLevel.equivalentDb(c.numbers("L"), c.numbers("minutes")));
            case "sound-k1-formula" -> {
                double[] corrections = Arrays.stream(c.numbers("delta_L"))
                        .map(difference -> SoundLevel.correctedForBackground(60 + difference, 60, 15)
                                .correctionDb())
                        .toArray();
                c.check("K1", corrections);
                c.check("K1_rounded_01", corrections);
            }
            case "sound-k1-iso3746" -> {
                for (int i = 0; i < c.in("L_on").size(); i++) {
                    double on = c.in("L_on").get(i).asDouble();
                    double background = c.in("L_background").get(i).asDouble();
                    SoundLevel.Corrected corrected = SoundLevel.correctedForBackground(on, background, 10);
                    c.checkAt("/delta_L/" + i, OptionalDouble.of(on - background));
                    c.checkAt("/K1/" + i, OptionalDouble.of(corrected.correctionDb()));
                    assertEquals(!c.expected("/flag/" + i).asText().equals("none"), corrected.upperBoundOnly());
                }
                c.notOurs("words for the flag, compared above", "/flag");
            }
            case "sound-background-examples" -> {
                for (int i = 0; i < c.in("L_on").size(); i++) {
                    double on = c.in("L_on").get(i).asDouble();
                    double background = c.in("L_background").get(i).asDouble();
                    double level = on - SoundLevel.backgroundCorrectionDb(on - background);
                    c.checkAt("/L_source/" + i, OptionalDouble.of(level));
                    SoundLevel.Corrected published = SoundLevel.correctedForBackground(on, background, 15);
                    assertEquals(on - background < 3, published.upperBoundOnly());
                    assertTrue(published.levelDb() >= level - 1e-12);
                }
            }
            default -> throw new AssertionError("a new case: " + c.id());
        }
    }

    private static void sampleSize(ReferenceCase c) {
        if (c.id().equals("n-half-width")) {
            halfWidths(c);
            return;
        }
        double delta = c.number("delta");
        double alpha = c.number("alpha");
        if (c.id().equals("n-r-doc-power")) {
            int n = (int) c.number("n");
            double right = SampleSize.powerForTwoMeans(n, delta, c.number("sd"), alpha);
            double critical = Student.upperQuantile(alpha / 2, 2 * n - 2);
            double wrong = NoncentralT.cumulative(-critical, 2 * n - 2, delta / c.number("sd") * Math.sqrt(n / 2.0));
            c.check("power", right);
            c.check("power_strict", right + wrong);
            return;
        }
        double power = c.number("power");
        boolean pairs = c.has("sd_difference");
        double sd = c.number(pairs ? "sd_difference" : "sd");
        double exact = (pairs
                        ? SampleSize.exactForPairs(delta, sd, alpha, power)
                        : SampleSize.exactForTwoMeans(delta, sd, alpha, power))
                .orElseThrow();
        int n = (pairs ? SampleSize.forPairs(delta, sd, alpha, power) : SampleSize.forTwoMeans(delta, sd, alpha, power))
                .orElseThrow();
        c.check("n_exact", exact);
        c.check("n_rounded_up", n);
        double reached = pairs
                ? SampleSize.powerForPairs(n, delta, sd, alpha)
                : SampleSize.powerForTwoMeans(n, delta, sd, alpha);
        double missed = pairs
                ? SampleSize.powerForPairs(n - 1, delta, sd, alpha)
                : SampleSize.powerForTwoMeans(n - 1, delta, sd, alpha);
        assertTrue(missed < power && power <= reached, "the smallest whole number");
        c.notOursIfPresent("the power asked for, an input", "/power");
        c.notOursIfPresent("negative control: the normal approximation is too small", "/normal_approximation");
    }

    private static void halfWidths(ReferenceCase c) {
        int i = 0;
        for (JsonNode each : c.in("cases")) {
            double sd = each.get("sd").asDouble();
            int n = SampleSize.forHalfWidth(sd, each.get("h").asDouble(), 0.95).orElseThrow();
            String at = "/cases/" + i++;
            c.checkAt(at + "/n", OptionalDouble.of(n));
            c.checkAt(at + "/half_width_at_n", OptionalDouble.of(SampleSize.halfWidth(sd, n, 0.95)));
            c.checkAt(at + "/half_width_at_n_minus_1", OptionalDouble.of(SampleSize.halfWidth(sd, n - 1, 0.95)));
            c.notOurs("negative control: the normal approximation is too small", at + "/normal_n");
        }
    }
}
