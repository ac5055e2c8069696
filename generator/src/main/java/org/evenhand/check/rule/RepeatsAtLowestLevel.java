package org.evenhand.check.rule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Counts;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Place;
import org.evenhand.model.Severity;

/** Repeats within a specimen tell of that specimen. Source: T. Kalibera, R. Jones, ISMM ’13, section 6. */
public final class RepeatsAtLowestLevel implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("repeats-at-lowest-level", Group.REPEATS, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        if (study.study().factor().equals("specimen")) {
            return; // then the specimen is what is asked about
        }
        for (int i = 0; i < study.study().levels().size(); i++) {
            checkLevel(
                    study, study.study().levels().get(i), study.study().places().of("levels/" + i), report);
        }
        for (StudyView.Sides sides : study.sides()) {
            checkPairs(study, sides, report);
        }
    }

    private static void checkLevel(StudyView study, String level, Place place, Report report) {
        Optional<LevelSummary> summary = study.evidence().summaries().stream()
                .filter(s -> s.level().equals(level) && s.counts() == Counts.RUNS && s.n() >= 2)
                .filter(s -> study.measurand(s.measurand()).isNumeric())
                .findFirst();
        if (summary.isEmpty()) {
            return;
        }
        List<LevelRun> runs = study.countingRuns().stream()
                .filter(r -> r.level().equals(level)
                        && summary.get().runs().contains(r.run().id()))
                .toList();
        for (LevelRun run : runs) {
            if (run.run().specimen().isEmpty()) {
                report.at(run.run().places().of("item"), study.subject(run))
                        .notCheckable("specimen", report.say("rules-repeats.repeats-at-lowest-level.give"));
                return;
            }
        }
        Set<String> specimens = specimens(runs);
        if (specimens.size() == 1) {
            report.at(place, study.subject(runs.get(0)))
                    .meaning(report.say("rules-repeats.repeats-at-lowest-level.meaning"))
                    .found(
                            report.say(
                                    "rules-repeats.repeats-at-lowest-level.found",
                                    summary.get().n(),
                                    level,
                                    specimens.iterator().next()),
                            report.say("rules-repeats.repeats-at-lowest-level.remedy"));
        }
    }

    private static void checkPairs(StudyView study, StudyView.Sides sides, Report report) {
        Optional<String> pairedBy = sides.result().plan().pairedBy();
        if (pairedBy.isPresent()
                && !pairedBy.get().equals("specimen")
                && sides.result() instanceof ComparisonResult.Contrasted contrasted) {
            int pairs = contrasted.numbers().level();
            int specimens = specimens(sides.runs()).size();
            if (specimens < pairs) {
                report.at(study.place(sides), study.subject(sides))
                        .meaning(report.say("rules-repeats.repeats-at-lowest-level.meaning-2"))
                        .found(
                                report.say(
                                        "rules-repeats.repeats-at-lowest-level.found-2",
                                        pairs,
                                        pairedBy.get(),
                                        specimens),
                                report.say("rules-repeats.repeats-at-lowest-level.remedy-2"));
            }
        }
    }

    private static Set<String> specimens(List<LevelRun> runs) {
        Set<String> specimens = new TreeSet<>();
        runs.forEach(r -> r.run().specimen().ifPresent(specimens::add));
        return specimens;
    }
}
