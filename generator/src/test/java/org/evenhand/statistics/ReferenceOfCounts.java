package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Survival, proportions, rates. */
final class ReferenceOfCounts {

    static final Map<String, Consumer<ReferenceCase>> RUNNERS = Map.of(
            "kaplan-meier", ReferenceOfCounts::survival,
            "clopper-pearson", ReferenceOfCounts::proportion,
            "poisson-rate", ReferenceOfCounts::rate);

    private ReferenceOfCounts() {}

    private static void survival(ReferenceCase c) {
        if (!c.has("csv")) {
            List<CensoredTime> times = new ArrayList<>();
            for (int i = 0; i < c.in("time").size(); i++) {
                times.add(new CensoredTime(
                        c.in("time").get(i).asDouble(), c.in("status").get(i).asInt() == 1));
            }
            KaplanMeier curve = KaplanMeier.of(times);
            if (c.expected("/survival").isMissingNode()) {
                median(c, "", curve);
            } else {
                curve(c, curve);
            }
            return;
        }
        Map<String, List<CensoredTime>> groups = groups(c);
        groups.forEach((name, times) -> median(c, "/medians/" + name, KaplanMeier.of(times)));
        logRank(c, groups);
    }

    private static Map<String, List<CensoredTime>> groups(ReferenceCase c) {
        double eventCode = c.number("event_code", 1);
        double[] times = c.column(c.in("time").asText());
        double[] status = c.column(c.in("status").asText());
        List<String> labels = c.text(c.in("group").asText());
        Map<String, List<CensoredTime>> groups = new TreeMap<>();
        for (int i = 0; i < times.length; i++) {
            groups.computeIfAbsent(labels.get(i), label -> new ArrayList<>())
                    .add(new CensoredTime(times[i], status[i] == eventCode));
        }
        return groups;
    }

    private static void median(ReferenceCase c, String at, KaplanMeier curve) {
        c.checkAt(at + "/n", OptionalDouble.of(curve.size()));
        c.checkAt(at + "/events", OptionalDouble.of(curve.events()));
        c.checkAt(at + "/median_first_time", curve.median());
        c.checkAt(at + "/ci_95/log_log/lower", curve.medianLow(0.95));
        c.checkAt(at + "/ci_95/log_log/upper", curve.medianHigh(0.95));
        c.notOurs("other conventions of the median", at + "/median_midpoint_r_print", at + "/median_r_quantile");
        c.notOurs("other scales of the interval", at + "/ci_95/plain", at + "/ci_95/log");
    }

    private static void curve(ReferenceCase c, KaplanMeier curve) {
        assertEquals(c.expected("/time").size(), curve.steps().size());
        for (int i = 0; i < curve.steps().size(); i++) {
            KaplanMeier.Step step = curve.steps().get(i);
            Interval band = step.interval(0.95).orElseThrow();
            c.checkAt("/time/" + i, OptionalDouble.of(step.time()));
            c.checkAt("/n_risk/" + i, OptionalDouble.of(step.atRisk()));
            c.checkAt("/n_event/" + i, OptionalDouble.of(step.events()));
            c.checkAt("/n_censor/" + i, OptionalDouble.of(step.censored()));
            c.checkAt("/survival/" + i, OptionalDouble.of(step.survival()));
            c.checkAt("/se_greenwood/" + i, step.standardUncertainty());
            c.checkAt("/lower_log_log/" + i, OptionalDouble.of(band.low()));
            c.checkAt("/upper_log_log/" + i, OptionalDouble.of(band.high()));
        }
    }

    private static void logRank(ReferenceCase c, Map<String, List<CensoredTime>> groups) {
        LogRank test = LogRank.of(List.copyOf(groups.values())).orElseThrow();
        int group = 0;
        for (Map.Entry<String, List<CensoredTime>> entry : groups.entrySet()) {
            assertEquals(c.expected("/log_rank/groups/" + group).asText(), entry.getKey());
            c.checkAt("/log_rank/n/" + group, OptionalDouble.of(entry.getValue().size()));
            c.checkAt(
                    "/log_rank/observed/" + group,
                    OptionalDouble.of(test.observed().get(group)));
            c.checkAt(
                    "/log_rank/expected/" + group,
                    OptionalDouble.of(test.expected().get(group)));
            group++;
        }
        c.notOurs("names of the groups, compared above as text", "/log_rank/groups");
        c.check("log_rank/variance_first_group", test.varianceOfFirst());
        c.check("log_rank/chisq", test.chiSquared());
        c.check("log_rank/df", test.degreesOfFreedom());
        c.check("log_rank/p", test.pAsymptotic());
        assertTrue(test.pExact().isEmpty(), "more arrangements than are counted");
    }

    private static void proportion(ReferenceCase c) {
        double level = c.number("level");
        int i = 0;
        for (JsonNode each : c.in("cases")) {
            Proportion proportion =
                    new Proportion(each.get("k").asInt(), each.get("n").asInt());
            String at = "/cases/" + i++;
            c.checkAt(at + "/k", OptionalDouble.of(proportion.successes()));
            c.checkAt(at + "/n", OptionalDouble.of(proportion.trials()));
            c.checkAt(at + "/estimate", OptionalDouble.of(proportion.share()));
            c.checkAt(
                    at + "/lower", OptionalDouble.of(proportion.interval(level).low()));
            c.checkAt(
                    at + "/upper", OptionalDouble.of(proportion.interval(level).high()));
            c.checkAt(at + "/lower_one_sided", OptionalDouble.of(proportion.lowerBound(level)));
            c.checkAt(at + "/upper_one_sided", OptionalDouble.of(proportion.upperBound(level)));
        }
    }

    private static void rate(ReferenceCase c) {
        if (c.id().equals("rule-of-three")) {
            ruleOfThree(c);
            return;
        }
        PoissonRate rate = new PoissonRate((int) c.number("failures"), c.number("hours"));
        if (c.has("level")) {
            Interval interval = rate.interval(c.number("level"));
            c.check("mtbf", rate.meanTimeBetween());
            c.check("mtbf_lower", 1 / interval.high());
            c.check("mtbf_upper", 1 / interval.low());
            return;
        }
        double confidence = 1 - c.number("alpha");
        c.check("failures", rate.events());
        c.check("hours", rate.time());
        c.check("rate", rate.rate());
        c.check("rate_upper_one_sided_95", rate.upperBound(confidence));
        c.check("rate_lower_one_sided_95", rate.lowerBound(confidence));
        c.check("rate_upper_two_sided_95", rate.interval(confidence).high());
        c.check("rate_lower_two_sided_95", rate.interval(confidence).low());
        c.check("mtbf_lower_one_sided_95", 1 / rate.upperBound(confidence));
        c.check("prob_no_failure_next_24h_at_upper", rate.chanceOfNoEvent(24, confidence));
    }

    private static void ruleOfThree(ReferenceCase c) {
        double confidence = 1 - c.number("alpha");
        for (int i = 0; i < c.in("n").size(); i++) {
            int n = c.in("n").get(i).asInt();
            c.checkAt("/binomial_exact/" + i, OptionalDouble.of(new Proportion(0, n).upperBound(confidence)));
            c.checkAt("/poisson_exact/" + i, OptionalDouble.of(new PoissonRate(0, n).upperBound(confidence)));
        }
        c.notOurs("the approximate rule, which the exact bounds replace", "/rule_of_three");
    }
}
