package org.evenhand.check.rule;

import java.util.List;
import org.evenhand.check.Rule;

/** The rules on what must be on record, in the order in which they are listed. */
public final class RecordRules {

    public static final List<Rule> ALL = List.of(
            new ItemUnidentified(),
            new MethodChanged(),
            new DatesOutOfOrder(),
            new DeviationUndeclared(),
            new PlannedMissing(),
            new RunExcluded(),
            new SummaryWithoutRuns(),
            new InterestUndeclared(),
            new SingleSpecimen(),
            new DataDuplicated(),
            new CalibrationOverdue(),
            new HazardUndeclared(),
            new ChangeUnrecorded());

    private RecordRules() {}
}
