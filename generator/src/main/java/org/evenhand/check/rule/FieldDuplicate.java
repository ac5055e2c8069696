package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** Of two values for one field neither is taken. Applied where a document becomes a tree. */
public final class FieldDuplicate implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.FIELD_DUPLICATE, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
