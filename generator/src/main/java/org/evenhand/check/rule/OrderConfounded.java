package org.evenhand.check.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Origin;
import org.evenhand.model.Severity;

/** First all of one, then all of the other: what changed meanwhile counts for the difference. Source: T. Mytkowicz et al., ASPLOS 2009. */
public final class OrderConfounded implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("order-confounded", Group.REPEATS, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (StudyView.Sides sides : study.sides()) {
            List<LevelRun> timed = new ArrayList<>();
            for (LevelRun run : sides.runs()) {
                if (run.run().started().isPresent()) {
                    timed.add(run);
                } else if (run.run().origin() == Origin.MEASURED) {
                    report.at(run.run().places().of("run"), study.subject(run))
                            .notCheckable("started", report.say("rules-repeats.order-confounded.give"));
                }
            }
            timed.sort(Comparator.comparing(
                            (LevelRun r) -> r.run().started().orElseThrow().toInstant())
                    .thenComparing(r -> r.run().id()));
            check(study, sides, timed, report);
        }
    }

    private static void check(StudyView study, StudyView.Sides sides, List<LevelRun> inOrder, Report report) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        int changes = 0;
        String last = null;
        for (LevelRun run : inOrder) {
            changes += last != null && !last.equals(run.level()) ? 1 : 0;
            last = run.level();
            counts.merge(last, 1, Integer::sum);
        }
        boolean blocks = counts.size() >= 2 && changes == counts.size() - 1;
        // Single runs cannot take turns; that there is one only is another finding.
        if (blocks && counts.values().stream().allMatch(n -> n >= 2)) {
            report.at(study.place(sides), study.subject(sides))
                    .meaning(report.say(
                            "rules-repeats.order-confounded.meaning",
                            study.study().factor()))
                    .found(
                            report.say(
                                    "rules-repeats.order-confounded.found",
                                    counts.entrySet().stream()
                                            .map(e -> e.getValue() + " × " + e.getKey())
                                            .collect(Collectors.joining(", then "))),
                            report.say("rules-repeats.order-confounded.remedy"));
        }
    }
}
