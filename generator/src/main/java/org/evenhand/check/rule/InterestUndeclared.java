package org.evenhand.check.rule;

import java.util.TreeSet;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.model.Item;
import org.evenhand.model.Severity;

/** Whoever was given the item may wish to please the giver; the reader should know. */
public final class InterestUndeclared implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("interest-undeclared", Group.RECORD, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        TreeSet<String> items = new TreeSet<>();
        study.runs().forEach(r -> items.add(r.run().item()));
        for (String id : items) {
            Item item = study.folder().items().get(id);
            if (item.obtained().isEmpty()) {
                report.at(item.places().of("item"), study.subject())
                        .meaning(report.say("rules-record.interest-undeclared.meaning"))
                        .found(
                                report.say("rules-record.interest-undeclared.found", item.name()),
                                report.say("rules-record.interest-undeclared.remedy"));
            }
        }
    }
}
