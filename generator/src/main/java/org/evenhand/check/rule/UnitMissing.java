package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** A number says of what. Applied to quantities and to the headers of logs. */
public final class UnitMissing implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.UNIT_MISSING, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
