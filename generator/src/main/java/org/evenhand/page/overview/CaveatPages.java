package org.evenhand.page.overview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenhand.check.Catalogue;
import org.evenhand.check.CheckedStudy;
import org.evenhand.check.Explanation;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Finding;
import org.evenhand.model.Item;
import org.evenhand.page.Directory;
import org.evenhand.page.FindingViews;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.Sentence;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.CaveatGroup;
import org.evenhand.page.view.CaveatsPage;
import org.evenhand.page.view.ExplanationPart;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Listed;
import org.evenhand.page.words.Names;
import org.evenhand.words.Words;

/** The page of everything that was found, by rule. */
public final class CaveatPages {

    /** Where the authors' own notes stand; no rule has this name. */
    private static final String AUTHORS = "authors-own";

    private CaveatPages() {}

    public static void build(PageContext context, Directory directory, PageSink sink) {
        SortedMap<String, List<Listed>> places = new TreeMap<>();
        for (CheckedStudy study : context.checked().studies().values()) {
            add(study, context.words(), places);
        }
        addOutsideStudies(context, places);
        List<CaveatGroup> groups = new ArrayList<>();
        for (String rule : inOrder(places.keySet())) {
            groups.add(group(rule, places.get(rule), context));
        }
        List<Listed> notes = authors(context);
        if (!notes.isEmpty()) {
            groups.add(new CaveatGroup(
                    Address.caveatGroup(AUTHORS),
                    context.words().say("finding.authors"),
                    "",
                    "",
                    context.words().say("finding.authors-about"),
                    List.of(),
                    "",
                    notes));
        }
        CaveatsPage page = new CaveatsPage(
                context.frames()
                        .of(
                                Address.CAVEATS,
                                context.words().say("page.caveats"),
                                context.words().say("finding.caveats-about")),
                groups);
        sink.put(Address.CAVEATS, context.render("caveats", page));
    }

    /** One line for each study and rule: its page has them all. */
    private static void add(CheckedStudy study, Words words, SortedMap<String, List<Listed>> places) {
        String page = Address.answer(study.evidence().study().id());
        FindingViews views = FindingViews.of(page, study.findings(), words);
        Map<String, List<Finding>> byRule = new LinkedHashMap<>();
        FindingViews.worstFirst(study.findings())
                .forEach(f -> byRule.computeIfAbsent(f.rule(), rule -> new ArrayList<>())
                        .add(f));
        byRule.forEach((rule, findings) -> places.computeIfAbsent(rule, r -> new ArrayList<>())
                .add(new Listed(
                        views.address(findings.get(0), study.evidence().study().question()),
                        "",
                        Directory.status(study),
                        FindingViews.told(findings, words))));
    }

    /** What was found of items, methods, instruments, the publication, and of studies that cannot be read. */
    private static void addOutsideStudies(PageContext context, SortedMap<String, List<Listed>> places) {
        Map<String, Map<String, List<Finding>>> byRuleAndFile = new TreeMap<>();
        context.checked().findings().stream()
                .filter(f -> f.subject()
                        .study()
                        .filter(context.checked().studies()::containsKey)
                        .isEmpty())
                .forEach(f -> byRuleAndFile
                        .computeIfAbsent(f.rule(), rule -> new TreeMap<>())
                        .computeIfAbsent(f.place().file(), file -> new ArrayList<>())
                        .add(f));
        byRuleAndFile.forEach((rule, byFile) -> byFile.forEach((file, findings) -> places.computeIfAbsent(
                        rule, r -> new ArrayList<>())
                .add(new Listed(
                        where(file, findings.get(0), context), "", "", FindingViews.told(findings, context.words())))));
    }

    private static Link where(String file, Finding finding, PageContext context) {
        Optional<String> broken =
                finding.subject().study().filter(context.checked().folder().broken()::contains);
        if (broken.isPresent()) {
            return Link.to(broken.get(), Address.answer(broken.get()));
        }
        for (Item item : context.checked().folder().items().values()) {
            if (item.places().file().file().equals(file)) {
                return Link.to(item.name(), Address.item(item.id()));
            }
        }
        return Link.plain(file);
    }

    /** As the catalogue has them; those that it does not know behind, by name. */
    private static List<String> inOrder(Set<String> rules) {
        Set<String> ordered = new LinkedHashSet<>();
        Catalogue.facts().stream().map(RuleFacts::id).filter(rules::contains).forEach(ordered::add);
        rules.stream().sorted(Comparator.naturalOrder()).forEach(ordered::add);
        return List.copyOf(ordered);
    }

    private static CaveatGroup group(String rule, List<Listed> places, PageContext context) {
        Optional<RuleFacts> facts = Catalogue.find(rule);
        return new CaveatGroup(
                Address.caveatGroup(rule),
                facts.map(f -> f.name(context.words())).orElseGet(() -> Names.label(rule)),
                rule,
                facts.map(f -> f.severity().word()).orElse(""),
                facts.map(f -> context.words().say("finding.finds", f.finds(context.words())))
                        .orElse(""),
                facts.map(f -> sections(f, context)).orElse(List.of()),
                limits(rule, context),
                places);
    }

    /** Those that were applied, each with its origin. */
    private static String limits(String rule, PageContext context) {
        return context.checked().findings().stream()
                .filter(f -> f.rule().equals(rule))
                .flatMap(f -> f.limit().stream())
                .map(l -> FindingViews.limit(l, context.words()))
                .distinct()
                .sorted()
                .collect(Collectors.joining("; "));
    }

    private static List<ExplanationPart> sections(RuleFacts facts, PageContext context) {
        Explanation explanation;
        try {
            explanation = Explanation.of(facts);
        } catch (IllegalStateException notWritten) {
            return List.of();
        }
        return Stream.of(Explanation.MEANING, Explanation.WHY, Explanation.MEND, Explanation.SOURCE)
                .filter(heading -> !explanation.section(heading).isEmpty())
                .map(heading -> new ExplanationPart(
                        heading, context.prose().flow(explanation.section(heading), Address.CAVEATS, Optional.empty())))
                .toList();
    }

    private static List<Listed> authors(PageContext context) {
        List<Listed> notes = new ArrayList<>();
        for (CheckedStudy study : context.checked().studies().values()) {
            if (!study.isWithheld()) {
                study.evidence()
                        .study()
                        .caveats()
                        .forEach(note -> notes.add(new Listed(
                                Directory.question(study.evidence().study()),
                                "",
                                "",
                                Sentence.of(context.prose().plain(note, Optional.of(study))))));
            }
        }
        return notes;
    }
}
