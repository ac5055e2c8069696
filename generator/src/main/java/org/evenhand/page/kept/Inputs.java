package org.evenhand.page.kept;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.CheckedStudy;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Places;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.evenhand.page.FileRows;
import org.evenhand.page.RawFile;
import org.evenhand.words.Words;

/**
 * What an answer was made from.
 *
 * @param checked the folder
 * @param root where it lies
 */
record Inputs(CheckedFolder checked, Path root) {

    /** Digests of all files that an answer rests on, by their path within the results folder. */
    SortedMap<String, String> of(CheckedStudy study) {
        ResultsFolder folder = checked.folder();
        SortedMap<String, String> digests = new TreeMap<>();
        folder.publication().ifPresent(p -> add(p.places(), digests));
        add(study.evidence().study().places(), digests);
        study.evidence()
                .study()
                .methods()
                .forEach(m -> add(folder.methods().get(m).places(), digests));
        for (LevelRun run : study.evidence().runs()) {
            Run of = run.run();
            RawFile.ofRun(run.measured(), Words.english()).forEach(raw -> add(raw, digests));
            add(folder.items().get(of.item()).places(), digests);
            add(folder.methods().get(of.method()).places(), digests);
            of.instruments().values().stream()
                    .flatMap(i -> Optional.ofNullable(folder.instruments().get(i)).stream())
                    .forEach(i -> add(i.places(), digests));
        }
        return digests;
    }

    private void add(Places places, SortedMap<String, String> digests) {
        String file = places.file().file();
        add(new RawFile(file, file, "", Optional.empty()), digests);
    }

    private void add(RawFile raw, SortedMap<String, String> digests) {
        try {
            digests.put(raw.file(), FileRows.sha256(root, raw));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
