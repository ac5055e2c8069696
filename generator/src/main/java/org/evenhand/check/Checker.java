package org.evenhand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.measure.Measurements;
import org.evenhand.model.Finding;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Study;
import org.evenhand.model.Subject;
import org.evenhand.model.Waiver;
import org.evenhand.prose.Names;
import org.evenhand.prose.ProseFault;
import org.evenhand.prose.StudyResolver;
import org.evenhand.read.FormerAnswer;
import org.evenhand.words.Words;

/** Applies every rule to every study. */
public final class Checker {

    private Checker() {}

    /**
     * Checks a folder.
     *
     * @param folder what was read, with the findings of reading
     * @param measured the values of all runs, with the findings of measuring
     * @param evidence of each study, by id
     * @param former the answer of a study as it was published before, to hold the figures against
     */
    public static CheckedFolder check(
            ResultsFolder folder,
            Measurements measured,
            SortedMap<String, StudyEvidence> evidence,
            Function<Study, Optional<FormerAnswer>> former) {
        List<Finding> all = new ArrayList<>(folder.findings());
        all.addAll(measured.findings());
        List<ProseFault> own = ProseChecks.ofFolder(folder);
        own.forEach(f -> all.add(ProseChecks.finding(f, Subject.PUBLICATION, words(folder))));
        Names names = StudyResolver.names(folder);
        SortedMap<String, CheckedStudy> studies = new TreeMap<>();
        evidence.forEach((id, study) -> {
            CheckedStudy checked = check(
                    new StudyView(
                            folder,
                            study,
                            measured,
                            former.apply(study.study()),
                            new StudyTexts(folder, study.study(), names),
                            ComparisonResult::verdict),
                    measured);
            studies.put(id, checked);
            all.addAll(checked.findings());
        });
        return new CheckedFolder(
                folder,
                studies,
                all.stream().sorted().distinct().toList(),
                own.stream().flatMap(f -> f.correction().stream()).toList());
    }

    private static CheckedStudy check(StudyView view, Measurements measured) {
        List<Finding> findings = new ArrayList<>();
        // What reading found of the study's own files, and what measuring found in its logs.
        Stream.concat(view.folder().findings().stream(), measured.findings().stream())
                .filter(f ->
                        f.subject().study().filter(view.study().id()::equals).isPresent())
                .forEach(findings::add);
        view.runs().forEach(r -> findings.addAll(r.measured().findings()));
        apply(view, false, findings);
        // What may be said of a comparison is known only now that all refusals are.
        CheckedStudy soFar = new CheckedStudy(view.evidence(), findings, List.of(), List.of(), List.of());
        StudyView judged = view.judged(soFar::verdict);
        apply(judged, true, findings);
        List<MovedFigures.Moved> moved = judged.movedFigures();
        List<ProseFault> faults = ProseChecks.faults(judged);
        faults.forEach(f -> findings.add(waived(view, ProseChecks.finding(f, view.subject(), words(view.folder())))));
        return new CheckedStudy(
                view.evidence(),
                findings.stream().sorted().distinct().toList(),
                faults.stream().flatMap(f -> f.correction().stream()).toList(),
                moved,
                MovedSentence.in(judged, moved, faults));
    }

    /** Those of the language that a folder publishes in. */
    static Words words(ResultsFolder folder) {
        return Words.of(folder.publication());
    }

    private static void apply(StudyView view, boolean withVerdicts, List<Finding> findings) {
        for (Rule rule : Catalogue.RULES) {
            if (rule.needsVerdicts() == withVerdicts) {
                Report report = new Report(rule.facts(), view.folder().publication());
                rule.check(view, report);
                report.findings().forEach(f -> findings.add(waived(view, f)));
            }
        }
    }

    /** The finding, waived if the study or the run that it is about waives its rule. */
    static Finding waived(StudyView view, Finding finding) {
        if (finding.outcome() != org.evenhand.model.Outcome.FOUND) {
            return finding;
        }
        Study study = view.study();
        Stream<Waiver> ofRun = view.runs().stream()
                .filter(r ->
                        finding.subject().run().filter(r.run().id()::equals).isPresent())
                .map(LevelRun::run)
                .flatMap(r -> r.waivers().stream());
        Optional<Waiver> waiver = Stream.concat(ofRun, study.waivers().stream())
                .filter(w -> w.rule().equals(finding.rule()))
                .findFirst();
        return waiver.map(finding::waivedBy).orElse(finding);
    }
}
