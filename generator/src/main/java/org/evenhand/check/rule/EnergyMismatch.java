package org.evenhand.check.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.LogFacts.ColumnFacts;
import org.evenhand.model.Boundary;
import org.evenhand.model.Instrument;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** An energy that is stated and the power that was logged must tell the same. */
public final class EnergyMismatch implements Rule {

    private static final Unit SECOND = Unit.of("s");

    private static final RuleFacts FACTS =
            RuleFacts.of("energy-mismatch", Group.POWER, Severity.WITHHOLD).withLimit("2 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            for (Measurand stated : study.method(run.run()).measurands().values()) {
                if (isEnergy(stated)) {
                    check(study, run, stated, report);
                }
            }
        }
    }

    /** An energy that was read or counted, not computed of a power. An energy for each piece of work is none of the run. */
    private static boolean isEnergy(Measurand measurand) {
        Reduction reduction = measurand.reduction();
        return measurand.unit().dimension().equals(Parts.JOULE.dimension())
                && !measurand.unit().symbol().contains("/")
                && (reduction instanceof Reduction.Reading
                        || reduction instanceof Reduction.OfColumn of && of.statistic() instanceof Statistic.Increase);
    }

    private static void check(StudyView study, LevelRun run, Measurand stated, Report report) {
        Method method = study.method(run.run());
        OptionalDouble value = run.measured().value(stated.id()).number();
        Optional<Boundary> boundary = boundary(study, run, Parts.source(method, stated));
        if (value.isEmpty()) {
            return;
        }
        double statedJ = stated.unit().to(Parts.JOULE).fast().apply(value.getAsDouble());
        Optional<Computed> computed =
                ofLog(study, run, boundary, report).or(() -> ofReading(study, run, boundary, report));
        if (computed.isEmpty()) {
            return;
        }
        Report.Applied limit = report.limit(method, Unit.ONE);
        double share = Math.abs(statedJ - computed.get().energyJ())
                / Math.abs(computed.get().energyJ());
        if (share > limit.value()) {
            String reading = stated.reduction() instanceof Reduction.Reading r ? "readings/" + r.reading() : "log";
            report.at(run.run().places().of(reading), study.subject(run))
                    .against(limit.limit())
                    .meaning(report.say("rules-power.energy-mismatch.meaning"))
                    .found(
                            report.say(
                                    "rules-power.energy-mismatch.found",
                                    run.run().id(),
                                    statedJ,
                                    computed.get().from(),
                                    computed.get().energyJ()),
                            report.say("rules-power.energy-mismatch.remedy"));
        }
    }

    /**
     * An energy made of power and time.
     *
     * @param from what it was made of, in words
     */
    private record Computed(double energyJ, String from) {}

    /** The integral of the power in the log, if there is one column of power at the same place. */
    private static Optional<Computed> ofLog(StudyView study, LevelRun run, Optional<Boundary> wanted, Report report) {
        List<Computed> all = new ArrayList<>();
        study.method(run.run()).records().forEach((column, unit) -> {
            Optional<ColumnFacts> facts = Stated.column(run, column);
            if (unit.dimension().equals(Parts.WATT.dimension())
                    && facts.isPresent()
                    && fits(wanted, boundary(study, run, Optional.of(new Parts.Source(column, unit))))) {
                double meanW = unit.to(Parts.WATT).fast().apply(facts.get().mean());
                double durationS = run.measured().log().orElseThrow().durationS();
                all.add(new Computed(meanW * durationS, report.say("rules-power.energy-mismatch.integral", column)));
            }
        });
        return all.size() == 1 && all.get(0).energyJ() != 0 ? Optional.of(all.get(0)) : Optional.empty();
    }

    /** The one reading of power at the same place, times the length of the run. */
    private static Optional<Computed> ofReading(
            StudyView study, LevelRun run, Optional<Boundary> wanted, Report report) {
        List<Computed> all = new ArrayList<>();
        Optional<Quantity> length = run.run().length();
        for (Measurand measurand : study.method(run.run()).measurands().values()) {
            OptionalDouble value = run.measured().value(measurand.id()).number();
            if (measurand.reduction() instanceof Reduction.Reading
                    && measurand.unit().dimension().equals(Parts.WATT.dimension())
                    && value.isPresent()
                    && length.isPresent()
                    && fits(wanted, boundary(study, run, Parts.source(study.method(run.run()), measurand)))) {
                double powerW = measurand.unit().to(Parts.WATT).fast().apply(value.getAsDouble());
                all.add(new Computed(
                        powerW * length.get().in(SECOND),
                        report.say("rules-power.energy-mismatch.product", measurand.id())));
            }
        }
        return all.size() == 1 && all.get(0).energyJ() != 0 ? Optional.of(all.get(0)) : Optional.empty();
    }

    private static boolean fits(Optional<Boundary> one, Optional<Boundary> other) {
        return one.isEmpty() || other.isEmpty() || one.equals(other);
    }

    private static Optional<Boundary> boundary(StudyView study, LevelRun run, Optional<Parts.Source> source) {
        return source.flatMap(s -> study.instrument(run.run(), s.name())).flatMap(Instrument::boundary);
    }
}
