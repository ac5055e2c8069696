package org.evenhand.check.rule;

import java.util.List;
import org.evenhand.check.ProseRule;
import org.evenhand.check.Rule;

/** The rules on what the text says, in the order in which they are listed. */
public final class ProseRules {

    /** Those on words and numbers, which are held against the figures in one pass. */
    public static final List<ProseRule> OF_WORDS = List.of(
            new NumberMismatch(),
            new NumberUnlinked(),
            new PercentWithoutBase(),
            new DifferenceNotShown(),
            new SamenessNotShown(),
            new StabilityOverclaimed(),
            new ScopeOverclaimed(),
            new RateWithoutInterval());

    /** Those that look at the text beside other things. */
    public static final List<Rule> ALL = List.of(new AmbientExtrapolated(), new Extrapolated());

    private ProseRules() {}
}
