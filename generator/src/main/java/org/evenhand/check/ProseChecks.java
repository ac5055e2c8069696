package org.evenhand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenhand.check.rule.ProseRules;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Verdict;
import org.evenhand.model.Finding;
import org.evenhand.model.Outcome;
import org.evenhand.model.Publication;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.prose.EvidenceResolver;
import org.evenhand.prose.Prose;
import org.evenhand.prose.ProseFault;
import org.evenhand.prose.ProseSource;
import org.evenhand.prose.StudyResolver;
import org.evenhand.prose.Verification;
import org.evenhand.read.Rules;

/** Holds the texts of a study, and those of the front page, against the figures. */
final class ProseChecks {

    private static final Map<String, ProseRule> RULES =
            ProseRules.OF_WORDS.stream().collect(Collectors.toMap(r -> r.facts().id(), Function.identity()));

    private ProseChecks() {}

    /**
     * What is wrong with the texts of a study.
     *
     * @param verdict of each comparison, refusals included
     */
    static List<ProseFault> faults(StudyView view, Function<ComparisonResult, Optional<Verdict>> verdict) {
        return faults(StudyTexts.of(view.study()), StudyResolver.of(view.folder(), view.evidence(), verdict));
    }

    /** What is wrong with the words of the front page, as findings. */
    static List<Finding> ofFrontPage(ResultsFolder folder) {
        Optional<Publication> publication =
                folder.publication().filter(p -> p.about().isPresent());
        if (publication.isEmpty()) {
            return List.of();
        }
        ProseSource about = ProseSource.field(
                publication.get().places().of("about"),
                publication.get().about().get(),
                ProseSource.Form.BLOCK);
        return faults(List.of(about), StudyResolver.withoutStudy(folder)).stream()
                .map(f -> finding(f, Subject.PUBLICATION))
                .toList();
    }

    private static List<ProseFault> faults(List<ProseSource> texts, EvidenceResolver resolver) {
        Verification verification = Verification.of(resolver);
        List<ProseFault> faults = new ArrayList<>();
        for (ProseSource text : texts) {
            // Active content is looked for in every text of the folder by a rule of its own.
            Stream<ProseFault> addresses = Prose.render(text, resolver, target -> "#", 0).faults().stream()
                    .filter(f -> f.rule().equals(Rules.REFERENCE_UNRESOLVED));
            Stream.concat(addresses, verification.verify(text).stream()).forEach(faults::add);
        }
        return faults.stream().sorted().distinct().toList();
    }

    static Finding finding(ProseFault fault, Subject subject) {
        ProseRule rule = RULES.get(fault.rule());
        Severity severity = Catalogue.find(fault.rule())
                .map(RuleFacts::severity)
                .orElseThrow(() -> new IllegalStateException("no rule " + fault.rule()));
        String computed = fault.computed().isEmpty() ? "" : "; computed: " + fault.computed();
        return new Finding(
                fault.rule(),
                severity,
                Outcome.FOUND,
                fault.place(),
                subject,
                fault.message() + computed,
                Optional.empty(),
                rule == null ? "" : rule.consequence(),
                fault.remedy(),
                Optional.empty());
    }
}
