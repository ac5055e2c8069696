package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.ProseRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Severity;

/** A quantity is bound to its evidence, or marked as given. */
public final class NumberUnlinked implements ProseRule {

    private static final RuleFacts FACTS = RuleFacts.of(
            "number-unlinked", Group.PROSE, Severity.CAVEAT, "a quantity in the text with nothing behind it");

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public String consequence() {
        return "Nobody can tell where this number comes from, or whether it still holds.";
    }
}
