package org.evenhand.check.rule;

import java.util.List;
import org.evenhand.check.Rule;

/** The rules on repeats and comparisons, in the order in which they are listed. */
public final class RepeatsRules {

    public static final List<Rule> ALL = List.of(
            new SingleRun(),
            new RepeatsAtLowestLevel(),
            new OrderConfounded(),
            new RunsDrift(),
            new Outlier(),
            new TwoStates(),
            new WrongMean(),
            new BasesDiffer());

    private RepeatsRules() {}
}
