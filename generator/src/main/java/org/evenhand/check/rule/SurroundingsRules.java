package org.evenhand.check.rule;

import java.util.List;
import org.evenhand.check.Rule;

/** The rules on the surroundings, in the order in which they are listed. */
public final class SurroundingsRules {

    public static final List<Rule> ALL = List.of(
            new AmbientMissing(),
            new AmbientRange(),
            new AmbientDrift(),
            new AmbientSpread(),
            new RiseMisused(),
            new SeveralThingsChanged(),
            new Implausible(),
            new SensorStuck());

    private SurroundingsRules() {}
}
