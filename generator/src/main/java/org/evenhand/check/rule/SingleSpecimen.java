package org.evenhand.check.rule;

import java.util.Set;
import java.util.TreeSet;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Item;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;

/** One specimen does not speak for its kind. Source: ISO/IEC 17025:2017, 7.8.2.1 l. */
public final class SingleSpecimen implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("single-specimen", Group.RECORD, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        if (study.study().factor().equals("specimen")) {
            return; // then each specimen speaks for itself, by design
        }
        Set<String> items = new TreeSet<>();
        study.countingRuns().forEach(r -> items.add(r.run().item()));
        for (String id : items) {
            Set<String> specimens = new TreeSet<>();
            LevelRun first = null;
            for (LevelRun run : study.countingRuns()) {
                if (run.run().item().equals(id)) {
                    first = first == null ? run : first;
                    specimens.add(run.run().specimen().orElse(""));
                }
            }
            if (specimens.size() == 1 && !specimens.contains("")) {
                Item item = study.folder().items().get(id);
                report.at(
                                study.study().places().of("levels"),
                                Subject.study(study.study().id()))
                        .meaning(report.say("rules-record.single-specimen.meaning", item.name()))
                        .found(
                                report.say(
                                        "rules-record.single-specimen.found",
                                        item.name(),
                                        specimens.iterator().next()),
                                report.say("rules-record.single-specimen.remedy"));
            }
        }
    }
}
