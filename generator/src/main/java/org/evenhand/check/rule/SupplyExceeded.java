package org.evenhand.check.rule;

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
import org.evenhand.model.Item;
import org.evenhand.model.Measurand;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.quantity.Unit;

/** A supply is not asked for more than it is rated for. */
public final class SupplyExceeded implements Rule {

    private static final Unit VOLT = Unit.of("V");
    private static final Unit AMPERE = Unit.of("A");

    private static final RuleFacts FACTS = RuleFacts.of("supply-exceeded", Group.POWER, Severity.WITHHOLD)
            .withLimit("90 %", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            for (Parts.Source source : Parts.ofPower(study.method(run.run()), all(study, run))) {
                OptionalDouble peak = peakW(run, source);
                boolean atMains = study.instrument(run.run(), source.name())
                        .flatMap(Instrument::boundary)
                        .filter(Boundary.MAINS::equals)
                        .isPresent();
                // At the mains the supply's own losses are counted, which its rating leaves out.
                if (peak.isPresent() && !atMains) {
                    check(study, run, source, peak.getAsDouble(), report);
                }
            }
        }
    }

    /** All of the method: a supply is exceeded whether or not somebody asks for the power. */
    private static List<Measurand> all(StudyView study, LevelRun run) {
        return List.copyOf(study.method(run.run()).measurands().values());
    }

    private static void check(StudyView study, LevelRun run, Parts.Source source, double peakW, Report report) {
        Item supply = study.supply(run.run()).orElse(study.item(run.run()));
        OptionalDouble rating = ratingW(supply);
        if (rating.isEmpty()) {
            report.at(supply.places().of("limits"), Subject.study(study.study().id()))
                    .notCheckable("limits/supply-power", report.say("rules-power.supply-exceeded.give", supply.name()));
            return;
        }
        Report.Applied limit = report.limit(study.method(run.run()), Unit.ONE);
        boolean exceeded = peakW > rating.getAsDouble();
        if (exceeded || peakW > limit.value() * rating.getAsDouble()) {
            report.at(run.run().places().of("instruments/" + source.name()), study.subject(run))
                    .as(exceeded ? Severity.WITHHOLD : Severity.CAVEAT)
                    .against(limit.limit())
                    .meaning(
                            exceeded
                                    ? report.say("rules-power.supply-exceeded.meaning")
                                    : report.say("rules-power.supply-exceeded.meaning-2"))
                    .found(
                            report.say("rules-power.supply-exceeded.found", peakW, rating.getAsDouble()),
                            report.say("rules-power.supply-exceeded.remedy"));
        }
    }

    private static OptionalDouble peakW(LevelRun run, Parts.Source source) {
        if (!source.unit().dimension().equals(Parts.WATT.dimension())) {
            return OptionalDouble.empty();
        }
        Optional<ColumnFacts> column = Stated.column(run, source.name());
        return column.isPresent()
                ? OptionalDouble.of(
                        source.unit().to(Parts.WATT).fast().apply(column.get().highest()))
                : Stated.reading(run.run(), source.name(), Parts.WATT);
    }

    private static OptionalDouble ratingW(Item supply) {
        OptionalDouble power = Stated.limit(supply, "supply-power", Parts.WATT);
        OptionalDouble voltage = Stated.limit(supply, "supply-voltage", VOLT);
        OptionalDouble current = Stated.limit(supply, "supply-current", AMPERE);
        return power.isPresent() || voltage.isEmpty() || current.isEmpty()
                ? power
                : OptionalDouble.of(voltage.getAsDouble() * current.getAsDouble());
    }
}
