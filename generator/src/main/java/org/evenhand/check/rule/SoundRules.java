package org.evenhand.check.rule;

import java.util.List;
import org.evenhand.check.Rule;

/** The rules on sound, in the order in which they are listed. */
public final class SoundRules {

    public static final List<Rule> ALL =
            List.of(new BackgroundMissing(), new BackgroundNear(), new LevelKindMixed(), new HeardNotMeasured());

    private SoundRules() {}
}
