package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Item;
import org.evenhand.model.Origin;
import org.evenhand.model.Severity;

/** Without the specimen's name nobody can tell what was tested. Source: ISO/IEC 17025:2017, 7.8.2.1 g. */
public final class ItemUnidentified implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("item-unidentified", Group.RECORD, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.runs()) {
            Item item = study.item(run.run());
            if (run.run().origin() != Origin.MEASURED
                    || run.run().specimen().isPresent()
                    || item.unidentified().isPresent()) {
                continue;
            }
            report.at(run.run().places().of("item"), study.subject(run))
                    .meaning(report.say("rules-record.item-unidentified.meaning"))
                    .found(
                            report.say(
                                    "rules-record.item-unidentified.found",
                                    run.run().id(),
                                    item.name()),
                            item.specimens().isEmpty()
                                    ? report.say("rules-record.item-unidentified.remedy", item.id())
                                    : report.say(
                                            "rules-record.item-unidentified.remedy-2",
                                            String.join(", ", item.specimens())));
        }
    }
}
