package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** A value has the form that its field takes. Applied by the type of each field. */
public final class FieldMalformed implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.FIELD_MALFORMED, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
