package org.evenhand.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.compare.Verdict;
import org.evenhand.model.Comparison;
import org.evenhand.model.Finding;
import org.evenhand.model.Outcome;
import org.evenhand.model.Severity;
import org.evenhand.prose.ProseFault;

/**
 * A study with what was found, and what follows from it.
 *
 * @param evidence its figures
 * @param findings on it, its runs and comparisons, sorted
 * @param corrections of its texts, where it is plain what would be right
 * @param moved figures that read otherwise than in the former publication it was held against
 * @param movedSentences those of its sentences that are linked to them
 */
public record CheckedStudy(
        StudyEvidence evidence,
        List<Finding> findings,
        List<ProseFault.Correction> corrections,
        List<MovedFigures.Moved> moved,
        List<MovedSentence> movedSentences) {

    public CheckedStudy {
        findings = List.copyOf(findings);
        corrections = List.copyOf(corrections);
        moved = List.copyOf(moved);
        movedSentences = List.copyOf(movedSentences);
    }

    /** Whether the study is not published. */
    public boolean isWithheld() {
        return findings.stream().anyMatch(Finding::withholds);
    }

    /** The findings for which a comparison may not be made; empty if it may. */
    public List<Finding> refusals(String comparison) {
        return findings.stream()
                .filter(f -> f.severity() == Severity.REFUSE && f.outcome() == Outcome.FOUND)
                .filter(f -> f.subject().comparison().map(comparison::equals).orElse(false))
                .toList();
    }

    /** The verdict that stands: a comparison that may not be made is not comparable, whatever its figures say. */
    public Optional<Verdict> verdict(ComparisonResult result) {
        if (!refusals(result.plan().id()).isEmpty()) {
            return Optional.of(Verdict.NOT_COMPARABLE);
        }
        boolean ofRefused =
                result.plan().of().stream().anyMatch(of -> !refusals(of).isEmpty());
        return ofRefused ? Optional.of(Verdict.NOT_COMPARABLE) : result.verdict();
    }

    /** What travels with a comparison: caveats on it, on its runs, and on the whole study. */
    public List<Finding> caveats(Comparison plan) {
        Set<String> levels = evidence.study().levels().stream()
                .filter(l -> plan.level().isEmpty()
                        || plan.level().get().equals(l)
                        || plan.against().filter(l::equals).isPresent())
                .collect(Collectors.toSet());
        return caveatsWhere(f -> plan.measurand().map(f.subject()::touches).orElse(true)
                && f.subject()
                        .comparison()
                        .map(plan.id()::equals)
                        .orElse(f.subject().run().isEmpty() || isRunAt(f, levels)));
    }

    /** What travels with a level's figure: caveats on its runs and on the whole study. */
    public List<Finding> caveats(LevelSummary summary) {
        return caveatsWhere(f -> f.subject().comparison().isEmpty()
                && f.subject().touches(summary.measurand())
                && f.subject().run().map(summary.runs()::contains).orElse(true));
    }

    private boolean isRunAt(Finding finding, Set<String> levels) {
        return evidence.runs().stream()
                .anyMatch(r ->
                        finding.subject().run().filter(r.run().id()::equals).isPresent() && levels.contains(r.level()));
    }

    private List<Finding> caveatsWhere(java.util.function.Predicate<Finding> condition) {
        return findings.stream()
                .filter(f -> f.severity() == Severity.CAVEAT && f.outcome() != Outcome.NOT_CHECKABLE)
                .filter(condition)
                .toList();
    }
}
