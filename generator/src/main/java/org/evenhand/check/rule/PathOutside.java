package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** Nothing outside the folder is read. Applied to every path and link. */
public final class PathOutside implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.PATH_OUTSIDE, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
