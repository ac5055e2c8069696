package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ProseRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.words.Words;

/** A statement on a kind needs a proportion. Source: ISO/IEC 17025:2017, 7.8.2.1 l. */
public final class ScopeOverclaimed implements ProseRule {

    private static final RuleFacts FACTS = RuleFacts.of("scope-overclaimed", Group.PROSE, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public String consequence(Words words) {
        return words.say("rules-prose.scope-overclaimed.meaning");
    }
}
