package org.evenhand.page.overview;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.TreeSet;
import org.evenhand.model.Publication;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;

/** How the site as a whole is cited. Source: Citation File Format 1.2.0. */
public final class Citation {

    static final String PATH = "CITATION.cff";

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private Citation() {}

    public static void build(PageContext context, History history, PageSink sink) {
        Publication publication = context.publication();
        Set<String> people = new TreeSet<>();
        context.checked()
                .studies()
                .values()
                .forEach(study -> people.addAll(study.evidence().study().authors()));
        people.add(publication.publisher());
        StringBuilder cff = new StringBuilder("cff-version: 1.2.0\n");
        cff.append("message: ").append(context.words().say("overview.cite")).append('\n');
        cff.append("type: dataset\n");
        field(cff, "title", publication.title());
        field(cff, "abstract", Crate.description(publication, context.words()));
        cff.append("authors:\n");
        // Names are written as their bearers give them: which part is the family's is not ours to guess.
        people.forEach(name -> field(cff, "  - name", name));
        field(cff, "url", publication.baseUrl());
        if (!context.frames().licence().href().isEmpty()) {
            field(cff, "license", publication.licence());
        }
        history.newest().ifPresent(on -> field(cff, "date-released", on.toString()));
        sink.put(PATH, cff.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** A string of JSON is one of YAML, whatever is in it. */
    private static void field(StringBuilder cff, String name, String value) {
        try {
            cff.append(name).append(": ").append(JSON.writeValueAsString(value)).append('\n');
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
