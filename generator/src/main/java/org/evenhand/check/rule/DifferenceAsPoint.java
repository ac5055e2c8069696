package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** A rise of 45 °F is 25 K. Applied wherever a difference is wanted. Source: NIST SP 811 (2008), B.8. */
public final class DifferenceAsPoint implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.DIFFERENCE_AS_POINT, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
