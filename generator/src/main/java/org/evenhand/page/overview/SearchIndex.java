package org.evenhand.page.overview;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.evenhand.check.Catalogue;
import org.evenhand.check.CheckedStudy;
import org.evenhand.model.Finding;
import org.evenhand.model.Outcome;
import org.evenhand.model.Severity;
import org.evenhand.page.Directory;
import org.evenhand.page.FindingViews;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.answer.AnswerPages;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.words.Names;

/**
 * What the search of the index looks through: items, methods, instruments, every figure of every answer, and caveats.
 * The questions themselves stand on the index already.
 *
 * <p>It is a script that hands a list over, and not a file of data, because a page opened from a folder may load the one
 * and not the other.
 */
public final class SearchIndex {

    /** Where it stands; the page loads it when somebody begins to search. */
    public static final String PATH = "search-index.js";

    private static final ObjectMapper JSON = new ObjectMapper();

    private final ArrayNode pages = JSON.createArrayNode();
    private final ArrayNode entries = JSON.createArrayNode();

    private SearchIndex() {}

    public static void build(PageContext context, PageSink sink) {
        SearchIndex index = new SearchIndex();
        var folder = context.checked().folder();
        folder.items().values().forEach(i -> index.page("item", i.name() + ", " + i.kind(), Address.item(i.id())));
        folder.methods().values().forEach(m -> index.page("method", m.title(), Address.method(m.id())));
        folder.instruments()
                .values()
                .forEach(i -> index.page("instrument", Names.instrument(i), Address.instrument(i.id())));
        context.checked().studies().values().forEach(study -> index.study(study, context));
        ObjectNode all = JSON.createObjectNode();
        all.set("pages", index.pages);
        all.set("entries", index.entries);
        // Escaped so that the text stays text wherever it is put.
        String text = all.toString()
                .replace("<", "\\u003c")
                .replace("\u2028", "\\u2028")
                .replace("\u2029", "\\u2029");
        sink.put(PATH, ("evenhandFind(" + text + ");\n").getBytes(StandardCharsets.UTF_8));
    }

    /** A page, which is found itself. */
    private void page(String kind, String title, String path) {
        pages.addArray().add(title).add(path);
        entry(kind, title, "");
    }

    /** A place on the page that was added last. */
    private void entry(String kind, String text, String id) {
        entries.addArray().add(kind).add(text).add(pages.size() - 1).add(id);
    }

    private void study(CheckedStudy study, PageContext context) {
        String page = Address.answer(study.evidence().study().id());
        pages.addArray()
                .add(Directory.question(study.evidence().study()).text())
                .add(page);
        if (!study.isWithheld()) {
            AnswerPages.figures(study, context).forEach((id, text) -> entry("figure", text, id));
        }
        for (Caveat caveat :
                FindingViews.of(page, study.findings(), context.words()).caveats(qualifying(study))) {
            String id = caveat.more().map(more -> more.href()).orElse("");
            entry(
                    "caveat",
                    name(caveat.rule(), context) + ": " + caveat.text(),
                    id.startsWith(page + "#") ? id.substring(page.length() + 1) : "");
        }
    }

    private static String name(String rule, PageContext context) {
        return Catalogue.find(rule).map(f -> f.name(context.words())).orElseGet(() -> Names.label(rule));
    }

    private static List<Finding> qualifying(CheckedStudy study) {
        return study.findings().stream()
                .filter(f -> f.severity() != Severity.NOTE && f.outcome() == Outcome.FOUND)
                .toList();
    }
}
