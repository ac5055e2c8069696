package org.evenhand.check.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.model.Run;
import org.evenhand.model.Severity;

/** One log is one run's; a copy is no repeat. */
public final class DataDuplicated implements Rule {

    /** Fewer samples than this can be alike by chance. */
    private static final long TELLING_SAMPLES = 10;

    private static final RuleFacts FACTS = RuleFacts.of("data-duplicated", Group.RECORD, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        Map<Object, Run> firsts = firsts(study);
        for (LevelRun run : study.runs()) {
            Run own = run.run();
            keys(run.measured()).stream()
                    .map(firsts::get)
                    .filter(first -> !isSame(first, own))
                    .findFirst()
                    .ifPresent(first -> report.at(own.places().of("log"), study.subject(run))
                            .meaning(report.say("rules-record.data-duplicated.meaning"))
                            .found(
                                    report.say(
                                            "rules-record.data-duplicated.found", own.id(), named(first, own, report)),
                                    report.say("rules-record.data-duplicated.remedy")));
        }
    }

    /** The first run of each log: one of another study, so that both studies hear of it, else the first of this one. */
    private static Map<Object, Run> firsts(StudyView study) {
        Map<Object, Run> firsts = new HashMap<>();
        Set<String> own = study.runs().stream().map(r -> name(r.run())).collect(Collectors.toSet());
        study.measured().byStudy().values().stream()
                .flatMap(runs -> runs.values().stream())
                .filter(other -> !own.contains(name(other.run())))
                .forEach(other -> keys(other).forEach(key -> firsts.putIfAbsent(key, other.run())));
        study.runs().forEach(r -> keys(r.measured()).forEach(key -> firsts.putIfAbsent(key, r.run())));
        return firsts;
    }

    /** What is the same if two logs are: their bytes, or all that is kept of their samples, compressed or not. */
    private static List<Object> keys(MeasuredRun run) {
        List<Object> keys = new ArrayList<>();
        run.sha256().ifPresent(keys::add);
        run.log()
                .filter(log -> log.samples() >= TELLING_SAMPLES)
                .filter(log -> log.columns().values().stream().anyMatch(c -> c.lowest() < c.highest()))
                .ifPresent(keys::add);
        return keys;
    }

    private static boolean isSame(Run one, Run other) {
        return name(one).equals(name(other));
    }

    private static String name(Run run) {
        return run.study() + "/" + run.id();
    }

    private static String named(Run other, Run own, Report report) {
        return other.study().equals(own.study())
                ? report.say("rules-record.data-duplicated.of-run", other.id())
                : report.say("rules-record.data-duplicated.of-run-elsewhere", other.id(), other.study());
    }
}
