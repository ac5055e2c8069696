package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ProseRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.words.Words;

/** A direction is said only of a comparison that differs, and in its sense. */
public final class DifferenceNotShown implements ProseRule {

    private static final RuleFacts FACTS = RuleFacts.of("difference-not-shown", Group.PROSE, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public String consequence(Words words) {
        return words.say("rules-prose.difference-not-shown.meaning");
    }
}
