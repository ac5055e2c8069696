package org.evenhand.check.rule;

import java.util.List;
import org.evenhand.check.Rule;

/** The rules on what must be on record, in the order in which they are listed. */
public final class RecordRules {

    public static final List<Rule> ALL = List.of(new SingleSpecimen());

    private RecordRules() {}
}
