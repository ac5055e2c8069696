package org.evenhand.check.rule;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Origin;
import org.evenhand.model.Severity;
import org.evenhand.quantity.Unit;

/** A level without its background may be the level of the room. */
public final class BackgroundMissing implements Rule {

    private static final Unit SECOND = Unit.of("s");

    private static final RuleFacts FACTS = RuleFacts.of("background-missing", Group.SOUND, Severity.WITHHOLD)
            .withLimit("1 h", RuleFacts.COMMON_PRACTICE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (LevelRun run : study.countingRuns()) {
            if (run.run().origin() == Origin.MEASURED && Levels.areShown(study, run)) {
                check(study, run, report);
            }
        }
    }

    private static void check(StudyView study, LevelRun run, Report report) {
        String read = run.run().circumstances().get("background-read");
        Optional<OffsetDateTime> started = run.run().started();
        if (!run.run().circumstances().containsKey("background")) {
            report.at(run.run().places().of("run"), study.subject(run))
                    .meaning(report.say("rules-sound.background-missing.meaning"))
                    .found(
                            report.say(
                                    "rules-sound.background-missing.found",
                                    run.run().id()),
                            report.say("rules-sound.background-missing.remedy"));
        } else if (read == null) {
            report.at(run.run().places().of("background"), study.subject(run))
                    .notCheckable("background-read", report.say("rules-sound.background-missing.give"));
        } else if (started.isEmpty()) {
            report.at(run.run().places().of("run"), study.subject(run))
                    .notCheckable("started", report.say("rules-sound.background-missing.give-2"));
        } else {
            double apartS = Math.abs(
                    Duration.between(OffsetDateTime.parse(read), started.get()).toSeconds());
            checkTime(study, run, apartS, report);
        }
    }

    private static void checkTime(StudyView study, LevelRun run, double apartS, Report report) {
        Report.Applied limit = report.limit(study.method(run.run()), SECOND);
        if (apartS > limit.value()) {
            report.at(run.run().places().of("background-read"), study.subject(run))
                    .against(limit.limit())
                    .meaning(report.say("rules-sound.background-missing.meaning-2"))
                    .found(
                            report.say(
                                    "rules-sound.background-missing.found-2",
                                    apartS / 3600,
                                    run.run().id()),
                            report.say("rules-sound.background-missing.remedy-2"));
        }
    }
}
