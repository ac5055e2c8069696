package org.evenhand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.evenhand.check.rule.ProseRules;
import org.evenhand.model.Finding;
import org.evenhand.model.Limits;
import org.evenhand.model.Outcome;
import org.evenhand.model.Places;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.prose.EvidenceResolver;
import org.evenhand.prose.ProseFault;
import org.evenhand.prose.ProseSource;
import org.evenhand.prose.ProseText;
import org.evenhand.prose.StudyResolver;
import org.evenhand.prose.Verification;
import org.evenhand.prose.Verification.Extent;
import org.evenhand.words.Words;

/** Holds the texts of a study, and those of the front page, against the figures. */
final class ProseChecks {

    private static final Map<String, ProseRule> RULES =
            ProseRules.OF_WORDS.stream().collect(Collectors.toMap(r -> r.facts().id(), Function.identity()));

    private ProseChecks() {}

    /** What is wrong with the texts of a study, held against the verdicts that stand. */
    static List<ProseFault> faults(StudyView view) {
        StudyResolver resolver = StudyResolver.of(view.folder(), view.evidence(), view.verdict())
                .with(view.texts().names());
        return faults(view.texts().texts(), resolver, Extent.ALL, view.folder().limits());
    }

    /** What is wrong with the texts that belong to no study: the front page, items, instruments and methods. */
    static List<ProseFault> ofFolder(ResultsFolder folder) {
        StudyResolver resolver = StudyResolver.withoutStudy(folder);
        List<ProseText> frontPage = new ArrayList<>();
        folder.publication().ifPresent(p -> p.about().ifPresent(t -> frontPage.add(field(p.places(), "about", t))));
        List<ProseText> records = new ArrayList<>();
        folder.items().values().forEach(i -> i.notes().ifPresent(t -> records.add(field(i.places(), "notes", t))));
        folder.instruments()
                .values()
                .forEach(i -> i.notes().ifPresent(t -> records.add(field(i.places(), "notes", t))));
        List<ProseText> procedures = folder.methods().values().stream()
                .map(m -> ProseText.read(ProseSource.body(m.places().file().file(), m.procedureLine(), m.procedure())))
                .toList();
        List<ProseFault> faults = new ArrayList<>(faults(frontPage, resolver, Extent.ALL, folder.limits()));
        faults.addAll(faults(records, resolver, Extent.LINKS_AND_CLAIMS, folder.limits()));
        faults.addAll(faults(procedures, resolver, Extent.LINKS, folder.limits()));
        return faults;
    }

    private static ProseText field(Places places, String path, String text) {
        return ProseText.read(ProseSource.field(places, path, text, ProseSource.Form.BLOCK));
    }

    private static List<ProseFault> faults(
            List<ProseText> texts, EvidenceResolver resolver, Extent extent, Limits limits) {
        Verification verification = Verification.of(resolver, limits);
        return texts.stream()
                .flatMap(t -> verification.verify(t, extent).stream())
                .sorted()
                .distinct()
                .toList();
    }

    static Finding finding(ProseFault fault, Subject subject, Words words) {
        ProseRule rule = RULES.get(fault.rule());
        Severity severity = Catalogue.find(fault.rule())
                .map(RuleFacts::severity)
                .orElseThrow(() -> new IllegalStateException("no rule " + fault.rule()));
        String message = fault.computed().isEmpty()
                ? fault.message()
                : words.say("prose.computed", fault.message(), fault.computed());
        return new Finding(
                fault.rule(),
                severity,
                Outcome.FOUND,
                fault.place(),
                subject,
                message,
                Optional.empty(),
                rule == null ? "" : rule.consequence(words),
                fault.remedy(),
                Optional.empty());
    }
}
