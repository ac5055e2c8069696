package org.evenhand.command;

import java.util.Iterator;
import org.evenhand.check.Catalogue;
import org.evenhand.check.RuleFacts;

/** The names of all rules, for shells that complete them. */
final class RuleNames implements Iterable<String> {

    @Override
    public Iterator<String> iterator() {
        return Catalogue.facts().stream().map(RuleFacts::id).iterator();
    }
}
