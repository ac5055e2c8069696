package org.evenhand.page.overview;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenhand.check.CheckedStudy;
import org.evenhand.model.Publication;
import org.evenhand.model.Study;
import org.evenhand.page.Href;
import org.evenhand.page.Made;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.SiteFile;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Link;

/**
 * The tables of all answers as one package of data, each column with its type and meaning. Source: Data Package and Table
 * Schema, version 2.0 (datapackage.org).
 */
public final class DataPackage {

    public static final String PATH = "datapackage.json";

    private static final String PROFILES = "https://datapackage.org/profiles/2.0/";

    private DataPackage() {}

    /** @param made all files beside the answers */
    public static void build(PageContext context, History history, Made made, PageSink sink) {
        List<Object> resources = new ArrayList<>();
        for (CheckedStudy checked : context.checked().studies().values()) {
            Study study = checked.evidence().study();
            for (String file : List.of("levels.csv", "comparisons.csv", "runs.csv")) {
                String path = Address.answer(study.id()).replace(Address.INDEX, file);
                SiteFile bytes = made.files().get(path);
                if (bytes != null) {
                    resources.add(resource(context, study, file, path, bytes));
                }
            }
        }
        // A package without a table is none.
        if (!resources.isEmpty()) {
            sink.put(PATH, JsonFile.of(described(context, history, resources)));
        }
    }

    private static Map<String, Object> described(PageContext context, History history, List<Object> resources) {
        Publication publication = context.publication();
        Map<String, Object> described = new LinkedHashMap<>();
        described.put("$schema", PROFILES + "datapackage.json");
        described.put("name", Address.slug(publication.title()));
        described.put("id", publication.baseUrl());
        described.put("title", publication.title());
        described.put("description", Crate.description(publication, context.words()));
        described.put("homepage", publication.baseUrl());
        history.newest().ifPresent(on -> described.put("created", on + "T00:00:00Z"));
        Link licence = context.frames().licence();
        described.put(
                "licenses",
                List.of(
                        licence.href().isEmpty()
                                ? Map.of("name", licence.text())
                                : ordered("name", licence.text(), "path", licence.href())));
        described.put(
                "contributors", List.of(ordered("title", publication.publisher(), "roles", List.of("publisher"))));
        described.put("resources", resources);
        return described;
    }

    private static Map<String, Object> resource(
            PageContext context, Study study, String file, String path, SiteFile bytes) {
        Map<String, Object> schema = ordered(
                "$schema",
                PROFILES + "tableschema.json",
                "fields",
                CsvFields.BY_FILE.get(file).stream().map(DataPackage::field).toList(),
                "fieldsMatch",
                "exact",
                "missingValues",
                List.of(""),
                "primaryKey",
                CsvFields.key(file));
        return ordered(
                "name",
                study.id() + "-" + file.replace(".csv", ""),
                "title",
                study.question() + " (" + file + ")",
                "homepage",
                context.frames().permanent(Address.answer(study.id())),
                "path",
                Href.of(path),
                "type",
                "table",
                "format",
                "csv",
                "mediatype",
                "text/csv",
                "encoding",
                "utf-8",
                "bytes",
                bytes.size(),
                "hash",
                "sha256:" + bytes.sha256(),
                "schema",
                schema);
    }

    private static Map<String, Object> field(CsvFields.Field field) {
        Map<String, Object> described =
                ordered("name", field.name(), "type", field.type(), "description", field.meaning());
        if (field.type().equals("boolean")) {
            described.put("trueValues", List.of("yes"));
            described.put("falseValues", List.of("no"));
        }
        return described;
    }

    private static Map<String, Object> ordered(Object... properties) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < properties.length; i += 2) {
            map.put((String) properties[i], properties[i + 1]);
        }
        return map;
    }
}
