package org.evenhand.page.answer;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenhand.page.FileRows;
import org.evenhand.page.view.FileRow;
import org.evenhand.words.Words;

/**
 * The data beside a page.
 *
 * @param byName bytes by the name of the file
 */
record EvidenceFiles(SortedMap<String, byte[]> byName) {

    static final String JSON = "evidence.json";
    static final String LEVELS = "levels.csv";
    static final String COMPARISONS = "comparisons.csv";
    static final String RUNS = "runs.csv";

    EvidenceFiles {
        byName = Collections.unmodifiableSortedMap(byName);
    }

    static EvidenceFiles of(Answer answer) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put(JSON, EvidenceJson.of(answer));
        if (!answer.checked().isWithheld() && !answer.evidence().runs().isEmpty()) {
            files.put(LEVELS, EvidenceTables.levels(answer));
            files.put(RUNS, EvidenceTables.runs(answer));
            if (!answer.evidence().comparisons().isEmpty()) {
                files.put(COMPARISONS, EvidenceTables.comparisons(answer));
            }
        }
        return new EvidenceFiles(files);
    }

    List<FileRow> rows(Answer answer) {
        return byName.entrySet().stream()
                .map(e -> FileRows.of(
                        answer.beside(e.getKey()), what(e.getKey(), answer.words()), e.getValue(), answer.words()))
                .toList();
    }

    static String what(String name, Words words) {
        return words.say(
                switch (name) {
                    case JSON -> "table.all-evidence";
                    case LEVELS -> "table.levels";
                    case COMPARISONS -> "table.comparisons";
                    default -> "table.runs";
                });
    }
}
