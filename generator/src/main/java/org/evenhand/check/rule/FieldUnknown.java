package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** A misspelt field does not get lost. Applied by the shape of each kind of file. */
public final class FieldUnknown implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.FIELD_UNKNOWN, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
