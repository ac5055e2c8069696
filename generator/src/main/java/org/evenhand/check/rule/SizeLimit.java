package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** Neither memory nor time runs away. Applied to files, documents, texts and logs. */
public final class SizeLimit implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.SIZE_LIMIT, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
