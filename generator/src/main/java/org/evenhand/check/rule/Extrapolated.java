package org.evenhand.check.rule;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Severity;
import org.evenhand.prose.Mention;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** What was found between the lowest and the highest level says nothing of what lies beyond. */
public final class Extrapolated implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("extrapolated", Group.PROSE, Severity.CAVEAT);

    /** A value on the edge may be written more coarsely than it was set. */
    private static final double ROUNDING = 0.005;

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        List<Quantity> tested = new ArrayList<>();
        for (LevelRun run : study.countingRuns()) {
            try {
                Quantity level = Quantity.parse(run.level());
                if (tested.isEmpty() || level.unit().convertsTo(tested.get(0).unit())) {
                    tested.add(level);
                }
            } catch (MisreadException e) {
                return; // the factor is no quantity, so that nothing lies beyond it
            }
        }
        if (tested.stream().map(Quantity::value).distinct().count() < 2) {
            return;
        }
        Unit unit = tested.get(0).unit();
        double lowest = tested.stream().mapToDouble(q -> q.in(unit)).min().orElseThrow();
        double highest = tested.stream().mapToDouble(q -> q.in(unit)).max().orElseThrow();
        double slack = ROUNDING * Math.max(Math.abs(lowest), Math.abs(highest));
        for (Mention mention : study.texts().mentions()) {
            if (!mention.unit().convertsTo(unit)) {
                continue;
            }
            double value = mention.unit().to(unit).apply(mention.value());
            if (value < lowest - slack || value > highest + slack) {
                report.at(mention.place(), study.subject())
                        .against(report.limit(
                                report.say(
                                        "figure.range",
                                        Report.number(lowest),
                                        Report.number(highest) + " " + unit.symbol()),
                                "range-tested"))
                        .meaning(report.say("rules-prose.extrapolated.meaning"))
                        .found(
                                report.say(
                                        "rules-prose.extrapolated.found",
                                        mention.written(),
                                        study.study().factor(),
                                        lowest,
                                        highest,
                                        unit.symbol()),
                                report.say("rules-prose.extrapolated.remedy"));
            }
        }
    }
}
