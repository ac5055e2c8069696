package org.evenhand.page.kept;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.evenhand.model.Seal;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.GonePage;
import org.evenhand.page.view.Link;

/** A page for each address that was published and whose subject is gone: addresses never break. */
final class GonePages {

    private static final Map<String, String> KINDS = Map.of(
            "answers", "answer",
            "runs", "run",
            "items", "test item",
            "methods", "test method",
            "instruments", "instrument");

    private final PageContext context;
    private final SortedMap<String, List<Seal>> seals = new TreeMap<>();

    /** @param seals all that are published */
    GonePages(PageContext context, List<Seal> seals) {
        this.context = context;
        seals.forEach(seal ->
                this.seals.computeIfAbsent(seal.study(), s -> new ArrayList<>()).add(seal));
    }

    /** The pages of answers of which sealed versions are all that is left. */
    SortedSet<String> ofSealed() {
        SortedSet<String> pages = new TreeSet<>();
        seals.keySet().forEach(study -> pages.add(Address.answer(study)));
        return pages;
    }

    /** Writes a page for each address; those of pages that stand are to be left out. */
    void build(SortedSet<String> addresses, PageSink sink) {
        addresses.forEach(path -> sink.put(path, context.render("gone", page(path))));
    }

    private GonePage page(String path) {
        List<String> parts = List.of(path.split("/"));
        String kind = KINDS.getOrDefault(parts.get(0), "page");
        String name = String.join("/", parts.subList(Math.min(1, parts.size() - 1), parts.size() - 1));
        List<Seal> versions = kind.equals("answer") ? seals.getOrDefault(name, List.of()) : List.of();
        String title = versions.stream()
                .map(Seal::question)
                .filter(question -> !question.isEmpty())
                .reduce((older, newer) -> newer)
                .orElse("The " + kind + " “" + name + "” is gone");
        List<Link> kept = new ArrayList<>();
        versions.forEach(seal -> kept.add(Link.to("Version " + seal.version() + ", as it was sealed", seal.page())));
        kept.add(Link.to("What changed", Address.CHANGES));
        String text = "This " + kind + " was published at this address. It has been removed from the results since"
                + Optional.of(versions)
                        .filter(v -> !v.isEmpty())
                        .map(v -> "; what was sealed of it stays.")
                        .orElse(".");
        return new GonePage(context.frames().of(path, title, text), title, text, kept);
    }
}
