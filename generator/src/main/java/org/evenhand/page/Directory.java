package org.evenhand.page;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.evenhand.check.CheckedStudy;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.model.Finding;
import org.evenhand.model.Run;
import org.evenhand.model.RunOutcome;
import org.evenhand.model.Study;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Listed;

/** Which runs there are, and which study uses what: the cross-references of a site. */
public final class Directory {

    private final PageContext context;
    private final SortedMap<String, SortedMap<String, MeasuredRun>> runs = new TreeMap<>();
    private final Map<String, List<CheckedStudy>> users = new HashMap<>();
    private final Map<String, List<Finding>> ofRuns = new HashMap<>();
    private final Map<String, List<Finding>> inFiles = new HashMap<>();

    public Directory(PageContext context) {
        this.context = context;
        for (CheckedStudy study : context.checked().studies().values()) {
            Map<String, List<Finding>> byRun = new HashMap<>();
            for (Finding finding : study.findings()) {
                finding.subject()
                        .run()
                        .ifPresent(run -> byRun.computeIfAbsent(run, r -> new ArrayList<>())
                                .add(finding));
            }
            for (LevelRun run : study.evidence().runs()) {
                String key = key(run.run());
                runs.computeIfAbsent(run.run().study(), s -> new TreeMap<>(Ids.ORDER))
                        .put(run.run().id(), run.measured());
                users.computeIfAbsent(key, k -> new ArrayList<>()).add(study);
                ofRuns.computeIfAbsent(key, k -> new ArrayList<>())
                        .addAll(byRun.getOrDefault(run.run().id(), List.of()));
            }
        }
        for (Finding finding : context.checked().findings()) {
            inFiles.computeIfAbsent(finding.place().file(), file -> new ArrayList<>())
                    .add(finding);
        }
    }

    /** Every run, by study, then id. */
    public List<MeasuredRun> runs() {
        return runs.values().stream()
                .map(SortedMap::values)
                .flatMap(Collection::stream)
                .toList();
    }

    /** The runs that fulfil a condition, by study; studies without any are left out. */
    public SortedMap<String, List<MeasuredRun>> runsByStudy(Predicate<Run> condition) {
        SortedMap<String, List<MeasuredRun>> some = new TreeMap<>();
        runs.forEach((study, ofStudy) -> {
            List<MeasuredRun> wanted = ofStudy.values().stream()
                    .filter(r -> condition.test(r.run()))
                    .toList();
            if (!wanted.isEmpty()) {
                some.put(study, wanted);
            }
        });
        return some;
    }

    /** The studies that look at a run that fulfils the condition. */
    public List<CheckedStudy> studiesWithRun(Predicate<Run> condition) {
        return context.checked().studies().values().stream()
                .filter(s -> s.evidence().runs().stream().anyMatch(r -> condition.test(r.run())))
                .toList();
    }

    /** What was found of a run, by whichever study. */
    public List<Finding> findings(MeasuredRun measured) {
        Run run = measured.run();
        List<Finding> findings = new ArrayList<>(measured.findings());
        findings.addAll(ofRuns.getOrDefault(key(run), List.of()));
        findings.addAll(findingsIn(run.places().file().file()));
        return findings;
    }

    /** What was found in a file. */
    public List<Finding> findingsIn(String file) {
        return inFiles.getOrDefault(file, List.of());
    }

    /** The studies that look at a run. */
    public List<CheckedStudy> studiesOf(Run run) {
        return users.getOrDefault(key(run), List.of());
    }

    private static String key(Run run) {
        return run.study() + "/" + run.id();
    }

    /** A study as a line of a list: its question, leading to its answer. */
    public Listed listed(CheckedStudy study) {
        Study s = study.evidence().study();
        String date = s.answered().map(Object::toString).orElse("");
        return new Listed(question(s), date, status(study), "");
    }

    public static Link question(Study study) {
        return Link.to(study.question(), Address.answer(study.id()));
    }

    /** How a study stands, in the word of the head block: "withheld" whatever its author says, if it is not published. */
    public static String status(CheckedStudy study) {
        return study.isWithheld()
                ? "withheld"
                : study.evidence().study().status().name().toLowerCase(Locale.ROOT);
    }

    /** How a run ended, in the word of the head block. */
    public static String word(RunOutcome outcome) {
        return outcome.name().toLowerCase(Locale.ROOT);
    }

    /** The newest first, those without a date last. */
    public static Comparator<Listed> newestFirst() {
        return Comparator.comparing(Listed::date, Comparator.reverseOrder())
                .thenComparing(l -> l.page().text());
    }
}
