package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** Energy is not given in watts. Applied wherever a quantity of one kind is wanted. Source: SI Brochure, 9th edition. */
public final class UnitDimension implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.UNIT_DIMENSION, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
