package org.evenhand.check;

import java.util.List;
import java.util.SortedMap;
import org.evenhand.model.Finding;
import org.evenhand.model.ResultsFolder;

/**
 * A results folder with everything that was found.
 *
 * @param folder what was read
 * @param studies those that could be read, by id
 * @param findings all of them, sorted, each once
 */
public record CheckedFolder(ResultsFolder folder, SortedMap<String, CheckedStudy> studies, List<Finding> findings) {

    public CheckedFolder {
        findings = List.copyOf(findings);
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
