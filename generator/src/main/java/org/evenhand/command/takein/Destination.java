package org.evenhand.command.takein;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.evenhand.command.UnusableException;
import org.evenhand.model.Limits;
import org.evenhand.model.Method;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Study;
import org.evenhand.read.FolderReader;
import org.evenhand.read.NearMiss;

/**
 * Where runs are taken in.
 *
 * @param root the results folder
 * @param folder what it says
 * @param study whose runs they become
 * @param method by which they were done
 */
record Destination(Path root, ResultsFolder folder, Study study, Method method) {

    static Destination of(Path root, String study, String method, Limits limits) {
        if (!Files.isDirectory(root)) {
            throw new UnusableException("there is no folder " + root + "; “evenhand start " + root + "” makes one");
        }
        ResultsFolder folder = FolderReader.read(root, limits);
        Study found = study(root, folder, study);
        String id = method == null ? found.methods().get(0) : method;
        if (!found.methods().contains(id)) {
            throw new UnusableException("the study “" + found.id() + "” is not done by “" + id + "”; "
                    + NearMiss.suggestion(id, found.methods()));
        }
        return new Destination(root, folder, found, folder.methods().get(id));
    }

    private static Study study(Path root, ResultsFolder folder, String id) {
        if (id == null) {
            if (folder.studies().size() == 1 && folder.broken().isEmpty()) {
                return folder.studies().get(folder.studies().firstKey());
            }
            String known = String.join(", ", folder.studies().keySet());
            throw new UnusableException("say whose runs these are with --study"
                    + (known.isEmpty()
                            ? "; “evenhand check " + root + "” says why none can be read"
                            : ", one of: " + known));
        }
        if (folder.broken().contains(id)) {
            throw new UnusableException(
                    "the study “" + id + "” has faults; “evenhand check " + root + "” says which, mend them first");
        }
        Study study = folder.studies().get(id);
        if (study == null) {
            throw new UnusableException("there is no study “" + id + "” in " + root + "; "
                    + NearMiss.suggestion(id, folder.studies().keySet()));
        }
        return study;
    }

    /** The item that all runs of the study, or else all of the folder, are of. */
    Optional<String> onlyItem() {
        List<String> ofRuns =
                study.runs().stream().map(r -> r.item()).distinct().toList();
        List<String> candidates = ofRuns.isEmpty() ? List.copyOf(folder.items().keySet()) : ofRuns;
        return candidates.size() == 1 ? Optional.of(candidates.get(0)) : Optional.empty();
    }

    /** A file of the study, by its path within the study's folder. */
    Path of(String path) {
        return root.resolve("studies").resolve(study.id()).resolve(path);
    }
}
