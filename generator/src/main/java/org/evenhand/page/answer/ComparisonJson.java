package org.evenhand.page.answer;

import java.io.IOException;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.Verdict;
import org.evenhand.statistics.Equivalence;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.Interval;
import org.evenhand.statistics.KaplanMeier;
import org.evenhand.statistics.LineFit;
import org.evenhand.statistics.LogRank;

/** Writes the comparisons of {@code evidence.json}; a refused one has all fields of its kind, and no figure in them. */
final class ComparisonJson {

    private static final double CONFIDENCE = LevelSummary.CONFIDENCE;

    private final EvidenceJson json;
    private final Answer answer;

    ComparisonJson(EvidenceJson json, Answer answer) {
        this.json = json;
        this.answer = answer;
    }

    void write(ComparisonResult result) throws IOException {
        boolean refused = answer.isRefused(result);
        json.start();
        json.text("id", result.plan().id());
        json.text("as", result.plan().kind().word());
        json.text(
                "measurand",
                result.plan().measurand().map(answer.names()::address).orElse(null));
        json.text("unit", result.unit().symbol());
        json.text("verdict", answer.verdict(result).map(Verdict::word).orElse(null));
        json.texts("caveats", answer.rules(result));
        if (result instanceof ComparisonResult.Contrasted r) {
            contrasted(r, !refused);
        } else if (result instanceof ComparisonResult.Trend r) {
            trend(r, !refused);
        } else if (result instanceof ComparisonResult.Survival r) {
            survival(r, !refused);
        } else if (result instanceof ComparisonResult.Share r) {
            share(r, !refused);
        } else if (result instanceof ComparisonResult.FailureRate r) {
            failureRate(r, !refused);
        } else {
            geometricMean((ComparisonResult.GeometricMean) result, !refused);
        }
        json.end();
    }

    private void contrasted(ComparisonResult.Contrasted r, boolean shown) throws IOException {
        json.text("level", r.plan().level().orElse(null));
        json.text("against", r.plan().against().orElse(null));
        estimate(r.estimate(), r.interval(), shown);
        json.number("degreesOfFreedom", only(r.degreesOfFreedom(), shown));
        json.number("p", only(r.p(), shown));
        json.number("pAdjusted", only(r.pAdjusted(), shown));
        json.number("margin", r.margin());
        Optional<Interval> equivalence = r.equivalence().filter(e -> shown).map(Equivalence::interval);
        json.number("equivalenceLow", equivalence.map(Interval::low));
        json.number("equivalenceHigh", equivalence.map(Interval::high));
    }

    private void trend(ComparisonResult.Trend r, boolean shown) throws IOException {
        Optional<LineFit> line = r.line().filter(l -> shown);
        Optional<Interval> slope = line.map(l -> l.slope().interval(CONFIDENCE));
        json.number("slope", line.map(l -> l.slope().value()));
        json.number("slopeLow", slope.map(Interval::low));
        json.number("slopeHigh", slope.map(Interval::high));
        json.number("intercept", line.map(l -> l.intercept().value()));
        Optional<Estimate> exponent = r.exponent().filter(e -> shown);
        Optional<Interval> ofExponent = exponent.map(e -> e.interval(CONFIDENCE));
        json.number("exponent", exponent.map(Estimate::value));
        json.number("exponentLow", ofExponent.map(Interval::low));
        json.number("exponentHigh", ofExponent.map(Interval::high));
    }

    private void survival(ComparisonResult.Survival r, boolean shown) throws IOException {
        json.startArray("levels");
        for (ComparisonResult.Curve curve : r.levels()) {
            KaplanMeier km = curve.curve();
            json.start();
            json.text("level", curve.level());
            json.number("n", km.size());
            json.number("events", km.events());
            json.number("median", km.median());
            json.number("low", km.medianLow(CONFIDENCE));
            json.number("high", km.medianHigh(CONFIDENCE));
            json.end();
        }
        json.endArray();
        Optional<LogRank> test = r.test().filter(t -> shown);
        json.number("chiSquare", test.map(LogRank::chiSquared));
        json.number("p", only(r.p(), shown));
        json.text(
                "test",
                test.map(t -> t.pExact().isPresent() ? "log-rank, exact permutation" : "log-rank, chi-squared")
                        .orElse(null));
    }

    private void share(ComparisonResult.Share r, boolean shown) throws IOException {
        json.text("level", r.plan().level().orElse(null));
        json.number("successes", r.successes());
        json.number("n", r.n());
        estimate(r.estimate(), r.interval(), shown);
    }

    private void failureRate(ComparisonResult.FailureRate r, boolean shown) throws IOException {
        json.text("level", r.plan().level().orElse(null));
        json.number("events", r.events());
        // In the unit whose reciprocal the rate has, hours: 48 with a rate per hour.
        json.number("time", OptionalDouble.of(r.timeS() / 3600));
        estimate(r.estimate(), r.interval(), shown);
    }

    private void geometricMean(ComparisonResult.GeometricMean r, boolean shown) throws IOException {
        json.texts("of", r.plan().of());
        estimate(r.estimate(), r.interval(), shown);
    }

    private void estimate(OptionalDouble value, Optional<Interval> interval, boolean shown) throws IOException {
        json.number("estimate", only(value, shown));
        json.interval(interval.filter(i -> shown));
        json.number("confidence", interval.filter(i -> shown).map(i -> CONFIDENCE));
    }

    private static OptionalDouble only(OptionalDouble value, boolean shown) {
        return shown ? value : OptionalDouble.empty();
    }
}
