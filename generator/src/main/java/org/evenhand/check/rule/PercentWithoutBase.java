package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ProseRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.words.Words;

/** A percentage names its base. Source: NIST SP 811 (2008), 7.10.2; Hoefler and Belli, SC 2015, rule 1. */
public final class PercentWithoutBase implements ProseRule {

    private static final RuleFacts FACTS = RuleFacts.of("percent-without-base", Group.PROSE, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public String consequence(Words words) {
        return words.say("rules-prose.percent-without-base.meaning");
    }
}
