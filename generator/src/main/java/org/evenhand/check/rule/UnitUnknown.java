package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** A unit is one of the table. Applied to quantities and to the headers of logs. Source: SI Brochure, 9th edition; UCUM. */
public final class UnitUnknown implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.UNIT_UNKNOWN, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
