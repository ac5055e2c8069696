package org.evenhand.page.answer;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.Verdict;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Comparison;
import org.evenhand.model.Finding;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Severity;
import org.evenhand.page.words.LevelFigures;
import org.evenhand.page.words.RunValues;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.Interval;
import org.evenhand.words.Words;

/** The tables of a page as CSV, at full precision; the column "written" has the figure as the page writes it. */
final class EvidenceTables {

    private EvidenceTables() {}

    static byte[] levels(Answer answer) {
        Csv csv = Csv.withHeader(
                "level",
                "measurand",
                "unit",
                "n",
                "counts",
                "censored",
                "mean",
                "standard-deviation",
                "low",
                "high",
                "confidence",
                "type-a",
                "type-b",
                "median",
                "median-low",
                "median-high",
                "written",
                "origin",
                "runs",
                "caveats");
        for (LevelSummary s : answer.evidence().summaries()) {
            csv.text(s.level())
                    .text(answer.names().address(s.measurand()))
                    .text(s.unit().symbol());
            csv.number(s.n()).text(s.counts().word()).number(s.censored());
            csv.number(s.mean()).number(s.standardDeviation());
            csv.number(s.interval().map(Interval::low)).number(s.interval().map(Interval::high));
            csv.number(s.interval().map(i -> LevelSummary.CONFIDENCE));
            csv.number(s.estimate().map(Estimate::typeA)).number(typeB(s));
            csv.number(s.median());
            csv.number(s.medianInterval().map(Interval::low))
                    .number(s.medianInterval().map(Interval::high));
            csv.text(LevelFigures.label(s, Words.english())).text(answer.origin(answer.behind(s)));
            csv.text(String.join(" ", s.runs())).text(String.join(" ", answer.rules(s)));
            csv.end();
        }
        return csv.bytes();
    }

    /** What the instruments contribute exists for a single run as well. */
    static OptionalDouble typeB(LevelSummary summary) {
        return summary.mean().isPresent()
                ? OptionalDouble.of(summary.contributions().combined())
                : OptionalDouble.empty();
    }

    static byte[] comparisons(Answer answer) {
        Csv csv = Csv.withHeader(
                "id",
                "as",
                "measurand",
                "unit",
                "level",
                "against",
                "estimate",
                "low",
                "high",
                "confidence",
                "degrees-of-freedom",
                "p",
                "p-adjusted",
                "verdict",
                "written",
                "n",
                "caveats");
        for (ComparisonResult r : answer.evidence().comparisons()) {
            Comparison plan = r.plan();
            boolean refused = answer.isRefused(r);
            Numbers numbers = refused ? Numbers.NONE : Numbers.of(r);
            csv.text(plan.id()).text(plan.kind().word());
            csv.text(plan.measurand().map(answer.names()::address)).text(numbers.unit());
            csv.text(plan.level()).text(plan.against());
            csv.number(numbers.estimate()).number(numbers.low()).number(numbers.high());
            csv.number(numbers.confidence()).number(numbers.degreesOfFreedom());
            csv.number(refused ? OptionalDouble.empty() : r.p());
            csv.number(refused ? OptionalDouble.empty() : r.pAdjusted());
            csv.text(answer.verdict(r).map(Verdict::word)).text(answer.sentence(r));
            csv.text(Quotable.n(answer, r)).text(String.join(" ", answer.rules(r)));
            csv.end();
        }
        return csv.bytes();
    }

    static byte[] runs(Answer answer) {
        Csv csv = Csv.withHeader(
                "run",
                "study",
                "level",
                "item",
                "specimen",
                "started",
                "outcome",
                "origin",
                "measurand",
                "unit",
                "value",
                "censored",
                "standard-uncertainty",
                "written",
                "caveats");
        for (LevelRun run : answer.evidence().runs()) {
            for (MeasurandId id : answer.study().measurands()) {
                run.value(id).ifPresent(value -> runRow(csv, answer, run, id, value));
            }
        }
        return csv.bytes();
    }

    private static void runRow(Csv csv, Answer answer, LevelRun run, MeasurandId id, RunValue value) {
        csv.text(run.run().id()).text(run.run().study()).text(run.level());
        csv.text(run.run().item()).text(run.run().specimen());
        csv.text(run.run().started().map(Runs::stamp)).text(Runs.outcome(run.run()));
        csv.text(Runs.origin(run.run())).text(answer.names().address(id));
        csv.text(answer.names().measurand(id).unit().symbol());
        if (value instanceof RunValue.Known known) {
            csv.number(known.value()).text("no").number(known.standardUncertainty());
        } else if (value instanceof RunValue.AtLeast atLeast) {
            csv.number(atLeast.bound()).text("yes").text("");
        } else {
            csv.text(RunValues.number(value, Words.english())).text("no").text("");
        }
        csv.text(RunValues.number(value, Words.english()));
        csv.text(String.join(" ", Answer.rules(caveats(answer, run)))).end();
    }

    /** What is found of this run alone. */
    static List<Finding> caveats(Answer answer, LevelRun run) {
        return answer.checked().findings().stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .filter(f -> f.outcome() != org.evenhand.model.Outcome.NOT_CHECKABLE)
                .filter(f -> f.subject().run().filter(run.run().id()::equals).isPresent())
                .toList();
    }

    /**
     * What a comparison has for the columns of numbers.
     *
     * @param unit of estimate, low and high
     */
    record Numbers(
            String unit,
            OptionalDouble estimate,
            Optional<Double> low,
            Optional<Double> high,
            OptionalDouble confidence,
            OptionalDouble degreesOfFreedom) {

        static final Numbers NONE = new Numbers(
                "",
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());

        static Numbers of(ComparisonResult result) {
            String unit = result.unit().symbol();
            if (result instanceof ComparisonResult.Contrasted r) {
                return of(unit, r.estimate(), r.interval(), r.degreesOfFreedom());
            }
            if (result instanceof ComparisonResult.Trend r) {
                String slope = unit + " per " + r.factorUnit().symbol();
                return r.line()
                        .map(l -> of(
                                slope,
                                OptionalDouble.of(l.slope().value()),
                                Optional.of(l.slope().interval(LevelSummary.CONFIDENCE)),
                                OptionalDouble.of(l.slope().degreesOfFreedom())))
                        .orElse(NONE);
            }
            if (result instanceof ComparisonResult.Share r) {
                return of(unit, r.estimate(), r.interval(), OptionalDouble.empty());
            }
            if (result instanceof ComparisonResult.FailureRate r) {
                return of(unit, r.estimate(), r.interval(), OptionalDouble.empty());
            }
            if (result instanceof ComparisonResult.GeometricMean r) {
                return of(unit, r.estimate(), r.interval(), OptionalDouble.empty());
            }
            return NONE;
        }

        private static Numbers of(
                String unit, OptionalDouble estimate, Optional<Interval> interval, OptionalDouble freedom) {
            return new Numbers(
                    unit,
                    estimate,
                    interval.map(Interval::low),
                    interval.map(Interval::high),
                    interval.isPresent() ? OptionalDouble.of(LevelSummary.CONFIDENCE) : OptionalDouble.empty(),
                    freedom);
        }
    }
}
