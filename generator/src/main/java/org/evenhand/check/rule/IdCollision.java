package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** Two things have two names, capitals apart. Applied to the names of files, levels and comparisons. */
public final class IdCollision implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.ID_COLLISION, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
