package org.evenhand.check;

import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.evenhand.model.Finding;
import org.evenhand.model.ResultsFolder;
import org.evenhand.prose.ProseFault.Correction;

/**
 * A results folder with everything that was found.
 *
 * @param folder what was read
 * @param studies those that could be read, by id
 * @param findings all of them, sorted, each once
 * @param ownCorrections of texts that belong to no study: the front page, items, instruments, methods
 */
public record CheckedFolder(
        ResultsFolder folder,
        SortedMap<String, CheckedStudy> studies,
        List<Finding> findings,
        List<Correction> ownCorrections) {

    public CheckedFolder {
        findings = List.copyOf(findings);
        ownCorrections = List.copyOf(ownCorrections);
    }

    /** Where it is plain what words would be right, in all texts. */
    public List<Correction> corrections() {
        return Stream.concat(ownCorrections.stream(), studies.values().stream().flatMap(s -> s.corrections().stream()))
                .toList();
    }

    /** Whether nothing at all can be published. */
    public boolean isUnusable() {
        return folder.publication().isEmpty();
    }

    /** Whether any finding keeps something from being published. A comparison that is refused is published as that. */
    public boolean withholds() {
        return findings.stream().anyMatch(Finding::withholds);
    }
}
