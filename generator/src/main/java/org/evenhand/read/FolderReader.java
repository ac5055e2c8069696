package org.evenhand.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.evenhand.model.Finding;
import org.evenhand.model.Instrument;
import org.evenhand.model.Item;
import org.evenhand.model.Limits;
import org.evenhand.model.Method;
import org.evenhand.model.Place;
import org.evenhand.model.Publication;
import org.evenhand.model.Quota;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.evenhand.model.Study;

/** Reads a results folder whole, with all that is wrong with it. */
public final class FolderReader {

    private static final List<String> STRUCTURED = List.of(".yaml", ".yml", ".json");

    private final Limits limits;
    private final Faults faults = new Faults();
    private final SortedMap<String, String> digests = new TreeMap<>();
    private FolderPaths paths;

    private FolderReader(Limits limits) {
        this.limits = limits;
    }

    /**
     * Reads the folder. Never throws for anything that is in it.
     *
     * @param root the results folder
     * @return what could be read, and findings for what could not
     */
    public static ResultsFolder read(Path root) {
        return read(root, Limits.DEFAULT);
    }

    /** The same with limits of the caller's own. */
    public static ResultsFolder read(Path root, Limits limits) {
        return new FolderReader(limits).readAll(root);
    }

    private ResultsFolder readAll(Path root) {
        try {
            if (!Files.isDirectory(root)) {
                return nothing("there is no such folder", "check the path, capitals included");
            }
            paths = new FolderPaths(root, limits);
        } catch (IOException e) {
            return nothing("the folder cannot be read", "check that you may read it");
        }
        Optional<Publication> publication = publication();
        SortedSet<String> brokenParts = new TreeSet<>();
        SortedMap<String, Item> items = readKind(
                "items",
                STRUCTURED,
                ItemFile.SHAPE,
                ItemFile::checkTogether,
                "item",
                d -> ItemFile.bind(d.fields()),
                brokenParts);
        SortedMap<String, Instrument> instruments = readKind(
                "instruments",
                STRUCTURED,
                InstrumentFile.SHAPE,
                (f, x) -> {},
                "instrument",
                d -> InstrumentFile.bind(d.fields()),
                brokenParts);
        SortedMap<String, Method> methods = readKind(
                "methods",
                List.of(".md"),
                MethodFile.SHAPE,
                (f, x) -> {},
                "method",
                d -> MethodFile.bind(d.fields(), d.body(), d.bodyLine()),
                brokenParts);
        new MethodLinker(faults).link(methods, brokenParts);
        Named known = new Named(items, instruments, methods, brokenParts);
        SortedSet<String> broken = new TreeSet<>();
        SortedMap<String, Study> studies = studies(known, broken);
        SortedMap<String, Study> linked = new StudyLinker(known, faults).link(studies, broken);
        List<Run> brokenRuns = studies.values().stream()
                .filter(s -> broken.contains(s.id()))
                .flatMap(s -> s.runs().stream())
                .toList();
        return new ResultsFolder(
                publication,
                items,
                instruments,
                methods,
                linked,
                broken,
                brokenRuns,
                Seals.of(root.resolve(Seals.FOLDER)),
                sorted(),
                digests,
                limits);
    }

    private ResultsFolder nothing(String message, String remedy) {
        faults.add(Rules.FILE_UNREADABLE, Place.of("."), message, remedy);
        return new ResultsFolder(
                Optional.empty(),
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeSet<>(),
                List.of(),
                new TreeMap<>(),
                sorted(),
                digests,
                limits);
    }

    private List<Finding> sorted() {
        return faults.findings().stream().sorted().distinct().toList();
    }

    private Optional<Publication> publication() {
        List<String> found = STRUCTURED.stream()
                .map(ending -> "publication" + ending)
                .filter(paths::isFile)
                .toList();
        if (found.isEmpty()) {
            faults.add(
                    Rules.FILE_UNREADABLE,
                    Place.of("publication.yaml"),
                    "there is no publication.yaml: this does not seem to be a results folder",
                    "give the folder that holds publication.yaml, or write one with title, publisher, base-url and licence");
            return Optional.empty();
        }
        if (found.size() > 1) {
            faults.add(
                    Rules.ID_COLLISION,
                    Place.of(found.get(1)),
                    "the publication is described twice, in " + String.join(" and ", found),
                    "keep one of the files");
        }
        return document(found.get(0), PublicationFile.SHAPE, (f, x) -> {}).map(d -> PublicationFile.bind(d.fields()));
    }

    private Optional<Document> document(String file, Shape shape, Document.TogetherCheck together) {
        if (!paths.isInside(file, faults)) {
            return Optional.empty();
        }
        int before = faults.count();
        Optional<Document> document = Document.read(paths.root(), file, shape, together, limits, faults);
        document.ifPresent(this::checkPictures);
        document.ifPresent(d -> digests.put(file, d.sha256()));
        return document.filter(d -> faults.count() == before);
    }

    private void checkPictures(Document document) {
        for (Fields picture : document.fields().groups("pictures")) {
            Node.Text text = (Node.Text) picture.node("file");
            paths.resolve(document.file(), text, faults)
                    .filter(file -> !paths.isFile(file))
                    .ifPresent(file -> faults.add(
                            Rules.REFERENCE_UNRESOLVED,
                            text.place(),
                            "there is no picture “" + file + "”",
                            "check the name, capitals included; the path is relative to this file"));
        }
    }

    private <T> SortedMap<String, T> readKind(
            String folder,
            List<String> endings,
            Shape shape,
            Document.TogetherCheck together,
            String idField,
            Function<Document, T> binding,
            SortedSet<String> broken) {
        SortedMap<String, T> result = new TreeMap<>();
        Map<String, String> byLowerCase = new LinkedHashMap<>();
        for (String name : paths.names(folder, faults)) {
            String file = folder + "/" + name;
            Optional<String> ending = endings.stream().filter(name::endsWith).findFirst();
            if (ending.isEmpty()) {
                if (!paths.isFolder(file)) {
                    passOver(file, endings);
                }
                continue;
            }
            String id = name.substring(0, name.length() - ending.get().length());
            boolean collides = collides(byLowerCase, id, file);
            Optional<Document> document = document(file, shape, together);
            if (collides || document.isEmpty() || !isNamedAlike(document.get(), idField, id)) {
                broken.add(folder + "/" + id);
            } else {
                result.put(id, binding.apply(document.get()));
            }
        }
        result.keySet().removeIf(id -> broken.contains(folder + "/" + id)); // neither of two can be meant
        return result;
    }

    private void passOver(String file, List<String> endings) {
        faults.note(
                Rules.FILE_UNREADABLE,
                Place.of(file),
                "this file is passed over: nothing reads it",
                "files here end in " + String.join(", ", endings) + "; keep other things elsewhere");
    }

    private boolean isNamedAlike(Document document, String idField, String id) {
        String written = document.fields().text(idField);
        if (written.equals(id)) {
            return true;
        }
        faults.add(
                Rules.REFERENCE_UNRESOLVED,
                document.fields().places().of(idField),
                "the file is called “" + id + "”, but names itself “" + written + "”",
                "give both the same name");
        return false;
    }

    private boolean collides(Map<String, String> byLowerCase, String id, String file) {
        String before = byLowerCase.putIfAbsent(id.toLowerCase(java.util.Locale.ROOT), file);
        if (before == null) {
            return false;
        }
        faults.add(
                Rules.ID_COLLISION,
                Place.of(file),
                "“" + id + "” is also the name of " + before + ", as far as addresses can tell",
                "rename one of the two; names that differ in capitals alone are the same to many file systems");
        return true;
    }

    private SortedMap<String, Study> studies(Named known, SortedSet<String> broken) {
        SortedMap<String, Study> result = new TreeMap<>();
        Map<String, String> byLowerCase = new LinkedHashMap<>();
        for (String id : paths.names("studies", faults)) {
            String folder = "studies/" + id;
            if (!paths.isFolder(folder)) {
                passOver(folder, List.of("/study.md"));
                continue;
            }
            if (!Scalars.ID.matcher(id).matches()) {
                faults.add(
                        Scalars.ID.matcher(LookAlike.seen(id)).matches() ? Rules.TEXT_DECEPTIVE : Rules.FIELD_MALFORMED,
                        Place.of(folder),
                        "“" + id + "” cannot be the name of a study",
                        "name the folder with small letters, digits and hyphens");
                continue;
            }
            int before = faults.count();
            Optional<Document> document = document(folder + "/study.md", StudyFile.SHAPE, StudyFile::checkTogether);
            List<Document> runs = new ArrayList<>(runDocuments(folder));
            boolean named = document.isPresent() && isNamedAlike(document.get(), "study", id);
            if (collides(byLowerCase, id, folder) || !named) {
                broken.add(id);
                continue;
            }
            Study study = new RunLinker(known, paths, limits, faults).bind(document.get(), runs);
            refuseTooMany(study);
            result.put(id, study);
            if (hasFault(before)) {
                broken.add(id);
            }
        }
        return result;
    }

    /** Run files alone are counted before they are read; here all that belongs to a study. */
    private void refuseTooMany(Study study) {
        long logs = study.runs().stream().filter(r -> r.log().isPresent()).count();
        long pictures = study.pictures().size()
                + study.runs().stream().mapToLong(r -> r.pictures().size()).sum();
        long files = 1 + study.runs().size() + logs + pictures;
        if (files > limits.of(Quota.STUDY_FILES)) {
            UnreadableException.tooMuch(
                            study.places().file(),
                            "the study has " + files + " files",
                            limits,
                            Quota.STUDY_FILES,
                            "divide it into several")
                    .reportTo(faults);
        }
    }

    private boolean hasFault(int since) {
        return faults.findings().stream()
                .skip(since)
                .anyMatch(f -> f.severity() == org.evenhand.model.Severity.WITHHOLD);
    }

    private List<Document> runDocuments(String folder) {
        List<Document> documents = new ArrayList<>();
        Map<String, String> byLowerCase = new LinkedHashMap<>();
        for (String name : paths.names(folder + "/runs", Quota.STUDY_RUNS, faults)) {
            String file = folder + "/runs/" + name;
            Optional<String> ending = STRUCTURED.stream().filter(name::endsWith).findFirst();
            if (ending.isEmpty()) {
                passOver(file, STRUCTURED);
                continue;
            }
            String id = name.substring(0, name.length() - ending.get().length());
            boolean collides = collides(byLowerCase, id, file);
            Optional<Document> document = document(file, RunFile.SHAPE, RunFile::checkTogether);
            if (!collides && document.isPresent() && isNamedAlike(document.get(), "run", id)) {
                documents.add(document.get());
            }
        }
        return documents;
    }
}
