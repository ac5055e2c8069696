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
import org.evenhand.page.words.Counting;
import org.evenhand.page.words.Names;

/** What was equal between the levels, what differed, what was refused and why. */
final class Panels {

    private static final String NOT_STATED = "not stated";

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
                        ? "Test item"
                        : Names.label(answer.study().factor()),
                levels,
                answer.study().levels().size() > 1 ? "the factor of this study" : "the factor, at one level");
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
                    "test item",
                    runs.stream()
                            .map(r -> Optional.ofNullable(
                                            answer.folder().items().get(r.run().item()))
                                    .map(Item::name))
                            .toList());
        }
        if (!answer.study().factor().equals("specimen")) {
            all.put("specimen", runs.stream().map(r -> r.run().specimen()).toList());
        }
        Map<String, String> versions = Heads.versions(runs, answer);
        all.put(
                "method version",
                runs.stream()
                        .map(r -> Optional.of(versions.get(answer.name(r.run()))))
                        .toList());
        Set<String> sources = new TreeSet<>();
        runs.forEach(r -> sources.addAll(r.run().instruments().keySet()));
        for (String source : sources) {
            all.put(
                    source + " read with",
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

    private static void add(
            Answer answer,
            String name,
            List<Optional<String>> byRun,
            List<LevelRun> runs,
            List<Setting> equal,
            List<Setting> differed) {
        Set<String> values = new TreeSet<>(Ids.ORDER);
        byRun.forEach(v -> values.add(v.orElse(NOT_STATED)));
        if (values.size() == 1) {
            equal.add(new Setting(
                    Names.label(name),
                    values.iterator().next(),
                    answer.study().levels().size() > 1 ? "the same at every level" : "the same in every run"));
            return;
        }
        Map<String, Set<String>> byLevel = new LinkedHashMap<>();
        for (String level : answer.study().levels()) {
            for (int i = 0; i < runs.size(); i++) {
                if (runs.get(i).level().equals(level)) {
                    byLevel.computeIfAbsent(answer.names().level(level), l -> new TreeSet<>(Ids.ORDER))
                            .add(byRun.get(i).orElse(NOT_STATED));
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
                Names.label(name),
                shown,
                declared
                        ? "declared to change with the factor"
                        : withLevel
                                ? "changed together with the factor"
                                : answer.study().levels().size() > 1
                                        ? "varied alike at every level"
                                        : "varied between runs"));
    }

    private static List<Refusal> refusals(Answer answer) {
        List<Refusal> refusals = new ArrayList<>();
        for (ComparisonResult result : answer.evidence().comparisons()) {
            String subject = answer.names().subject(result.plan());
            for (Finding finding : answer.refusals(result)) {
                refusals.add(new Refusal("", subject, why(finding), Optional.of(rule(answer, finding))));
            }
            if (answer.refusals(result).isEmpty() && answer.isRefused(result)) {
                refusals.add(new Refusal("", subject, answer.sentence(result), Optional.empty()));
            }
        }
        return refusals;
    }

    private static String why(Finding finding) {
        String limit = finding.limit()
                .map(l -> " The limit is " + l.value().replace(' ', '\u00a0') + " (" + l.origin() + ").")
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
                    missing.add(Sentence.of(Counting.of(planned, "run", answer.words()) + " "
                            + (planned == 1 ? "was" : "were") + " planned "
                            + answer.names().under(level) + ", " + (done == 0 ? "none" : done) + " completed"));
                }
            }
        });
        return missing;
    }
}
