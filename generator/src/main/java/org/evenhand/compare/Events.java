package org.evenhand.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Comparison;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Reading;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Interval;
import org.evenhand.statistics.KaplanMeier;
import org.evenhand.statistics.LogRank;
import org.evenhand.statistics.PoissonRate;
import org.evenhand.statistics.Proportion;
import org.evenhand.words.Words;

/** Comparisons and estimates of things that happen or do not: times until, shares, failure rates. */
final class Events {

    private static final double CONFIDENCE = 0.95;
    private static final Unit SECOND = Unit.of("s");
    private static final Unit PER_HOUR = Unit.of("1/h");
    private static final double SECONDS_PER_HOUR = 3600;

    private Events() {}

    static ComparisonResult.Survival survival(Comparison plan, Measurand measurand, List<LevelRun> runs, Words words) {
        MeasurandId id = plan.measurand().orElseThrow();
        Reasons why = new Reasons(words);
        List<ComparisonResult.Curve> curves = new ArrayList<>();
        List<LevelValues> sides = new ArrayList<>();
        for (String level : List.of(plan.level().orElseThrow(), plan.against().orElseThrow())) {
            LevelValues values = LevelValues.of(runs, level, id);
            if (values.isEmpty()) {
                why.add("compare.no-value", level);
            } else {
                sides.add(values);
                curves.add(new ComparisonResult.Curve(level, values.counts(), KaplanMeier.of(values.times())));
            }
        }
        Optional<LogRank> test = sides.size() == 2
                ? LogRank.of(sides.stream().map(LevelValues::times).toList())
                : Optional.empty();
        if (sides.size() == 2 && test.isEmpty()) {
            why.add("compare.no-event");
        }
        OptionalDouble p = test.map(t -> t.pExact().isPresent() ? t.pExact() : OptionalDouble.of(t.pAsymptotic()))
                .orElse(OptionalDouble.empty());
        return new ComparisonResult.Survival(
                plan,
                measurand.unit(),
                Optional.of(Verdict.NOT_SHOWN),
                why.list(),
                List.copyOf(curves),
                test,
                p,
                OptionalDouble.empty());
    }

    /** A specimen with several runs succeeds if every one of them says yes; "partly" is no success. */
    static ComparisonResult.Share share(Comparison plan, List<LevelRun> runs, Words words) {
        MeasurandId id = plan.measurand().orElseThrow();
        String level = plan.level().orElseThrow();
        Map<String, Boolean> bySpecimen = new LinkedHashMap<>();
        boolean named = true;
        for (LevelRun run : runs) {
            if (run.level().equals(level)
                    && run.run().counts()
                    && run.value(id).orElse(null) instanceof RunValue.Noted noted) {
                named &= run.run().specimen().isPresent();
                boolean success = noted.reading() == Reading.Observed.YES;
                String key = run.run().specimen().isPresent()
                        ? run.specimen()
                        : run.run().id();
                bySpecimen.merge(key, success, Boolean::logicalAnd);
            }
        }
        int n = bySpecimen.size();
        int successes = (int) bySpecimen.values().stream().filter(s -> s).count();
        List<String> why = n == 0 ? List.of(words.say("compare.no-reading", level)) : List.of();
        Optional<Proportion> proportion = n == 0 ? Optional.empty() : Optional.of(new Proportion(successes, n));
        return new ComparisonResult.Share(
                plan,
                Unit.ONE,
                why,
                successes,
                n,
                named ? Counts.SPECIMENS : Counts.RUNS,
                proportion.isPresent() ? OptionalDouble.of(proportion.get().share()) : OptionalDouble.empty(),
                proportion.map(s -> s.interval(CONFIDENCE)));
    }

    static ComparisonResult.FailureRate failureRate(Comparison plan, List<LevelRun> runs, Words words) {
        MeasurandId id = plan.measurand().orElseThrow();
        String level = plan.level().orElseThrow();
        double events = 0;
        double timeS = 0;
        int untimed = 0;
        for (LevelRun run : runs) {
            if (!run.level().equals(level)
                    || !run.run().counts()
                    || !(run.value(id).orElse(null) instanceof RunValue.Known known)) {
                continue;
            }
            OptionalDouble length = lengthS(run);
            if (length.isPresent()) {
                events += known.value();
                timeS += length.getAsDouble();
            } else {
                untimed++;
            }
        }
        Reasons why = new Reasons(words);
        if (untimed > 0) {
            why.add("compare.no-length", untimed);
        }
        if (!(timeS > 0)) {
            why.add("compare.no-time", level);
            return new ComparisonResult.FailureRate(
                    plan, PER_HOUR, why.list(), 0, 0, OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty());
        }
        PoissonRate rate = new PoissonRate((int) Math.round(events), timeS / SECONDS_PER_HOUR);
        Interval interval =
                rate.events() == 0 ? new Interval(0, rate.upperBound(CONFIDENCE)) : rate.interval(CONFIDENCE);
        Optional<Quantity> duration = plan.duration();
        return new ComparisonResult.FailureRate(
                plan,
                PER_HOUR,
                why.list(),
                rate.events(),
                timeS,
                OptionalDouble.of(rate.rate()),
                Optional.of(interval),
                duration.isPresent()
                        ? OptionalDouble.of(
                                rate.chanceOfNoEvent(duration.get().in(SECOND) / SECONDS_PER_HOUR, CONFIDENCE))
                        : OptionalDouble.empty());
    }

    /** The stated length, or how long the log is. */
    private static OptionalDouble lengthS(LevelRun run) {
        return run.run().length().isPresent()
                ? OptionalDouble.of(run.run().length().get().in(SECOND))
                : run.measured()
                        .log()
                        .map(f -> OptionalDouble.of(f.durationS()))
                        .orElse(OptionalDouble.empty());
    }
}
