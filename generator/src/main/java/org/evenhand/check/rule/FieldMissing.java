package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** What a file of its kind needs is there. Applied by the shape of each kind of file, and to the columns of logs. */
public final class FieldMissing implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.FIELD_MISSING, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
