package org.evenhand.check.rule;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Severity;

/** Runs under different versions of a method are not held against each other. Source: ISO/IEC 17025:2017, 7.8.2.1 f. */
public final class MethodChanged implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("method-changed", Group.RECORD, Severity.REFUSE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (StudyView.Sides sides : study.sides()) {
            SortedMap<String, LevelRun> byVersion = new TreeMap<>();
            for (LevelRun run : sides.runs()) {
                byVersion.putIfAbsent(version(study, run), run);
            }
            if (byVersion.size() <= 1) {
                continue;
            }
            LevelRun odd = byVersion.values().stream()
                    .filter(r -> r.run().methodVersion().isPresent())
                    .findFirst()
                    .orElseThrow();
            List<String> which = byVersion.entrySet().stream()
                    .map(e -> report.say(
                            "rules-record.method-changed.version",
                            e.getKey(),
                            e.getValue().run().id()))
                    .toList();
            report.at(odd.run().places().of("method-version"), study.subject(sides))
                    .meaning(report.say(
                            "rules-record.method-changed.meaning", study.study().factor()))
                    .found(
                            report.say(
                                    "rules-record.method-changed.found",
                                    String.join(report.words().say("language.and"), which),
                                    study.method(odd.run()).title()),
                            report.say("rules-record.method-changed.remedy"));
        }
    }

    private static String version(StudyView study, LevelRun run) {
        return run.run().methodVersion().orElse(study.method(run.run()).version());
    }
}
