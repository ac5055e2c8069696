package org.evenhand.check.rule;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.LogFacts;
import org.evenhand.measure.LogFacts.ColumnFacts;
import org.evenhand.model.Instrument;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;

/** A sensor at the end of its range, or one that does not move, no longer measures. Limits: common practice. */
public final class SensorStuck implements Rule {

    private static final long AT_LIMIT = 3;
    private static final long EQUAL = 20;

    /** By how much the load changes from one half of a stretch to the other when a sensor ought to follow. */
    private static final double LOAD_CHANGE = 0.1;

    private static final Unit WATT = Unit.of("W");
    private static final Unit HERTZ = Unit.of("Hz");

    private static final RuleFacts FACTS = RuleFacts.of("sensor-stuck", Group.SURROUNDINGS, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            Map<String, Unit> records = study.method(run.run()).records();
            for (Map.Entry<String, Unit> column : records.entrySet()) {
                Optional<ColumnFacts> facts =
                        run.measured().log().map(LogFacts::columns).map(columns -> columns.get(column.getKey()));
                if (facts.isPresent()) {
                    clipped(study, run, column.getKey(), column.getValue(), facts.get(), report);
                    flat(study, run, column.getKey(), facts.get(), report);
                }
            }
        }
    }

    private static void clipped(
            StudyView study, LevelRun run, String column, Unit unit, ColumnFacts facts, Report report) {
        Optional<Instrument.Range> range = study.instrument(run.run(), column).flatMap(Instrument::range);
        if (range.isEmpty() || !range.get().highest().unit().convertsTo(unit)) {
            return;
        }
        double least = range.get().lowest().in(unit);
        double most = range.get().highest().in(unit);
        boolean above = facts.longestAtHighest() >= AT_LIMIT && facts.highest() >= most;
        // What takes nothing is at zero, and not clipped.
        boolean below = facts.longestAtLowest() >= AT_LIMIT && facts.lowest() <= least && least != 0;
        if (!above && !below) {
            return;
        }
        double value = above ? facts.highest() : facts.lowest();
        long samples = above ? facts.longestAtHighest() : facts.longestAtLowest();
        report.at(run.run().places().of("log"), study.subject(run))
                .against(report.limit(report.say("rule-origin.few-at-end", AT_LIMIT), RuleFacts.COMMON_PRACTICE))
                .meaning(report.say(
                        "rules-surroundings.sensor-stuck.meaning",
                        above
                                ? report.say("rules-surroundings.sensor-stuck.meaning-part")
                                : report.say("rules-surroundings.sensor-stuck.meaning-part-2")))
                .found(
                        report.say(
                                "rules-surroundings.sensor-stuck.found",
                                column,
                                value,
                                unit.symbol(),
                                samples,
                                run.run().id()),
                        report.say("rules-surroundings.sensor-stuck.remedy"));
    }

    private static void flat(StudyView study, LevelRun run, String column, ColumnFacts facts, Report report) {
        if (facts.longestConstant() < EQUAL || !loadChanges(study, run, column, facts)) {
            return;
        }
        report.at(run.run().places().of("log"), study.subject(run))
                .against(report.limit(report.say("rule-origin.few-equal", EQUAL), RuleFacts.COMMON_PRACTICE))
                .meaning(report.say("rules-surroundings.sensor-stuck.meaning-2"))
                .found(
                        report.say(
                                "rules-surroundings.sensor-stuck.found-2",
                                column,
                                facts.longestConstant(),
                                run.run().id(),
                                facts.longestConstantFromS()),
                        report.say("rules-surroundings.sensor-stuck.remedy-2"));
    }

    /** A temperature ought to follow power, or else the clock; power ought to follow the clock. */
    private static boolean loadChanges(StudyView study, LevelRun run, String column, ColumnFacts facts) {
        Map<String, Unit> records = study.method(run.run()).records();
        boolean temperature = Heat.columns(study.method(run.run())).contains(column);
        boolean power = records.get(column).convertsTo(WATT);
        boolean powerLogged = records.entrySet().stream()
                .anyMatch(e -> e.getValue().convertsTo(WATT)
                        && Ambient.facts(run, e.getKey()).isPresent());
        return (temperature || power) && changes(study, run, temperature && powerLogged ? WATT : HERTZ, facts);
    }

    private static boolean changes(StudyView study, LevelRun run, Unit load, ColumnFacts flat) {
        double middleS = (flat.longestConstantFromS() + flat.longestConstantToS()) / 2;
        for (Map.Entry<String, Unit> column : study.method(run.run()).records().entrySet()) {
            Optional<Course> course = column.getValue().convertsTo(load)
                    ? Course.of(study, run, column.getKey(), load)
                    : Optional.empty();
            if (course.isPresent()) {
                OptionalDouble before = course.get().mean(flat.longestConstantFromS(), middleS);
                OptionalDouble after = course.get().mean(middleS, flat.longestConstantToS());
                boolean known = before.isPresent() && after.isPresent();
                if (known && differ(before.getAsDouble(), after.getAsDouble())) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean differ(double before, double after) {
        return Math.abs(after - before) > LOAD_CHANGE * Math.max(Math.abs(before), Math.abs(after));
    }
}
