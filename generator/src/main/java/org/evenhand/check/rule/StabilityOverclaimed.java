package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ProseRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.words.Words;

/** Certainty is stated as the bound that zero failures give. */
public final class StabilityOverclaimed implements ProseRule {

    private static final RuleFacts FACTS = RuleFacts.of("stability-overclaimed", Group.PROSE, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public String consequence(Words words) {
        return words.say("rules-prose.stability-overclaimed.meaning");
    }
}
