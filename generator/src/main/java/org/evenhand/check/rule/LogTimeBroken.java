package org.evenhand.check.rule;

import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.model.Severity;

/** Times in a log rise from sample to sample, and dates carry their offset. Source: RFC 3339. */
public final class LogTimeBroken implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("log-time-broken", Group.TIME, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        // Reading the log has said so already, with line and column; what could not be read is not here to be looked
        // at.
    }
}
