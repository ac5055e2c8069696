package org.evenhand.check.rule;

import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Severity;

/** Runs under different versions of a method are not held against each other. Source: ISO/IEC 17025:2017, 7.8.2.1 f. */
public final class MethodChanged implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of(
            "method-changed",
            Group.RECORD,
            Severity.REFUSE,
            "runs under different versions of a method held against each other");

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
            String which = byVersion.entrySet().stream()
                    .map(e ->
                            "version " + e.getKey() + " (" + e.getValue().run().id() + ")")
                    .collect(Collectors.joining(" and "));
            report.at(odd.run().places().of("method-version"), study.subject(sides))
                    .meaning("What is put down to the " + study.study().factor()
                            + " may come from the change of method.")
                    .found(
                            "the runs were done under " + which + " of the method “"
                                    + study.method(odd.run()).title() + "”",
                            "repeat the older runs under the newer version, or compare runs of one version");
        }
    }

    private static String version(StudyView study, LevelRun run) {
        return run.run().methodVersion().orElse(study.method(run.run()).version());
    }
}
