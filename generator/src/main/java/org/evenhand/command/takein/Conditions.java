package org.evenhand.command.takein;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.evenhand.command.UnusableException;
import org.evenhand.model.Item;
import org.evenhand.model.Run;
import org.evenhand.read.NearMiss;

/**
 * What a log cannot tell of its run.
 *
 * @param item what was tested
 * @param specimen which example of it
 * @param settings the conditions under control
 * @param ambient the surroundings, as written
 * @param instruments by column
 * @param guessed what was read out of the name of the file, in words
 */
record Conditions(
        String item,
        Optional<String> specimen,
        Map<String, String> settings,
        Optional<String> ambient,
        Map<String, String> instruments,
        List<String> guessed) {

    /** What its owner says; any of it may be null or empty. */
    record Said(
            String item,
            String specimen,
            Map<String, String> settings,
            String ambient,
            Map<String, String> instruments,
            String like) {}

    static Conditions of(Said said, Destination to, String fileName) {
        Optional<Run> like = Optional.ofNullable(said.like()).map(id -> run(id, to));
        String item = Optional.ofNullable(said.item())
                .or(() -> like.map(Run::item))
                .or(to::onlyItem)
                .orElseThrow(() -> new UnusableException("say what was tested with --item, one of: "
                        + String.join(", ", to.folder().items().keySet())));
        Item known = to.folder().items().get(item);
        if (known == null) {
            throw new UnusableException("there is no item “" + item + "”; "
                    + NearMiss.suggestion(item, to.folder().items().keySet()));
        }
        List<String> words = words(fileName);
        List<String> guessed = new ArrayList<>();
        Optional<String> specimen = Optional.ofNullable(said.specimen());
        if (specimen.isPresent() && !known.specimens().contains(specimen.get())) {
            throw new UnusableException("“" + known.name() + "” has no specimen “" + specimen.get() + "”; "
                    + NearMiss.suggestion(specimen.get(), known.specimens()));
        }
        if (specimen.isEmpty()) {
            specimen = only(known.specimens().stream()
                    .filter(s -> words.contains(s.toLowerCase(Locale.ROOT)))
                    .toList());
            specimen.ifPresent(s -> guessed.add("specimen " + s));
        }
        Map<String, String> settings =
                new LinkedHashMap<>(like.map(Run::settings).orElse(Map.of()));
        settings.putAll(said.settings());
        String factor = to.study().factor();
        boolean isSetting = !factor.equals("item") && !factor.equals("specimen");
        if (isSetting && !said.settings().containsKey(factor)) {
            level(to.study().levels(), words).ifPresent(level -> {
                settings.put(factor, level);
                guessed.add(factor + " “" + level + "”");
            });
        }
        if (isSetting && settings.containsKey(factor) && !to.study().levels().contains(settings.get(factor))) {
            throw new UnusableException("“" + settings.get(factor) + "” is not one of the study's levels of " + factor
                    + "; "
                    + NearMiss.suggestion(settings.get(factor), to.study().levels()));
        }
        Map<String, String> instruments = new LinkedHashMap<>(
                new java.util.TreeMap<>(like.map(Run::instruments).orElse(Map.of())));
        instruments.putAll(said.instruments());
        instruments.values().forEach(i -> {
            if (!to.folder().instruments().containsKey(i)) {
                throw new UnusableException("there is no instrument “" + i + "”; "
                        + NearMiss.suggestion(i, to.folder().instruments().keySet()));
            }
        });
        return new Conditions(item, specimen, settings, Optional.ofNullable(said.ambient()), instruments, guessed);
    }

    /** What nobody has said, with the option that would. */
    List<String> unknown(Destination to, boolean started) {
        List<String> unknown = new ArrayList<>();
        String factor = to.study().factor();
        boolean isSetting = !factor.equals("item") && !factor.equals("specimen");
        if (isSetting && !settings.containsKey(factor)) {
            unknown.add("its " + factor + ", which the study varies: --setting \"" + factor + "="
                    + to.study().levels().get(0) + "\"");
        }
        others(to).forEach((name, values) -> {
            if (!settings.containsKey(name)) {
                unknown.add(
                        "its " + name + ", which other runs state (" + values + "): --setting \"" + name + "=...\"");
            }
        });
        if (specimen.isEmpty()) {
            unknown.add("the specimen: --specimen, one of "
                    + String.join(", ", to.folder().items().get(item).specimens()));
        }
        if (ambient.isEmpty() && to.method().needsAmbient()) {
            unknown.add("the surroundings: --ambient \"21.4 ± 0.5 °C\"");
        }
        if (!started) {
            unknown.add("when it began: --started 2026-03-02T09:14:00Z");
        }
        List<String> unmeasured = to.method().records().keySet().stream()
                .filter(c -> !instruments.containsKey(c))
                .toList();
        if (!unmeasured.isEmpty()) {
            unknown.add("what measured " + String.join(", ", unmeasured) + ": --instrument " + unmeasured.get(0) + "=ID"
                    + to.study().runs().stream()
                            .findFirst()
                            .map(r -> ", or --like " + r.id())
                            .orElse(""));
        }
        return unknown;
    }

    /** Settings of the study's other runs, with their values. */
    private Map<String, String> others(Destination to) {
        Map<String, String> others = new LinkedHashMap<>();
        to.study().runs().stream()
                .flatMap(r -> r.settings().keySet().stream())
                .filter(name -> !name.equals(to.study().factor()))
                .distinct()
                .sorted()
                .forEach(name -> others.put(
                        name,
                        to.study().runs().stream()
                                .map(r -> r.settings().get(name))
                                .filter(java.util.Objects::nonNull)
                                .distinct()
                                .limit(3)
                                .collect(Collectors.joining(", "))));
        return others;
    }

    private static Run run(String id, Destination to) {
        return to.study().runs().stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new UnusableException("the study has no run “" + id + "”; "
                        + NearMiss.suggestion(
                                id, to.study().runs().stream().map(Run::id).toList())));
    }

    /** The level whose words all stand in the name; of several, the one with most words. */
    private static Optional<String> level(List<String> levels, List<String> words) {
        List<String> named =
                levels.stream().filter(l -> words.containsAll(words(l))).toList();
        int most = named.stream().mapToInt(l -> words(l).size()).max().orElse(0);
        return only(named.stream().filter(l -> words(l).size() == most).toList());
    }

    private static List<String> words(String name) {
        return Arrays.asList(name.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"));
    }

    private static Optional<String> only(List<String> candidates) {
        return candidates.size() == 1 ? Optional.of(candidates.get(0)) : Optional.empty();
    }
}
