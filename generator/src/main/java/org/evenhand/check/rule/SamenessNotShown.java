package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ProseRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;
import org.evenhand.words.Words;

/** Sameness is said only after two one-sided tests. Source: D. J. Schuirmann, J. Pharmacokin. Biopharm. 15 (1987) 657. */
public final class SamenessNotShown implements ProseRule {

    private static final RuleFacts FACTS = RuleFacts.of("sameness-not-shown", Group.PROSE, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public String consequence(Words words) {
        return words.say("rules-prose.sameness-not-shown.meaning");
    }
}
