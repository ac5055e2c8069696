package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.read.Rules;

/** A file is there, and is what its name says. Applied where bytes become text and text a tree. */
public final class FileUnreadable implements ReadingRule {

    private static final RuleFacts FACTS = RuleFacts.of(Rules.FILE_UNREADABLE, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }
}
