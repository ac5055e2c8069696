package org.evenhand.page.overview;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.evenhand.check.CheckedStudy;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.model.Publication;
import org.evenhand.model.Run;
import org.evenhand.model.Study;
import org.evenhand.page.Directory;
import org.evenhand.page.Href;
import org.evenhand.page.Made;
import org.evenhand.page.MediaTypes;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Link;
import org.evenhand.words.Words;

/**
 * The metadata of the site as one research object: what it is, whose, under which licence, and each data file with its
 * size and digest. Source: RO-Crate 1.2, an attached package.
 */
public final class Crate {

    public static final String PATH = "ro-crate-metadata.json";

    private static final String CONFORMS_TO = "https://w3id.org/ro/crate/1.2";
    private static final String PUBLISHER = "#publisher";
    private static final String GENERATOR = "#generator";
    private static final String MADE = "#made";
    private static final String LICENCE = "#licence";

    private final PageContext context;
    private final Made made;
    private final List<Map<String, Object>> graph = new ArrayList<>();
    private final Set<String> people = new LinkedHashSet<>();

    private Crate(PageContext context, Made made) {
        this.context = context;
        this.made = made;
    }

    /** @param made all files of the site but this one */
    public static void build(PageContext context, Directory directory, History history, Made made, PageSink sink) {
        Crate crate = new Crate(context, made);
        crate.describe(directory, history);
        sink.put(PATH, crate.json());
    }

    private void describe(Directory directory, History history) {
        Publication publication = context.publication();
        graph.add(entity(PATH, "CreativeWork", "conformsTo", id(CONFORMS_TO), "about", id("./")));
        Map<String, Object> root = entity("./", "Dataset");
        graph.add(root);
        List<Object> parts = new ArrayList<>();
        for (CheckedStudy study : context.checked().studies().values()) {
            parts.add(id(answer(study, history)));
        }
        for (MeasuredRun run : directory.runs()) {
            parts.add(id(run(run.run())));
        }
        root.put("name", publication.title());
        root.put("description", description(publication, context.words()));
        root.put("datePublished", history.newest().map(Object::toString).orElse("1970-01-01"));
        root.put("url", publication.baseUrl());
        root.put("inLanguage", publication.language());
        root.put("license", id(licence()));
        root.put("publisher", id(PUBLISHER));
        root.put("hasPart", parts);
        root.put("mentions", List.of(id(MADE)));
        graph.add(entity(licence(), "CreativeWork", "name", publication.licence()));
        graph.add(entity(PUBLISHER, "Organization", "name", publication.publisher()));
        graph.add(entity(GENERATOR, "SoftwareApplication", "name", context.generator()));
        graph.add(entity(
                MADE,
                "CreateAction",
                "name",
                context.words().say("overview.made"),
                "instrument",
                id(GENERATOR),
                "result",
                id("./")));
        people.forEach(name -> graph.add(entity(person(name), "Person", "name", name)));
    }

    /** What the site is, in a sentence or two. */
    static String description(Publication publication, Words words) {
        return words.say(publication.invented() ? "overview.dataset-invented" : "overview.dataset");
    }

    private String answer(CheckedStudy checked, History history) {
        Study study = checked.evidence().study();
        String folder = folder(Address.answer(study.id()));
        Map<String, Object> answer = entity(folder, "Dataset", "name", study.question());
        if (!checked.isWithheld()) {
            study.shortAnswer()
                    .map(text -> context.prose().plain(text, Optional.of(checked)))
                    .ifPresent(text -> answer.put("description", text));
        }
        answer.put("creativeWorkStatus", Directory.status(checked));
        study.answered().ifPresent(on -> answer.put("datePublished", on.toString()));
        history.newest(study.id()).ifPresent(on -> answer.put("dateModified", on.toString()));
        people.addAll(study.authors());
        if (!study.authors().isEmpty()) {
            answer.put(
                    "author", study.authors().stream().map(a -> id(person(a))).toList());
        }
        graph.add(answer);
        answer.put("hasPart", files(Address.answer(study.id())));
        return folder;
    }

    private String run(Run run) {
        String page = Address.run(run.study(), run.id());
        Map<String, Object> entity =
                entity(folder(page), "Dataset", "name", context.words().say("overview.run-of", run.id(), run.study()));
        run.started().ifPresent(at -> entity.put("dateCreated", at.toInstant().toString()));
        run.doneBy().ifPresent(name -> {
            people.add(name);
            entity.put("author", id(person(name)));
        });
        graph.add(entity);
        entity.put("hasPart", files(page));
        return folder(page);
    }

    /** The data files beside a page, each described. */
    private List<Object> files(String page) {
        String folder = page.substring(0, page.lastIndexOf('/') + 1);
        List<Object> parts = new ArrayList<>();
        made.files().subMap(folder, folder + Character.MAX_VALUE).forEach((path, file) -> {
            if (!path.equals(page)) {
                graph.add(entity(
                        Href.of(path),
                        "File",
                        "name",
                        path.substring(folder.length()),
                        "encodingFormat",
                        MediaTypes.of(path),
                        "contentSize",
                        Long.toString(file.size()),
                        "sha256",
                        file.sha256()));
                parts.add(id(Href.of(path)));
            }
        });
        return parts;
    }

    private String licence() {
        Link licence = context.frames().licence();
        return licence.href().isEmpty() ? LICENCE : licence.href();
    }

    private static String folder(String page) {
        return Href.of(page.substring(0, page.lastIndexOf('/') + 1));
    }

    private static String person(String name) {
        return "#person-" + Href.of(Address.slug(name));
    }

    private static Map<String, Object> id(String id) {
        return Map.of("@id", id);
    }

    private static Map<String, Object> entity(String id, String type, Object... properties) {
        Map<String, Object> entity = new LinkedHashMap<>();
        entity.put("@id", id);
        entity.put("@type", type);
        for (int i = 0; i < properties.length; i += 2) {
            entity.put((String) properties[i], properties[i + 1]);
        }
        return entity;
    }

    private byte[] json() {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("@context", CONFORMS_TO + "/context");
        document.put("@graph", graph);
        return JsonFile.of(document);
    }
}
