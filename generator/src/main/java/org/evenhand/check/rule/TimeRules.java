package org.evenhand.check.rule;

import java.util.List;
import org.evenhand.check.Rule;

/** The rules on time and soak, in the order in which they are listed. */
public final class TimeRules {

    public static final List<Rule> ALL = List.of(
            new LengthSpread(),
            new LengthShortOfLog(),
            new LogGaps(),
            new LogTimeBroken(),
            new LogTooCoarse(),
            new WarmStart(),
            new StartSpread(),
            new NotSettled(),
            new PlateauFar(),
            new BurstAsSustained(),
            new Censored());

    private TimeRules() {}
}
