package org.evenhand.check.rule;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.evenhand.check.Group;
import org.evenhand.check.MovedFigures.Moved;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.model.Severity;
import org.evenhand.read.FormerAnswer;

/** A published figure does not change in silence. Source: ISO/IEC 17025:2017, 7.8.8. */
public final class ChangeUnrecorded implements Rule {

    private static final int SHOWN = 3;

    private static final RuleFacts FACTS = RuleFacts.of("change-unrecorded", Group.RECORD, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public boolean needsVerdicts() {
        return true;
    }

    @Override
    public void check(StudyView study, Report report) {
        Optional<FormerAnswer> former = study.former();
        if (former.isPresent() && !former.get().isReadable()) {
            report.at(study.study().places().of("status"), study.subject())
                    .notCheckable(
                            "a former answer that can be read", report.say("rules-record.change-unrecorded.give"));
            return;
        }
        if (former.isEmpty()
                || !former.get().status().equals("final")
                || study.study().revisions().size() > former.get().revisions()) {
            return;
        }
        List<Moved> moved = study.movedFigures();
        if (!moved.isEmpty()) {
            String some = moved.stream().limit(SHOWN).map(m -> named(m, report)).collect(Collectors.joining("; "));
            int more = moved.size() - SHOWN;
            report.at(study.study().places().of("status"), study.subject())
                    .meaning(report.say("rules-record.change-unrecorded.meaning"))
                    .found(
                            report.say(
                                    "rules-record.change-unrecorded.found",
                                    some,
                                    more > 0 ? report.say("rules-record.change-unrecorded.found-part", more) : ""),
                            report.say("rules-record.change-unrecorded.remedy"));
        }
    }

    private static String named(Moved moved, Report report) {
        return report.say(
                "rules-record.change-unrecorded.moved",
                moved.address(),
                report.words().number(moved.before()),
                report.words().number(moved.now()));
    }
}
