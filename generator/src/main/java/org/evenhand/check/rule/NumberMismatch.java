package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ProseRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.words.Words;

/** A number in a link must be the computed one. */
public final class NumberMismatch implements ProseRule {

    private static final RuleFacts FACTS = RuleFacts.of("number-mismatch", Group.PROSE, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public String consequence(Words words) {
        return words.say("rules-prose.number-mismatch.meaning");
    }
}
