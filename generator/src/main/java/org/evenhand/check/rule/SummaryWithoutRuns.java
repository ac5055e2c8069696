package org.evenhand.check.rule;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Place;
import org.evenhand.model.Severity;
import org.evenhand.model.Study;
import org.evenhand.quantity.Quantity;

/** A figure that is stated can be computed again from its runs. Source: ISO/IEC 17025:2017, 7.11.6. */
public final class SummaryWithoutRuns implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("summary-without-runs", Group.RECORD, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        List<Study.StatedFigure> stated = study.study().stated();
        for (int i = 0; i < stated.size(); i++) {
            fault(study, stated.get(i), study.study().places().of("stated/" + i + "/mean"), report);
        }
    }

    private static void fault(StudyView study, Study.StatedFigure stated, Place place, Report report) {
        Optional<LevelSummary> summary = study.evidence().summary(stated.level(), stated.measurand());
        String what = report.say(
                "rules-record.summary-without-runs.stated",
                study.measurand(stated.measurand()).title(),
                stated.level(),
                stated.mean());
        boolean hasRuns = study.countingRuns().stream()
                .anyMatch(r -> r.level().equals(stated.level())
                        && r.value(stated.measurand()).isPresent());
        if (!hasRuns) {
            report.at(place, study.subject())
                    .meaning(report.say("rules-record.summary-without-runs.meaning"))
                    .found(
                            report.say("rules-record.summary-without-runs.found", what),
                            report.say("rules-record.summary-without-runs.remedy"));
        } else if (summary.isEmpty() || summary.get().mean().isEmpty()) {
            report.at(place, study.subject())
                    .meaning(report.say("rules-record.summary-without-runs.meaning"))
                    .found(
                            report.say(
                                    "rules-record.summary-without-runs.found-2",
                                    what,
                                    isCensored(summary)
                                            ? report.say("rules-record.summary-without-runs.found-part")
                                            : ""),
                            report.say("rules-record.summary-without-runs.remedy-2"));
        } else {
            LevelSummary found = summary.get();
            double computed = found.mean().getAsDouble();
            // Half a unit of the last digit that is written, and a hair for the conversion of units.
            double half = new Quantity(
                                    BigDecimal.ONE.movePointLeft(
                                            stated.mean().value().scale()),
                                    Optional.empty(),
                                    stated.mean().unit())
                            .differenceIn(found.unit())
                    / 2;
            if (Math.abs(stated.mean().in(found.unit()) - computed) <= Math.abs(half) * (1 + 1e-9)) {
                return;
            }
            report.at(place, study.subject())
                    .meaning(report.say("rules-record.summary-without-runs.meaning-2"))
                    .found(
                            report.say(
                                    "rules-record.summary-without-runs.found-3",
                                    what,
                                    found.runs().size(),
                                    computed,
                                    found.unit().symbol()),
                            report.say("rules-record.summary-without-runs.remedy-3"));
        }
    }

    private static boolean isCensored(Optional<LevelSummary> summary) {
        return summary.map(s -> s.censored() > 0).orElse(false);
    }
}
