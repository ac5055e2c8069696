package org.evenhand.check.rule;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.LogFacts.ColumnFacts;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Instrument;
import org.evenhand.model.Measurand;
import org.evenhand.model.Reduction;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Dimension;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/**
 * What cannot be was misread, mislabelled or mixed up. Limits: common practice; that nothing that takes power settles below
 * its surroundings is the second law of thermodynamics.
 */
public final class Implausible implements Rule {

    private static final Unit WATT = Unit.of("W");
    private static final Dimension ENERGY = Unit.of("J").dimension();
    private static final double BEYOND_LIMIT_K = 50;
    private static final double TIMES_RATING = 2;
    private static final double COVERAGE = 2;

    private static final RuleFacts FACTS =
            RuleFacts.of("implausible", Group.SURROUNDINGS, Severity.WITHHOLD).withLimit("1 K", "limits-of-error");

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            TreeSet<String> columns = new TreeSet<>();
            for (Measurand measurand : Shown.of(study, run)) {
                if (measurand.reduction() instanceof Reduction.OfColumn of) {
                    columns.add(of.column());
                }
                if (measurand.reduction().parts().isEmpty()) {
                    power(study, run, measurand, report);
                }
            }
            columns.retainAll(Heat.columns(study.method(run.run())));
            for (String column : columns) {
                belowAmbient(study, run, column, report);
                aboveLimit(study, run, column, report);
            }
        }
    }

    /** In the second half of the run, when whatever it was before has died away. */
    private static void belowAmbient(StudyView study, LevelRun run, String column, Report report) {
        Optional<Course> course = Course.of(study, run, column, Ambient.CELSIUS);
        if (course.isEmpty() || isOff(study, run)) {
            return;
        }
        double toS = course.get().lastS();
        double fromS = (course.get().firstS() + toS) / 2;
        OptionalDouble itself = course.get().mean(fromS, toS);
        OptionalDouble logged =
                Ambient.course(study, run).map(c -> c.mean(fromS, toS)).orElse(OptionalDouble.empty());
        OptionalDouble ambient = logged.isPresent() ? logged : Ambient.stated(run);
        Report.Applied limit = report.limit(study.method(run.run()), Heat.KELVIN);
        double errors = errorK(study, run, column) + errorK(study, run, Ambient.COLUMN);
        boolean below = itself.isPresent()
                && ambient.isPresent()
                && itself.getAsDouble() < ambient.getAsDouble() - limit.value() - errors;
        if (!below) {
            return;
        }
        report.at(run.run().places().of("log"), study.subject(run))
                .against(limit.limit())
                .meaning(report.say("rules-surroundings.implausible.meaning"))
                .found(
                        report.say(
                                "rules-surroundings.implausible.found",
                                column,
                                itself.getAsDouble(),
                                run.run().id(),
                                ambient.getAsDouble()),
                        report.say("rules-surroundings.implausible.remedy"));
    }

    private static void aboveLimit(StudyView study, LevelRun run, String column, Report report) {
        Quantity most = study.item(run.run()).limits().get("temperature");
        Optional<Course> course = Course.of(study, run, column, Ambient.CELSIUS);
        if (most == null || !most.unit().convertsTo(Ambient.CELSIUS) || course.isEmpty()) {
            return;
        }
        double highest = course.get().highest();
        if (highest <= most.in(Ambient.CELSIUS) + BEYOND_LIMIT_K) {
            return;
        }
        report.at(run.run().places().of("log"), study.subject(run))
                .against(report.limit(report.say("rule-origin.and-more", most.toString()), RuleFacts.COMMON_PRACTICE))
                .meaning(report.say("rules-surroundings.implausible.meaning-2"))
                .found(
                        report.say(
                                "rules-surroundings.implausible.found-2",
                                column,
                                highest,
                                run.run().id(),
                                most),
                        report.say("rules-surroundings.implausible.remedy-2"));
    }

    private static void power(StudyView study, LevelRun run, Measurand measurand, Report report) {
        boolean power = measurand.unit().dimension().equals(WATT.dimension());
        boolean energy = measurand.unit().dimension().equals(ENERGY);
        if (!(run.measured().value(measurand.id()) instanceof RunValue.Known known) || !(power || energy)) {
            return;
        }
        String field =
                measurand.reduction() instanceof Reduction.Reading reading ? "readings/" + reading.reading() : "log";
        String written = report.words().number(Report.number(known.value())) + " "
                + known.unit().symbol();
        Report.Draft draft = report.at(run.run().places().of(field), study.subject(run));
        if (known.value() < -COVERAGE * known.standardUncertainty()) {
            draft.against(report.limit("0 " + known.unit().symbol(), "energy-taken"))
                    .meaning(report.say("rules-surroundings.implausible.meaning-3"))
                    .found(
                            report.say(
                                    "rules-surroundings.implausible.found-3",
                                    measurand.title(),
                                    written,
                                    run.run().id()),
                            report.say("rules-surroundings.implausible.remedy-3"));
            return;
        }
        Optional<Double> ratingW = power ? ratingW(study, run) : Optional.empty();
        if (ratingW.isPresent() && known.unit().to(WATT).fast().apply(known.value()) > TIMES_RATING * ratingW.get()) {
            draft.against(report.limit(
                            report.say("rule-origin.twice", Report.number(ratingW.get()) + " W"),
                            RuleFacts.COMMON_PRACTICE))
                    .meaning(report.say("rules-surroundings.implausible.meaning-4"))
                    .found(
                            report.say(
                                    "rules-surroundings.implausible.found-4",
                                    measurand.title(),
                                    written,
                                    run.run().id(),
                                    ratingW.get()),
                            report.say("rules-surroundings.implausible.remedy-4"));
        }
    }

    /** What the maker states for the item's supply, in W. */
    private static Optional<Double> ratingW(StudyView study, LevelRun run) {
        var limits = study.item(run.run()).limits();
        Quantity power = limits.get("supply-power");
        Quantity voltage = limits.get("supply-voltage");
        Quantity current = limits.get("supply-current");
        Unit volt = Unit.of("V");
        Unit ampere = Unit.of("A");
        if (power != null && power.unit().convertsTo(WATT)) {
            return Optional.of(power.in(WATT));
        }
        boolean both = voltage != null
                && current != null
                && voltage.unit().convertsTo(volt)
                && current.unit().convertsTo(ampere);
        return both ? Optional.of(voltage.in(volt) * current.in(ampere)) : Optional.empty();
    }

    /** Whether power was logged, and none was taken. */
    private static boolean isOff(StudyView study, LevelRun run) {
        return study.method(run.run()).records().entrySet().stream()
                .filter(e -> e.getValue().convertsTo(WATT))
                .map(e -> Ambient.facts(run, e.getKey()).map(ColumnFacts::highest))
                .flatMap(Optional::stream)
                .anyMatch(highest -> highest <= 0);
    }

    private static double errorK(StudyView study, LevelRun run, String column) {
        return study.instrument(run.run(), column)
                .flatMap(Instrument::accuracy)
                .flatMap(a -> a.fixed())
                .filter(fixed -> Heat.isUnit(fixed.unit()))
                .map(fixed -> fixed.differenceIn(Heat.KELVIN))
                .orElse(0.0);
    }
}
