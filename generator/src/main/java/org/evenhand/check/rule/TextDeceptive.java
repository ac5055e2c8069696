package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** A text reads as it looks. Applied to all texts and names. Source: Unicode UAX #9 and UTS #39. */
public final class TextDeceptive implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.TEXT_DECEPTIVE, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
