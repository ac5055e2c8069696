package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Finding;
import org.evenhand.model.Item;
import org.evenhand.page.Ids;
import org.evenhand.page.Sentence;
import org.evenhand.page.view.Comparability;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Refusal;
import org.evenhand.page.view.Setting;
import org.evenhand.page.words.Names;
import org.evenhand.words.Words;

/** What was equal between the levels, what differed, what was refused and why. */
final class Panels {

    private static final String TEST_ITEM = "test item";
    private static final String SPECIMEN = "specimen";
    private static final String METHOD_VERSION = "method version";
    private static final String READ_WITH = " read with";

    private Panels() {}

    static Comparability of(Answer answer) {
        List<LevelRun> runs = answer.counting();
        List<Setting> equal = new ArrayList<>();
        List<Setting> differed = new ArrayList<>();
        if (!runs.isEmpty()) {
            properties(answer, runs).forEach((name, byRun) -> add(answer, name, byRun, runs, equal, differed));
            if (answer.study().levels().size() > 1) {
                differed.add(0, factor(answer));
            } else {
                equal.add(0, factor(answer));
            }
        }
        return new Comparability(equal, differed, refusals(answer));
    }

    private static Setting factor(Answer answer) {
        String levels =
                answer.study().levels().stream().map(answer.names()::level).collect(Collectors.joining("; "));
        return new Setting(
                answer.study().factor().equals("item")
                        ? answer.words().say("report.item")
                        : Names.label(answer.study().factor()),
                levels,
                answer.words().say(answer.study().levels().size() > 1 ? "panel.factor" : "panel.factor-one-level"));
    }

    /** Everything that may differ between runs, in the order shown: by name, the value of each run. */
    private static Map<String, List<Optional<String>>> properties(Answer answer, List<LevelRun> runs) {
        Map<String, List<Optional<String>>> all = new LinkedHashMap<>();
        Set<String> settings = new TreeSet<>();
        runs.forEach(r -> settings.addAll(r.run().settings().keySet()));
        settings.remove(answer.study().factor());
        for (String setting : settings) {
            all.put(
                    setting,
                    runs.stream()
                            .map(r -> Optional.ofNullable(r.run().settings().get(setting))
                                    .map(v -> Names.value(v, answer.words())))
                            .toList());
        }
        if (!answer.study().factor().equals("item")) {
            all.put(
                    TEST_ITEM,
                    runs.stream()
                            .map(r -> Optional.ofNullable(
                                            answer.folder().items().get(r.run().item()))
                                    .map(Item::name))
                            .toList());
        }
        if (!answer.study().factor().equals("specimen")) {
            all.put(SPECIMEN, runs.stream().map(r -> r.run().specimen()).toList());
        }
        Map<String, String> versions = Heads.versions(runs, answer);
        all.put(
                METHOD_VERSION,
                runs.stream()
                        .map(r -> Optional.of(versions.get(answer.name(r.run()))))
                        .toList());
        Set<String> sources = new TreeSet<>();
        runs.forEach(r -> sources.addAll(r.run().instruments().keySet()));
        for (String source : sources) {
            all.put(
                    source + READ_WITH,
                    runs.stream().map(r -> instrument(answer, r, source)).toList());
        }
        return all;
    }

    private static Optional<String> instrument(Answer answer, LevelRun run, String source) {
        return Optional.ofNullable(run.run().instruments().get(source))
                .map(answer.folder().instruments()::get)
                .map(i -> i.name().orElse(i.id())
                        + i.boundary()
                                .map(b -> ", "
                                        + Names.boundary(b, answer.context().words()))
                                .orElse(""));
    }

    private static String label(Answer answer, String name) {
        Words words = answer.words();
        return switch (name) {
            case TEST_ITEM -> words.say("report.item");
            case SPECIMEN -> words.say("page.specimen");
            case METHOD_VERSION -> words.say("panel.method-version");
            default ->
                name.endsWith(READ_WITH)
                        ? words.say(
                                "panel.read-with", Names.label(name.substring(0, name.length() - READ_WITH.length())))
                        : Names.label(name);
        };
    }

    private static void add(
            Answer answer,
            String name,
            List<Optional<String>> byRun,
            List<LevelRun> runs,
            List<Setting> equal,
            List<Setting> differed) {
        Set<String> values = new TreeSet<>(Ids.ORDER);
        String notStated = answer.words().say("record.not-stated");
        byRun.forEach(v -> values.add(v.orElse(notStated)));
        if (values.size() == 1) {
            equal.add(new Setting(
                    label(answer, name),
                    values.iterator().next(),
                    answer.words()
                            .say(answer.study().levels().size() > 1 ? "panel.same-at-levels" : "panel.same-in-runs")));
            return;
        }
        Map<String, Set<String>> byLevel = new LinkedHashMap<>();
        for (String level : answer.study().levels()) {
            for (int i = 0; i < runs.size(); i++) {
                if (runs.get(i).level().equals(level)) {
                    byLevel.computeIfAbsent(answer.names().level(level), l -> new TreeSet<>(Ids.ORDER))
                            .add(byRun.get(i).orElse(notStated));
                }
            }
        }
        boolean withLevel = new LinkedHashSet<>(byLevel.values()).size() > 1;
        String shown = withLevel
                ? byLevel.entrySet().stream()
                        .map(e -> e.getKey() + ": " + String.join(", ", e.getValue()))
                        .collect(Collectors.joining("; "))
                : String.join(", ", values);
        boolean declared = answer.study().changesWithFactor().contains(name);
        differed.add(new Setting(
                label(answer, name),
                shown,
                answer.words()
                        .say(
                                declared
                                        ? "panel.declared"
                                        : withLevel
                                                ? "panel.with-factor"
                                                : answer.study().levels().size() > 1
                                                        ? "panel.alike"
                                                        : "panel.between-runs")));
    }

    private static List<Refusal> refusals(Answer answer) {
        List<Refusal> refusals = new ArrayList<>();
        for (ComparisonResult result : answer.evidence().comparisons()) {
            String subject = answer.names().subject(result.plan());
            for (Finding finding : answer.refusals(result)) {
                refusals.add(new Refusal("", subject, why(answer, finding), Optional.of(rule(answer, finding))));
            }
            if (answer.refusals(result).isEmpty() && answer.isRefused(result)) {
                refusals.add(new Refusal("", subject, answer.sentence(result), Optional.empty()));
            }
        }
        return refusals;
    }

    private static String why(Answer answer, Finding finding) {
        String limit = finding.limit()
                .map(l -> " " + answer.words().say("panel.limit", Names.value(l.value(), answer.words()), l.origin()))
                .orElse("");
        String means = finding.consequence().isEmpty() ? "" : " " + Sentence.of(finding.consequence());
        return Sentence.of(finding.message()) + limit + means;
    }

    private static Link rule(Answer answer, Finding finding) {
        return answer.findings().address(finding, finding.rule());
    }

    /** "Five of six planned runs at spreader" and the like; for the limits of a report. */
    static List<String> missing(Answer answer) {
        List<String> missing = new ArrayList<>();
        answer.study().plannedRuns().ifPresent(planned -> {
            for (String level : answer.study().levels()) {
                long done = answer.counting().stream()
                        .filter(r -> r.level().equals(level))
                        .count();
                if (done < planned) {
                    String under = answer.names().under(level);
                    missing.add(Sentence.of(
                            done == 0
                                    ? answer.words().say("panel.planned-none", planned, under)
                                    : answer.words().say("panel.planned-done", planned, under, done)));
                }
            }
        });
        return missing;
    }
}
