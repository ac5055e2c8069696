package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ProseRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.words.Words;

/** A quantity is bound to its evidence, or marked as given. */
public final class NumberUnlinked implements ProseRule {

    private static final RuleFacts FACTS = RuleFacts.of("number-unlinked", Group.PROSE, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public String consequence(Words words) {
        return words.say("rules-prose.number-unlinked.meaning");
    }
}
