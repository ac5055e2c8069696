package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** A number means one thing. Applied to quantities and to the fields of logs. */
public final class NumberAmbiguous implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.NUMBER_AMBIGUOUS, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
