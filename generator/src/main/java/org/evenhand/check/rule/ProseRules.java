package org.evenhand.check.rule;

import java.util.List;
import org.evenhand.check.Rule;

/** The rules on what the text says, in the order in which they are listed. */
public final class ProseRules {

    public static final List<Rule> ALL = List.of();

    private ProseRules() {}
}
