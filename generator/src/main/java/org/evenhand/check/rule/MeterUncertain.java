package org.evenhand.check.rule;

import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.LogFacts.ColumnFacts;
import org.evenhand.model.Instrument;
import org.evenhand.model.Method;
import org.evenhand.model.Origin;
import org.evenhand.model.Place;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.quantity.Accuracy;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** A power meter is good enough for what it reads. Source of the default limits: IEC 62301:2011, 4.4. */
public final class MeterUncertain implements Rule {

    private static final String STEPS_ORIGIN = "iec-62301-meter";

    /** Room for a limit that is met exactly. */
    private static final double ROUNDING = 1 + 1e-9;

    private static final RuleFacts FACTS =
            RuleFacts.of("meter-uncertain", Group.POWER, Severity.CAVEAT).withLimit("2 %", "iec-62301-meter");

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            if (run.run().origin() != Origin.MEASURED) {
                continue; // somebody else's figure, whose meter is not known here
            }
            Method method = study.method(run.run());
            for (Parts.Source source : Parts.ofPower(method, Parts.shown(study, run.run()))) {
                Optional<Instrument> instrument = study.instrument(run.run(), source.name());
                if (instrument.isPresent()) {
                    check(study, run, source, instrument.get(), report);
                } else {
                    report.at(run.run().places().of("instruments"), study.subject(run))
                            .notCheckable(
                                    "instruments/" + source.name(),
                                    report.say("rules-power.meter-uncertain.give", source.name()));
                }
            }
        }
    }

    private static void check(
            StudyView study, LevelRun run, Parts.Source source, Instrument instrument, Report report) {
        OptionalDouble value = value(run, source);
        if (value.isEmpty() || value.getAsDouble() == 0) {
            return;
        }
        Place place = run.run().places().of("instruments/" + source.name());
        if (instrument.accuracy().isEmpty()) {
            report.at(
                            instrument.places().of("instrument"),
                            Subject.study(study.study().id()))
                    .notCheckable("accuracy", report.say("rules-power.meter-uncertain.give-2"));
        } else {
            checkAccuracy(study, run, source, instrument, value.getAsDouble(), report);
        }
        if (!source.unit().dimension().equals(Parts.WATT.dimension())) {
            return;
        }
        if (instrument.resolution().isEmpty()) {
            report.at(
                            instrument.places().of("instrument"),
                            Subject.study(study.study().id()))
                    .notCheckable("resolution", report.say("rules-power.meter-uncertain.give-3"));
        } else if (instrument.resolution().get().unit().dimension().equals(Parts.WATT.dimension())) {
            double powerW =
                    Math.abs(source.unit().differenceTo(Parts.WATT).fast().apply(value.getAsDouble()));
            double stepW = instrument.resolution().get().differenceIn(Parts.WATT);
            double finestW = powerW <= 10 ? 0.01 : powerW <= 100 ? 0.1 : 1;
            if (stepW > finestW * ROUNDING) {
                report.at(place, study.subject(run).on(Reach.of(study, run, source.name())))
                        .against(report.limit(Report.number(finestW) + " W", STEPS_ORIGIN))
                        .meaning(report.say("rules-power.meter-uncertain.meaning"))
                        .found(
                                report.say(
                                        "rules-power.meter-uncertain.found",
                                        instrument.id(),
                                        instrument.resolution().get(),
                                        powerW),
                                report.say("rules-power.meter-uncertain.remedy"));
            }
        }
    }

    private static void checkAccuracy(
            StudyView study, LevelRun run, Parts.Source source, Instrument instrument, double value, Report report) {
        Accuracy accuracy = instrument.accuracy().orElseThrow();
        Optional<Quantity> fixed = accuracy.fixed();
        if (fixed.isPresent()
                && !fixed.get().unit().dimension().equals(source.unit().dimension())) {
            return; // measuring tells of it
        }
        double error = accuracy.ofReading().doubleValue() * Math.abs(value)
                + fixed.map(f -> f.differenceIn(source.unit())).orElse(0.0);
        Report.Applied limit = report.limit(study.method(run.run()), Unit.ONE);
        double allowed = limit.value() * Math.abs(value);
        if (source.unit().dimension().equals(Parts.WATT.dimension())) {
            double unitW = source.unit().differenceTo(Parts.WATT).fast().apply(1);
            // Below half a watt the standard asks for 10 mW, whatever part of the power that is.
            allowed = Math.abs(value) * unitW < 0.5 ? Math.max(allowed, 0.01 / unitW) : allowed;
        }
        if (error > allowed * ROUNDING) {
            report.at(
                            run.run().places().of("instruments/" + source.name()),
                            study.subject(run).on(Reach.of(study, run, source.name())))
                    .against(limit.limit())
                    .meaning(report.say("rules-power.meter-uncertain.meaning-2"))
                    .found(
                            report.say(
                                    "rules-power.meter-uncertain.found-2",
                                    instrument.id(),
                                    100 * error / Math.abs(value),
                                    value,
                                    source.unit().symbol()),
                            report.say("rules-power.meter-uncertain.remedy-2"));
        }
    }

    private static OptionalDouble value(LevelRun run, Parts.Source source) {
        Optional<ColumnFacts> column = Stated.column(run, source.name());
        return column.isPresent()
                ? OptionalDouble.of(column.get().mean())
                : Stated.reading(run.run(), source.name(), source.unit());
    }
}
