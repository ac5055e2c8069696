package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** A name leads to what it names. Applied when all files are known, and to the links of the text. */
public final class ReferenceUnresolved implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.REFERENCE_UNRESOLVED, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
