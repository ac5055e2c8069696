package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ProseRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.words.Words;

/** A share of few carries its exact interval. */
public final class RateWithoutInterval implements ProseRule {

    private static final RuleFacts FACTS = RuleFacts.of("rate-without-interval", Group.PROSE, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public String consequence(Words words) {
        return words.say("rules-prose.rate-without-interval.meaning");
    }
}
