package org.evenhand.page.kept;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
import org.evenhand.words.Words;

/** A page for each address that was published and whose subject is gone: addresses never break. */
final class GonePages {

    private static final Set<String> KINDS = Set.of("answers", "runs", "items", "methods", "instruments");

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
        Words words = context.words();
        String kind = words.say("kept.kind-" + (KINDS.contains(parts.get(0)) ? parts.get(0) : "page"));
        String name = String.join("/", parts.subList(Math.min(1, parts.size() - 1), parts.size() - 1));
        List<Seal> versions = parts.get(0).equals("answers") ? seals.getOrDefault(name, List.of()) : List.of();
        String title = versions.stream()
                .map(Seal::question)
                .filter(question -> !question.isEmpty())
                .reduce((older, newer) -> newer)
                .orElseGet(() -> words.say("kept.gone", kind, name));
        List<Link> kept = new ArrayList<>();
        versions.forEach(seal -> kept.add(Link.to(words.say("kept.gone-version", seal.version()), seal.page())));
        kept.add(Link.to(words.say("kept.gone-changes"), Address.CHANGES));
        String text = words.say(versions.isEmpty() ? "kept.gone-text" : "kept.gone-sealed", kind);
        return new GonePage(context.frames().of(path, title, text), title, text, kept);
    }
}
